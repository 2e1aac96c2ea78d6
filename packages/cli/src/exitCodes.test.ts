import { expect, test } from 'vitest';
import { exitCodeOf } from './exitCodes.js';

test('every verdict has its own code, and only a pass leaves with 0', () => {
  expect(
    (['pass', 'marginal', 'fail', 'inconclusive'] as const).map((v) => exitCodeOf([v])),
  ).toEqual([0, 10, 11, 12]);
});

test.each([
  [['pass', 'pass'], 0],
  [['marginal', 'pass'], 10],
  [['pass', 'marginal', 'inconclusive'], 12],
  [['inconclusive', 'fail', 'marginal', 'pass'], 11],
] as const)('the worst of %j counts', (verdicts, code) => {
  expect(exitCodeOf(verdicts)).toBe(code);
  expect(exitCodeOf([...verdicts].reverse())).toBe(code);
});
