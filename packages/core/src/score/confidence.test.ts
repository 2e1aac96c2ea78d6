import { describe, expect, test } from 'vitest';
import { confidence, type Grounded } from './confidence.js';
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
  verdict: 'pass',
  causes: [{ cause: 'none', weight: 1 }],
  checks: [check('coverage', 'conforms'), check('closed-rest', 'conforms', 0.005)],
  findings: [],
  spots: [],
  couldShow: { blind: [], narrowestSpot: 0.005 },
  coverage: { opening: new Array(10).fill(3), closing: new Array(10).fill(2) },
  quality: { gaps: 0 },
};
const broken: Grounded = {
  ...clean,
  verdict: 'fail',
  causes: [{ cause: 'connection', weight: 0.9 }],
  checks: [check('coverage', 'conforms'), check('departures', 'fails')],
  findings: [dropout(20), dropout(8)],
};

describe('confidence', () => {
  test('a pass is the surer the narrower a spot that could hide, the more looks, and the less the closed readings scatter', () => {
    const wide = { ...clean, couldShow: { blind: [], narrowestSpot: 0.1 } };
    const scattered = { ...clean, checks: [check('closed-rest', 'conforms', 0.029)] };
    const { opening } = clean.coverage;
    const once = {
      ...clean,
      coverage: { opening: opening.with(4, 0), closing: new Array(10).fill(1) },
    };
    for (const weaker of [wide, scattered, once])
      expect(confidence(clean)).toBeGreaterThan(confidence(weaker)!);
  });

  test('departures are the surer the more speaks for them, and the likelier they are no interference', () => {
    const faint = { ...broken, findings: [dropout(2)] };
    const foreign: Grounded = { ...broken, causes: [{ cause: 'interference', weight: 0.45 }] };
    const torn = { ...broken, quality: { gaps: 3 } };
    for (const weaker of [faint, foreign, torn])
      expect(confidence(broken)).toBeGreaterThan(confidence(weaker)!);
  });

  test('another reason makes a verdict surer', () => {
    const faint = { ...broken, findings: [dropout(2)] };
    const both = { ...faint, checks: [...faint.checks, check('closed-end', 'fails')] };
    const end = { ...faint, checks: [check('closed-end', 'fails')] };
    expect(confidence(both)).toBeGreaterThan(confidence(faint)!);
    expect(confidence(both)).toBeGreaterThanOrEqual(confidence(end)!);
  });

  test('a reason that is only marginal lends a failing verdict nothing', () => {
    const more = { ...broken, checks: [...broken.checks, check('closed-end', 'marginal')] };
    expect(confidence(more)).toBe(confidence(broken));
  });

  test('no certainty is told, and nothing of an inconclusive verdict', () => {
    const plain = { ...broken, findings: Array.from({ length: 50 }, () => dropout(1000)) };
    const ends = { ...plain, checks: [...plain.checks, check('closed-end', 'fails')] };
    expect(confidence(ends)).toBe(0.99);
    expect(confidence({ ...clean, verdict: 'inconclusive' })).toBeUndefined();
  });

  test('it has four decimals, so that all engines tell the same', () => {
    const told = confidence(clean)!;
    expect(Math.round(1e4 * told) / 1e4).toBe(told);
  });
});
