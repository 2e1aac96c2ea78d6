import { expect, test } from 'vitest';
import { plainLevels } from '../movement/plainLevels.js';
import { lineAcross } from './lineAcross.js';
import { sidesOfLine } from './sidesOfLine.js';

const time = Float64Array.from({ length: 400 }, (_, i) => i / 1000);
/** A steady opening with a contact that lifts over a stretch, and an outlier beside it. */
const levels = plainLevels(
  time,
  time.map((at, i) => at + (i >= 200 && i < 240 ? -0.05 : 0) + (i === 197 ? 0.2 : 0)),
);

test('the line across a stretch is what the recording beside it says, outliers aside', () => {
  const line = lineAcross(levels, 199, 240)!;
  expect(line(220)).toBeCloseTo(0.22, 3);
  const { below, above } = sidesOfLine(levels, 199, 240, line);
  expect(below).toBeCloseTo(40 * 0.05, 1);
  expect(above).toBe(0);
});

test('there is none at either end of the recording', () => {
  expect(lineAcross(levels, 1, 30)).toBeUndefined();
  expect(lineAcross(levels, 300, 398)).toBeUndefined();
});
