import { expect, test } from 'vitest';
import { exampleRecords } from './exampleRecords.js';
import { gatherRecords } from './gatherRecords.js';

test('each recording of a sensor once, the later in the place of the earlier; what was there stays as it was', () => {
  const [first] = exampleRecords;
  const before = gatherRecords(new Map(), exampleRecords);
  expect([...before.keys()]).toEqual(['Port engine', 'Starboard engine']);
  const after = gatherRecords(before, [
    { ...first!, verdict: 'fail' },
    { ...first!, sensor: 'A spare' },
  ]);
  expect([...after].map(([sensor, records]) => [sensor, records.size])).toEqual([
    ['A spare', 1],
    ['Port engine', 4],
    ['Starboard engine', 4],
  ]);
  expect(after.get('Port engine')!.get(first!.recording)!.verdict).toBe('fail');
  expect(before.get('Port engine')!.get(first!.recording)!.verdict).toBe('pass');
});
