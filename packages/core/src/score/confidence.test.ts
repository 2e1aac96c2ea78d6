import { describe, expect, test } from 'vitest';
import { chanceOfDepartures, confidence, type Grounded } from './confidence.js';
import type { Check, Finding } from './score.js';

const check = (code: Check['check'], outcome: Check['outcome'], measured?: number): Check => ({
  check: code,
  outcome,
  unit: '1',
  limitFrom: 'criteria',
  highLimit: 0.03,
  ...(measured !== undefined && { measured }),
});
const dropout = (evidence: number): Finding => ({
  kind: 'dropout',
  start: 1,
  end: 1.01,
  travel: 0.1,
  depth: -0.5,
  depthOfSpan: 0.2,
  depthOfSource: 0.1,
  went: 'to-rest-level',
  evidence,
  during: 'opening',
});

const clean: Grounded = {
  checks: [check('departures', 'conforms'), check('closed-rest', 'conforms', 0.005)],
  findings: [],
  spots: [],
  couldShow: { blind: [], narrowestSpot: 0.005 },
  coverage: { opening: new Array(10).fill(3), closing: new Array(10).fill(2) },
  quality: { gaps: 0 },
  interference: 0,
};
const broken: Grounded = {
  ...clean,
  checks: [check('departures', 'fails')],
  findings: [dropout(20), dropout(8)],
};
const faint = { ...broken, findings: [dropout(2)] };

const pass = (judged: Grounded): number => confidence('pass', judged)!;
const fail = (judged: Grounded): number => confidence('fail', judged)!;

describe('confidence', () => {
  test('a pass is the surer the narrower a spot that could hide, the more looks, and the less the closed readings scatter', () => {
    const wide = { ...clean, couldShow: { blind: [], narrowestSpot: 0.1 } };
    const scattered = { ...clean, checks: [check('closed-rest', 'conforms', 0.029)] };
    const { opening } = clean.coverage;
    const once = {
      ...clean,
      coverage: { opening: opening.with(4, 0), closing: new Array(10).fill(1) },
    };
    for (const weaker of [wide, scattered, once]) expect(pass(clean)).toBeGreaterThan(pass(weaker));
  });

  test('departures are the surer the more speaks for them, without gaps, and the likelier they are no interference', () => {
    const foreign = { ...broken, interference: 0.45 };
    const torn = { ...broken, quality: { gaps: 3 } };
    for (const weaker of [faint, foreign, torn]) expect(fail(broken)).toBeGreaterThan(fail(weaker));
  });

  test('another reason makes a verdict surer', () => {
    const both = { ...faint, checks: [...faint.checks, check('closed-end', 'fails')] };
    const end = { ...faint, checks: [check('closed-end', 'fails')] };
    expect(fail(both)).toBeGreaterThan(fail(faint));
    expect(fail(both)).toBeGreaterThanOrEqual(fail(end));
  });

  test('a reason that is only marginal lends a failing verdict nothing', () => {
    const more = { ...broken, checks: [...broken.checks, check('closed-end', 'marginal')] };
    expect(fail(more)).toBe(fail(broken));
  });

  test('no certainty is told, and nothing of an inconclusive verdict', () => {
    const plain = { ...broken, findings: Array.from({ length: 50 }, () => dropout(1000)) };
    const ends = { ...plain, checks: [...plain.checks, check('closed-end', 'fails')] };
    expect(fail(ends)).toBe(0.99);
    expect(chanceOfDepartures(plain)).toBeLessThanOrEqual(0.99);
    expect(confidence('inconclusive', clean)).toBeUndefined();
  });

  test('a verdict is told as likelier right than wrong, its departures need not be real', () => {
    const foreign = { ...faint, interference: 0.9 };
    expect(fail(foreign)).toBe(0.5);
    expect(chanceOfDepartures(foreign)).toBeLessThan(0.4);
  });

  test('departures that alone make a verdict are as sure as it is', () => {
    expect(chanceOfDepartures(faint)).toBeCloseTo(fail(faint), 4);
  });

  test('it has four decimals, so that all engines tell the same', () => {
    expect(Math.round(1e4 * pass(clean)) / 1e4).toBe(pass(clean));
  });
});
