import { straightLine } from '@truesweep/core';
import { test } from 'vitest';
import { keeps } from './keeps.js';
import { readInPieces } from './readInPieces.js';

test('a text of 1 GB, read in pieces as the command line reads it', () => {
  const read = readInPieces([100, 300, 1000], 2);
  for (const { megabytes, seconds, memory } of read) {
    const speed = (megabytes / seconds).toFixed(0);
    console.log(
      `${megabytes} MB in ${seconds.toFixed(2)} s (${speed} MB/s), memory ${memory.toFixed(2)}`,
    );
  }
  keeps('reading 1 GB: extra memory over that of its samples', read.at(-1)!.memory, {
    side: 'most',
    goal: 1.2,
    holds: 1.2,
  });
  const line = straightLine(
    read.map(({ rows }) => Math.log(rows)),
    read.map(({ seconds }) => Math.log(seconds)),
  )!;
  keeps('reading ever longer: exponent', line.slope, { side: 'most', goal: 1.05, holds: 1.05 });
}, 300_000);
