import { describe, expect, test } from 'vitest';
import { defaultCriteria } from '../criteria.js';
import type { Departure } from '../departures/departure.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import { chooseAdvice } from './chooseAdvice.js';
import { closedReadings } from './closedReadings.js';
import type { ClosedReturns } from './endReadings.js';
import { findCauses } from './findCauses.js';
import { judgeClosedRest } from './judgeClosedRest.js';
import { judgeDepartures } from './judgeDepartures.js';
import { judgeEnd } from './judgeEnd.js';
import { judgeSupply } from './judgeSupply.js';
import type { Check, CheckOutcome, Finding } from './score.js';

/** What no judgement looks at. */
const factors = { before: 0.4, form: -1, place: -2 };

const window = { low: 0.45, nominal: 0.5, high: 0.55 };

describe('judgeEnd', () => {
  const judge = (volts: number, more = {}) =>
    judgeEnd(
      'closed-end',
      { volts, uncertainty: 0.005, instrument: 0.005, atStop: true, ...more },
      window,
      4,
      1,
      defaultCriteria,
    );

  test.each([
    [0.5, 'conforms'],
    [0.55, 'conforms'],
    [0.6, 'marginal'],
    [0.7, 'fails'],
    [0.3, 'fails'],
    [Number.NaN, 'cannot-tell'],
  ])('%d V in a window of 0.45 to 0.55 V: %s', (volts, outcome) => {
    expect(judge(volts).outcome).toBe(outcome);
  });

  test('carries measured value, limits, uncertainty and margin', () => {
    expect(judge(0.6)).toMatchObject({
      measured: 0.6,
      lowLimit: 0.45,
      highLimit: 0.55,
      uncertainty: 0.005,
    });
    expect(judge(0.6).margin).toBeCloseTo(-0.05, 12);
  });

  test('far inside the travel proves nothing unless the stop was reached, far outside does', () => {
    expect(judge(0.9, { atStop: false }).outcome).toBe('cannot-tell');
    expect(judge(0.1, { atStop: false }).outcome).toBe('fails');
    expect(judge(2).outcome).toBe('cannot-tell');
  });

  test('a window narrower than four times the expanded uncertainty needs a better instrument', () => {
    expect(judge(0.5, { uncertainty: 0.02, instrument: 0.02 }).outcome).toBe('cannot-tell');
    expect(judge(1, { uncertainty: 0.02, instrument: 0.02 }).outcome).toBe('fails');
  });

  test('states the probability that it conforms, and can guard the limit', () => {
    expect(judge(0.5).conformance).toBeCloseTo(1, 9);
    expect(judge(0.55).conformance).toBeCloseTo(0.5, 9);
    const guarded = { ...defaultCriteria, endAcceptance: 'guarded' } as const;
    const near = { volts: 0.545, uncertainty: 0.005, instrument: 0.005, atStop: true };
    expect(judgeEnd('closed-end', near, window, 4, 1, guarded).outcome).toBe('marginal');
    expect(judgeEnd('closed-end', near, window, 4, 1, defaultCriteria).outcome).toBe('conforms');
  });

  test('without a reading nothing can be told', () => {
    expect(judgeEnd('open-end', undefined, window, 4, -1, defaultCriteria).outcome).toBe(
      'cannot-tell',
    );
  });
});

describe('judgeClosedRest', () => {
  const returns = (...ways: number[][]): ClosedReturns => ({
    ways: [ways[0] ?? [], ways[1] ?? []],
    hanging: 0,
  });
  const judge = (...ways: number[][]) =>
    judgeClosedRest(returns(...ways), 0.001, 4, defaultCriteria);

  test.each([
    [[0.5, 0.51, 0.52], 'conforms'],
    [[0.5, 0.6, 0.7], 'marginal'],
    [[0.5, 0.6, 0.9], 'fails'],
    [[0.5, 0.9], 'not-judged'],
  ] as const)('returns of %j V: %s', (readings, outcome) => {
    expect(judge([...readings]).outcome).toBe(outcome);
  });

  test('what ways of return differ by is hysteresis, judged by the same limits', () => {
    expect(judge([0.5, 0.5, 0.5], [0.6, 0.6, 0.6])).toMatchObject({ outcome: 'conforms' });
    expect(judge([0.5, 0.5, 0.5], [0.8, 0.8, 0.8])).toMatchObject({ outcome: 'fails' });
  });

  test('a range can only grow: beyond the limit two returns suffice where the spring brought one, two by hand may have stopped short', () => {
    expect(judge([], [0.5, 0.9]).outcome).toBe('fails');
    expect(judge([0.9], [0.5]).outcome).toBe('fails');
    expect(judge([0.5, 0.9]).outcome).toBe('not-judged');
    expect(judge([], [0.5, 0.51]).outcome).toBe('not-judged');
  });

  test('scatter that the readings’ uncertainty may have carried over a limit is at most marginal, or can’t be told', () => {
    expect(judgeClosedRest(returns([0.5, 0.6, 0.9]), 0.05, 4, defaultCriteria).outcome).toBe(
      'marginal',
    );
    expect(judgeClosedRest(returns([0.5, 0.6, 0.7]), 0.05, 4, defaultCriteria).outcome).toBe(
      'cannot-tell',
    );
  });
});

