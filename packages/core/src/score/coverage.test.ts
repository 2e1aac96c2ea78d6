import { describe, expect, test } from 'vitest';
import { defaultCriteria } from '../criteria.js';
import { expectation } from '../expectation/expectation.js';
import { throttleScale } from '../movement/throttleScale.js';
import type { Travel } from '../units.js';
import { coverage } from './coverage.js';
import { inTravel } from './inTravel.js';
import { isPassedUnseen, judgeCoverage } from './judgeCoverage.js';

/** A load that bends the curve: levels are no travel. */
const expected = expectation({
  source: { volts: 5 },
  limiter: 0,
  sensor: { track: 10_000 },
  load: { pullDown: 2000 },
});
const scale = throttleScale(expected);
const { curve } = expected;
const span = curve.volts[100]! - curve.volts[0]!;
const levelAt = (travel: number): number =>
  (curve.volts[Math.round(travel * 100)]! - curve.volts[0]!) / span;

interface Plan {
  readonly to?: number;
  /** How long the stroke takes. */
  readonly seconds?: number;
  readonly interval?: number;
  /** From when to when nothing was recorded. */
  readonly gap?: readonly [number, number];
  readonly bySpring?: boolean;
  readonly sampledEvery?: number;
  readonly smoothedOver?: number;
  /** Where the track leaps on, and whether that was found. */
  readonly crack?: Travel;
  readonly isFound?: boolean;
  readonly sampling?: 'averaged' | 'interpolated';
}

const resting = 0.5;
const leap: Travel = 0.35;

/** One even stroke between two rests: opening, or closing by the spring. */
function seen(plan: Plan = {}) {
  const { to = 1, seconds = 1, interval = 1e-3, gap, bySpring = false, crack } = plan;
  const whole = 2 * resting + seconds;
  const all = Float64Array.from(
    { length: Math.round(whole / interval) + 1 },
    (_, i) => i * interval,
  );
  const time = gap ? all.filter((at) => at < gap[0] || at > gap[1]) : all;
  const path = time.map((at) => {
    const gone = to * Math.min(1, Math.max(0, (at - resting) / seconds));
    const isBeyond = crack !== undefined && gone > crack && gone < crack + leap;
    return levelAt(isBeyond ? crack + leap : bySpring ? to - gone : gone);
  });
  const end = resting + seconds;
  const [low, high] = [0, levelAt(to)];
  const [from, until] = bySpring ? [high, low] : [low, high];
  const direction = bySpring ? 'closing' : 'opening';
  const movement = {
    path,
    // The turning points may lie anywhere in the rests.
    strokes: [{ direction, start: 0.1, end: whole, from, to: until } as const],
    rests: [
      { start: 0, end: resting, level: from },
      { start: end, end: whole, level: until },
    ],
    snaps: bySpring ? [{ start: resting, touch: end, settled: end, from: 1, rebounds: [] }] : [],
    stops: { closed: 0, open: 1 },
  };
  const { sampling = 'picked', sampledEvery = interval } = plan;
  const beyond = crack === undefined ? -1 : path.findIndex((level) => level > levelAt(crack));
  const found = plan.isFound
    ? [{ kind: 'step', from: beyond - 1, to: beyond, depth: leap } as const]
    : [];
  const { strokes } = inTravel(movement, expected, scale);
  const looks = coverage(
    { time, perBin: 1 },
    movement,
    strokes,
    found,
    expected,
    scale,
    { interval, sampledEvery, smoothedOver: plan.smoothedOver ?? 0, sampling },
    defaultCriteria,
  );
  return { looks, strokes };
}

const each = Array.from({ length: 10 }, () => 1);
const none = each.map(() => 0);

describe('coverage', () => {
  test('one stroke is one look at each tenth in its direction', () => {
    expect(seen().looks).toEqual({ opening: each, closing: none });
  });

  test('a stroke to half travel saw half of it, whatever the load makes of its level', () => {
    expect(seen({ to: 0.5 }).looks.opening).toEqual([1, 1, 1, 1, 1, 0, 0, 0, 0, 0]);
  });

  test('a gap longer than a dropout hides what the throttle went over meanwhile', () => {
    expect(seen({ gap: [0.75, 0.95] }).looks.opening).toEqual([1, 1, 0, 0, 0, 1, 1, 1, 1, 1]);
    expect(seen({ gap: [0.75, 0.76] }).looks.opening).toEqual(each);
  });

  test('what a crack leaps over was seen where the leap was found', () => {
    expect(seen({ crack: 0.31 }).looks.opening).toEqual([1, 1, 1, 1, 0, 0, 1, 1, 1, 1]);
    expect(seen({ crack: 0.31, isFound: true }).looks.opening).toEqual(each);
  });

  test('a gap at rest hides nothing', () => {
    expect(seen({ gap: [0.2, 0.4] }).looks.opening).toEqual(each);
  });

  test('samples so far apart that a dropout leaves too few are no look', () => {
    expect(seen({ interval: 7.5e-3 }).looks.opening).toEqual(each);
    expect(seen({ interval: 10e-3 }).looks.opening).toEqual(none);
    expect(seen({ interval: 7.5e-3, sampling: 'averaged' }).looks.opening).toEqual(none);
    const drawn = { sampling: 'interpolated', sampledEvery: 10e-3 } as const;
    expect(seen(drawn).looks.opening).toEqual(none);
    expect(seen({ interval: 1e-3, smoothedOver: 7e-3 }).looks.opening).toEqual(each);
    expect(seen({ interval: 1e-3, smoothedOver: 20e-3 }).looks.opening).toEqual(none);
  });

  test('a hand so quick that too few samples fall into a tenth saw none', () => {
    expect(seen({ seconds: 0.2, interval: 5e-3 }).looks.opening).toEqual(each);
    expect(seen({ seconds: 0.04, interval: 5e-3 }).looks.opening.slice(1, 9)).toEqual(
      none.slice(1, 9),
    );
  });

  test('a fall by the spring counts only where it was slow enough for a dropout', () => {
    const fall = { bySpring: true, interval: 1e-4 };
    expect(seen({ ...fall, seconds: 0.04 }).looks.closing).toEqual(none);
    expect(seen({ ...fall, seconds: 0.3 }).looks.closing).toEqual(each);
  });
});

describe('judgeCoverage', () => {
  const judge = (opening: readonly number[], closing: readonly number[], looks = 1) =>
    judgeCoverage({ opening, closing }, { looks });

  test('a tenth that either direction saw was seen', () => {
    const half = each.map((_, tenth) => (tenth < 5 ? 1 : 0));
    expect(judge(half, none)).toMatchObject({ outcome: 'cannot-tell', measured: 5, margin: -5 });
    expect(judge(half, half.toReversed())).toMatchObject({ outcome: 'conforms', measured: 0 });
  });

  test('more looks can be asked for', () => {
    expect(judge(each, each, 2).outcome).toBe('conforms');
    expect(judge(each, each, 3)).toMatchObject({ outcome: 'cannot-tell', measured: 10 });
  });

  test('what was passed unseen needs a better recorder, what was not passed another stroke', () => {
    const needs = (plan: Plan) => {
      const { looks, strokes } = seen(plan);
      return isPassedUnseen(looks, strokes, { looks: 1 });
    };
    expect(needs({ gap: [0.75, 0.95] })).toBe(true);
    expect(needs({ to: 0.5 })).toBe(false);
  });
});
