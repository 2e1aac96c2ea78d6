import { expect, test } from 'vitest';
import type { Finding } from '../score/score.js';
import { findingsSoFar } from './findingsSoFar.js';

const at = (start: number): Finding => ({
  kind: 'dropout',
  start,
  end: start + 0.01,
  travel: 0.4,
  depth: -1,
  depthOfSpan: 0.25,
  depthOfSource: 0.2,
  went: 'to-rest-level',
  during: 'opening',
});
const stretch = (start: number, end: number, findings: readonly Finding[]) => ({
  start,
  end,
  first: start === 0,
  findings,
});
const starts = (findings: readonly Finding[]) => findings.map(({ start }) => start);

test('a finding that several stretches saw counts once', () => {
  const next = findingsSoFar<Finding>();
  next(stretch(0, 3, [at(1), at(2.6)]));
  next(stretch(0, 4, [at(1), at(2.6)]));
  next(stretch(1, 5, [at(2.6), at(4.4)]));
  const { findings, found } = next(stretch(2, 6, [at(2.6), at(4.4)]));
  expect(starts(findings)).toEqual([1, 2.6, 4.4]);
  expect(found).toBe(3);
});

test('a later stretch overthrows a finding, but for its own beginning', () => {
  const next = findingsSoFar<Finding>();
  next(stretch(0, 4, [at(1.8), at(3.9)]));
  const { findings } = next(stretch(1.5, 5.5, [at(1.6)]));
  expect(starts(findings)).toEqual([1.8]);
});

test('findings behind the end of the stretch before count even at the beginning', () => {
  const next = findingsSoFar<Finding>();
  next(stretch(0, 4, []));
  expect(next(stretch(10, 14, [at(10.2)])).found).toBe(1);
});

test('the latest hundred of the earlier findings are kept, all are counted', () => {
  const next = findingsSoFar<Finding>();
  for (let k = 0; k < 50; k++) {
    const seen = Array.from({ length: 10 }, (_, i) => at(4 * k + 1 + i / 10));
    const { findings, found } = next(stretch(4 * k, 4 * k + 4, seen));
    expect(found).toBe(10 * (k + 1));
    expect(findings.length).toBeLessThanOrEqual(110);
    expect(findings.at(-1)!.start).toBe(4 * k + 1.9);
  }
});