describe('judgeClosedRest with where it lay before', () => {
  test('a reading nearer to the stop widens the range', () => {
    const returns = { ways: [[0.6], [0.58]], hanging: 0 } as const;
    const judged = judgeClosedRest({ ...returns, before: 0.4 }, 0.001, 4, defaultCriteria);
    expect(judged).toMatchObject({ outcome: 'marginal', measured: expect.closeTo(0.05, 9) });
    expect(judgeClosedRest(returns, 0.001, 4, defaultCriteria).outcome).toBe('not-judged');
  });
});

describe('judgeClosedRest of returns that hung', () => {
  test('too few near the stop and others above it tell nothing', () => {
    const judge = (hanging: number) =>
      judgeClosedRest({ ways: [[0.5, 0.51], []], hanging }, 0.001, 4, defaultCriteria).outcome;
    expect(judge(0)).toBe('not-judged');
    expect(judge(1)).toBe('cannot-tell');
  });
});

describe('findCauses', () => {
  const check = (code: Check['check'], outcome: CheckOutcome): Check => ({
    check: code,
    outcome,
    unit: 'V',
    limitFrom: 'criteria',
  });

  test.each([
    [[check('live-output', 'fails')], ['wiring']],
    [[check('closed-end', 'fails')], ['ends']],
    [[check('closed-end', 'fails'), check('open-end', 'fails')], ['ends']],
    [[check('closed-rest', 'marginal')], ['closed-rest']],
    [[check('closed-end', 'fails'), check('closed-rest', 'marginal')], ['closed-rest']],
    [[check('open-end', 'fails'), check('closed-rest', 'marginal')], ['ends']],
    [[check('coverage', 'cannot-tell')], ['recording']],
    [[check('coverage', 'conforms')], ['none']],
  ])('without departures the checks decide (%#)', (checks, expected) => {
    expect(findCauses(checks, undefined).map((one) => one.cause)).toEqual(expected);
  });

  test('an end beyond its window is as likely the wiring’s as the leads are on wrong terminals', () => {
    const told = (chance: number) =>
      findCauses([check('closed-end', 'fails')], undefined, 1, chance);
    expect(told(0.7)).toEqual([
      { cause: 'wiring', weight: 0.7 },
      { cause: 'ends', weight: 0.3 },
    ]);
    expect(told(0.1)[0]).toEqual({ cause: 'ends', weight: 0.9 });
  });

  test('with departures their weights decide, small ones left out', () => {
    expect(findCauses([], { track: 0.28, connection: 0.7, interference: 0.02 })).toEqual([
      { cause: 'connection', weight: 0.7 },
      { cause: 'track', weight: 0.28 },
    ]);
  });

  test('a cause is as probable as that the departures are real and come from it', () => {
    const weights = { track: 0.9, connection: 0.06, interference: 0.04 };
    expect(findCauses([], weights, 0.6)).toEqual([
      { cause: 'track', weight: 0.54 },
      { cause: 'connection', weight: 0.036 },
    ]);
  });
});

describe('judgeDepartures', () => {
  const dropout: Finding = {
    kind: 'dropout',
    start: 1,
    end: 1.01,
    travel: 0.1,
    depth: -0.2,
    depthOfSpan: 0.05,
    depthOfSource: 0.04,
    went: 'to-rest-level',
    during: 'opening',
  };
  const deep = { ...dropout, depthOfSpan: 0.3 };
  const judge = (findings: Finding[], ...foreign: number[]) => judgeWhere(0.02, findings, foreign);
  const judgeWhere = (
    visible: number,
    findings: Finding[],
    foreign: number[] = [],
    doubtful: Departure[] = [],
  ) =>
    judgeDepartures(
      findings,
      [{ ...factors, sources: ['track'], weight: 1, foreign: new Set(foreign) }],
      doubtful,
      visible,
      defaultCriteria,
    ).outcome;

  test('none conforms, one shallow is marginal, one deep or several fail', () => {
    expect(judge([])).toBe('conforms');
    expect(judge([dropout])).toBe('marginal');
    expect(judge([deep])).toBe('fails');
    expect(judge([dropout, dropout])).toBe('fails');
  });

  test('one alone that just reaches what a noisy recording shows is marginal', () => {
    expect(judgeWhere(0.25, [deep])).toBe('marginal');
    expect(judgeWhere(0.23, [deep])).toBe('fails');
    expect(judgeWhere(0.25, [deep, deep])).toBe('fails');
  });

  test('none but a doubtful one, deeper than noise makes one, can’t be told; beside sure ones it is nothing', () => {
    const step = (depth: number): Departure => ({ kind: 'step', from: 10, to: 11, depth });
    const beside = (findings: Finding[], depth: number) =>
      judgeWhere(0.02, findings, [], [step(depth)]);
    expect(beside([], -0.024)).toBe('conforms');
    expect(beside([], -0.026)).toBe('cannot-tell');
    expect(beside([dropout], 1)).toBe('marginal');
    expect(beside([deep], 1)).toBe('fails');
  });

  test('interference alone never fails a sensor, what is beside it may', () => {
    expect(judge([deep, deep], 0, 1)).toBe('marginal');
    expect(judge([deep, deep, dropout], 0, 2)).toBe('fails');
  });

  test('they fail where what makes them fail has more than even odds', () => {
    const weighed = (weight: number) =>
      judgeDepartures(
        [deep],
        [
          { ...factors, sources: ['track'], weight, foreign: new Set() },
          { ...factors, sources: ['interference'], weight: 1 - weight, foreign: new Set([0]) },
        ],
        [],
        0.02,
        defaultCriteria,
      ).outcome;
    expect(weighed(0.55)).toBe('fails');
    expect(weighed(0.45)).toBe('marginal');
  });
});

