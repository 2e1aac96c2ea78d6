import { expect, test } from 'vitest';
import { keeps } from '../bench/keeps.js';
import { readInPieces } from '../bench/readInPieces.js';

// A tenth of what the bench reads; the process's own growth, some 15 MB, weighs more here.
test('a long text takes hardly more memory than its samples', () => {
  const [long] = readInPieces([120], 2);
  expect(long!.rows).toBeGreaterThan(7e6);
  keeps('reading 120 MB: extra memory over that of its samples', long!.memory, {
    side: 'most',
    goal: 1.2,
    holds: 1.2,
  });
});
