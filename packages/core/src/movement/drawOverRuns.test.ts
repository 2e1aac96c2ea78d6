import { expect, test } from 'vitest';
import { drawOverRuns } from './drawOverRuns.js';
import { findExcursions } from './excursions.js';
import { plainLevels } from './plainLevels.js';

const bins = 501;
const time = Float64Array.from({ length: bins }, (_, i) => i / 1000);
const line = time.map((at) => 0.2 + 0.5 * at);
const none = new Uint8Array(bins);

/** The line, changed in its bins 200 to 239, and a path that follows the change by half. */
function changedBy(depth: (bin: number) => number) {
  const mean = line.map((level, i) => level + (i >= 200 && i < 240 ? depth(i) : 0));
  const path = line.map((level, i) => level - (i >= 200 && i < 240 ? 0.05 : 0));
  return { levels: plainLevels(time, mean), path };
}

test('a contact that comes back for moments has left a straight line to one side', () => {
  const { levels, path } = changedBy((bin) => (bin % 8 === 7 ? 0 : -0.1));
  const before = findExcursions(levels, path);
  expect(before.some(({ above }) => above > 0.04)).toBe(true);
  expect(drawOverRuns(levels, path, before, none, [])).toBe(true);
  expect(path[220]).toBeCloseTo(line[220]!, 6);
  expect(findExcursions(levels, path)).toMatchObject([{ from: 200, to: 238, above: 0 }]);
});

test('scatter to both sides of a path leaves the path as it is', () => {
  const { levels } = changedBy((bin) => (bin % 2 === 0 ? 0.1 : -0.1));
  const path = Float64Array.from(line);
  expect(drawOverRuns(levels, path, findExcursions(levels, path), none, [])).toBe(false);
  expect(path).toEqual(line);
});

test('nothing is drawn over fast moves and jumps', () => {
  const { levels, path } = changedBy((bin) => (bin % 8 === 7 ? 0 : -0.1));
  const before = findExcursions(levels, path);
  expect(drawOverRuns(levels, path, before, new Uint8Array(bins).fill(1), [])).toBe(false);
  expect(drawOverRuns(levels, path, before, none, [{ from: 190, to: 245 }])).toBe(false);
});