describe('judgeSupply', () => {
  const sweep = { time: Float64Array.of(0, 1), signal: Float64Array.of(0, 1) };
  const judge = (supplyStray: number, supplyLost: number) =>
    judgeSupply({ sweep, supply: 'recorded', supplyStray, supplyLost }, defaultCriteria).outcome;

  test('a supply that strays is marginal, one that was missing hides what happened', () => {
    expect(judge(0.01, 0)).toBe('conforms');
    expect(judge(0.1, 0)).toBe('marginal');
    expect(judge(0.01, 0.1)).toBe('cannot-tell');
    expect(judgeSupply({ sweep, supply: 'assumed' }, defaultCriteria).outcome).toBe('not-judged');
  });
});

describe('closedReadings', () => {
  test('range and deviation of each way, and the hysteresis between them', () => {
    const summed = closedReadings([0.5, 0.51, 0.52], [0.49]);
    expect(summed.byHand).toMatchObject({ count: 3, mean: expect.closeTo(0.51, 12) });
    expect(summed.byHand!.range).toBeCloseTo(0.02, 12);
    expect(summed.byHand!.deviation).toBeCloseTo(0.01, 12);
    expect(summed.bySpring).toEqual({ count: 1, mean: 0.49, range: 0 });
    expect(summed.hysteresis).toBeCloseTo(0.02, 12);
    expect(closedReadings([], [])).toEqual({});
  });
});

describe('decideVerdict', () => {
  const verdict = (...outcomes: CheckOutcome[]) =>
    decideVerdict(
      outcomes.map((outcome) => ({
        check: 'coverage',
        outcome,
        unit: 'count',
        limitFrom: 'criteria',
      })),
    );

  test('fails, then marginal, then cannot tell, then pass', () => {
    expect(verdict('conforms', 'cannot-tell', 'marginal', 'fails')).toBe('fail');
    expect(verdict('conforms', 'cannot-tell', 'marginal')).toBe('marginal');
    expect(verdict('conforms', 'cannot-tell')).toBe('inconclusive');
    expect(verdict('conforms', 'not-judged')).toBe('pass');
  });

  test('nothing judged is no pass', () => {
    expect(verdict()).toBe('inconclusive');
    expect(verdict('strange' as CheckOutcome)).toBe('inconclusive');
  });
});

describe('chooseAdvice', () => {
  const advice = (...args: Parameters<typeof chooseAdvice>) => chooseAdvice(...args);

  test('a pass refits, and says so if the closed rest was not judged', () => {
    const rest: Check = {
      check: 'closed-rest',
      outcome: 'not-judged',
      unit: '1',
      limitFrom: 'criteria',
    };
    expect(advice('pass', [{ cause: 'none', weight: 1 }], [rest])).toEqual([
      'refit',
      'record-more-returns',
    ]);
  });

  test('a connection never condemns the part', () => {
    expect(advice('fail', [{ cause: 'connection', weight: 1 }], [])).not.toContain(
      'replace-sensor',
    );
    expect(advice('fail', [{ cause: 'track', weight: 1 }], [])).toContain('replace-sensor');
  });

  test('a poor recording says how to record', () => {
    const slow: Check = {
      check: 'sample-interval',
      outcome: 'cannot-tell',
      unit: 's',
      limitFrom: 'criteria',
    };
    expect(advice('inconclusive', [{ cause: 'recording', weight: 1 }], [slow])).toEqual([
      'record-faster',
    ]);
  });
});
