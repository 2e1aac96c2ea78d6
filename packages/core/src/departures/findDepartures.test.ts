import { describe, expect, test } from 'vitest';
import type { ContactLevels } from '../contact/contactLevels.js';
import type { Levels } from '../movement/levels.js';
import { plainLevels } from '../movement/plainLevels.js';
import { decode } from '../path/decode.js';
import { evidenceOf } from '../path/evidenceOf.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { findDepartures } from './findDepartures.js';

/** An opening from 0.1 to 0.9 in 2 s at 1 ms, changed by a function of time and level. */
function opening(
  change: (time: number, level: number) => number,
  rest: number | undefined = -0.1,
): Levels {
  const time = Float64Array.from({ length: 2001 }, (_, i) => i / 1000);
  const mean = time.map((at) => change(at, 0.1 + 0.4 * at));
  return { ...plainLevels(time, mean), rest };
}

const within = (at: number, from: number, to: number) => at >= from && at < to;
/** A bench whose feed leads can't be told from the wiper. */
const contactOf = ({ rest }: Levels): ContactLevels => ({
  rest,
  supply: undefined,
  ground: undefined,
  range: 1.5,
});
const departuresOf = (levels: Levels) =>
  findDepartures(levels, contactOf(levels), { closed: -Infinity, open: Infinity }).departures;
/** What speaks for each event by itself, where every place is as good as any. */
function evidenceOfSingle(levels: Levels): readonly number[] {
  const rest = [contactOf(levels), { closed: -Infinity, open: Infinity }] as const;
  return decode(levels, ...rest).events.map((event) => evidenceOf(event, levels, ...rest));
}
const kinds = (levels: Levels) => departuresOf(levels).map(({ kind }) => kind);

describe('findDepartures', () => {
  test('smooth movement has none, nor has a slow waviness of the hand', () => {
    expect(kinds(opening((_, level) => level))).toEqual([]);
    expect(kinds(opening((at, level) => level + 0.02 * Math.sin(2 * Math.PI * 3 * at)))).toEqual(
      [],
    );
  });

  test('a short visit to the rest level is a dropout with its place and depth', () => {
    const [one, ...others] = departuresOf(
      opening((at, level) => (within(at, 1, 1.008) ? -0.1 : level)),
    );
    expect(others).toEqual([]);
    expect(one).toMatchObject({ kind: 'dropout', from: 1000, to: 1007 });
    expect(one!.depth).toBeCloseTo(-0.6, 2);
  });

  test('two bursts that ring are pulses, not a rough patch', () => {
    const ring = (since: number) =>
      since < 0 ? 0 : 0.1 * Math.cos(2 * Math.PI * 250 * since) * Math.exp(-since / 3e-3);
    const found = kinds(opening((at, level) => level + ring(at - 1) + ring(at - 1.05)));
    expect(new Set(found)).toEqual(new Set(['spike']));
  });

  test('a lasting change of one and a half visible departures is a step in noise of a sixth of it', () => {
    const visible = 0.02;
    const random = randomNumbers(7);
    const noise = Float64Array.from({ length: 2001 }, () => (visible / 6) * random.normal());
    const steps = [0.5, 0.7, 0.9, 1.1, 1.3, 1.5].map((at) => {
      const shifted = opening((time, level) => {
        const jump = time >= at ? 1.5 * visible : 0;
        return level + jump + noise[Math.round(time * 1000)]!;
      });
      return kinds({ ...shifted, visible, noise: visible / 6, sampleNoise: visible / 6 });
    });
    expect(steps).toEqual(steps.map(() => ['step']));
  });

  test('a dropout longer than the path’s window is found by its edges', () => {
    const [one, ...others] = departuresOf(
      opening((at, level) => (within(at, 1, 1.2) ? -0.1 : level)),
    );
    expect(others).toEqual([]);
    expect(one).toMatchObject({ kind: 'dropout' });
    expect([one!.from, one!.to].map((bin) => Math.round(bin / 10))).toEqual([100, 120]);
  });

  test('a contact that comes back for moments only is one dropout, not pulses or scatter', () => {
    const lifted = (at: number) => within(at, 1, 1.05) && Math.round(at * 1000) % 12 < 10;
    const [one, ...others] = departuresOf(
      opening((at, level) => (lifted(at) ? level - 0.06 : level)),
    );
    expect(others).toEqual([]);
    expect(one).toMatchObject({ kind: 'dropout' });
    expect(one!.depth).toBeCloseTo(-0.06, 2);
  });

  test('what goes clearly beyond the visible departure is one, what rounding could have made of less is none', () => {
    const visible = 0.015;
    const pulse = (depth: number) =>
      kinds(opening((at, level) => (within(at, 1, 1.004) ? level + depth * visible : level)));
    // Seven tenths of three steps and one more by rounding, fourteen tenths and one less.
    expect(pulse(0.7 + 1 / 3)).toEqual([]);
    expect(pulse(1.4 - 1 / 3)).toEqual(['spike']);
    expect(pulse(-(1.4 - 1 / 3))).toEqual(['dropout']);
  });

  test('away from the rest level it is a spike', () => {
    expect(kinds(opening((at, level) => (within(at, 1, 1.004) ? level + 0.2 : level)))).toEqual([
      'spike',
    ]);
  });

  test('a jump onto another line is a step, one after standing still a dead spot', () => {
    expect(kinds(opening((at, level) => (at < 1 ? level : level + 0.1)))).toEqual(['step']);
    expect(kinds(opening((at, level) => (within(at, 1, 1.2) ? 0.5 : level)))).toEqual([
      'dead-spot',
    ]);
  });

  test('a dead spot that the throttle came to faster than it left it is one all the same', () => {
    const level = (at: number) => {
      if (at < 1) return 0.1 + 1.5 * Math.max(0, at - 0.9);
      return at < 1.2 ? 0.25 : 0.35 + 0.4 * (at - 1.2);
    };
    expect(kinds(opening(level))).toEqual(['dead-spot']);
  });

  test('a standstill after which the throttle leapt less far than it had moved at either speed was the hand’s', () => {
    const arriving = (at: number) => {
      const left = Math.max(0, 0.7 - at);
      return at < 1 ? Math.max(0.1, 0.5 - 45 * left ** 2) : 0.56 + 1.5 * (at - 1);
    };
    expect(kinds(opening(arriving))).toEqual(['step']);
  });

  test('a jump in the middle of a rest is a step', () => {
    const level = (at: number) => (at < 1 ? 0.1 + 0.4 * at : at < 1.28 ? 0.5 : 0.61);
    expect(kinds(opening(level))).toEqual(['step']);
  });

  test('a step where the hand gathers speed is no pulse that came on gradually', () => {
    const moved = (at: number) => (at < 1.05 ? 14 * Math.max(0, at - 1) ** 2 : 1.4 * (at - 1.025));
    const one = opening((at) => Math.min(0.9, 0.1 + moved(at)) + (at < 1.045 ? 0 : 0.024));
    expect(kinds(one)).toEqual(['step']);
  });

  test('a pulse that dies away in milliseconds is one excursion', () => {
    const decay = (at: number) => (at >= 1 ? 0.2 * Math.exp(-(at - 1) / 3e-3) : 0);
    expect(kinds(opening((at, level) => level + decay(at)))).toEqual(['spike']);
  });

  test('pulses that die away soon after one another are excursions of their own', () => {
    const pulse = (at: number, start: number) =>
      at >= start ? 0.25 * Math.exp(-(at - start) / 4e-3) : 0;
    const two = opening((at, level) => level + pulse(at, 0.8) - pulse(at, 0.98));
    expect(departuresOf(two)).toMatchObject([
      { from: expect.closeTo(800, -1), depth: expect.closeTo(0.25, 2) },
      { from: expect.closeTo(980, -1), depth: expect.closeTo(-0.2, 1) },
    ]);
  });

  test('two steps soon after one another are two, though a hand could have gone as far meanwhile', () => {
    const two = opening((at, level) => level + (at < 1 ? 0 : at < 1.1 ? 0.05 : 0.1));
    expect(departuresOf(two)).toMatchObject([
      { kind: 'step', to: 1000 },
      { kind: 'step', to: 1100 },
    ]);
  });

  test('bumps without edges at one place are dropouts of their full depth', () => {
    const dip = (away: number) =>
      Math.abs(away) < 0.03 ? 0.15 * Math.cos((Math.PI * away) / 0.06) : 0;
    const there = [0.25, 0.75, 1.25, 1.75];
    const passes = (dips: readonly number[]) =>
      opening((at) => {
        const turned = 0.1 + 0.8 * (1 - Math.abs(((2 * at) % 2) - 1));
        return turned - dips.reduce((sum, one) => sum + dip(at - one), 0);
      });
    expect(departuresOf(passes(there)).map(({ kind }) => kind)).toEqual(there.map(() => 'dropout'));
    const depths = departuresOf(passes(there)).map(({ depth }) => depth);
    expect(Math.min(...depths)).toBeCloseTo(-0.15, 2);
  });

  test('a track cracked so that its far side goes over the rest level has two steps, no long dropout', () => {
    const time = Float64Array.from({ length: 4001 }, (_, i) => i / 1000);
    const level = (at: number) => 0.1 + 0.4 * (2 - Math.abs(at - 2));
    const mean = time.map((at) => level(at) + (level(at) > 0.5 ? 0.3 : 0));
    const levels = { ...opening((_, at) => at, 1), time, mean, low: mean, high: mean };
    expect(kinds(levels)).toEqual(['step', 'step']);
  });

  test('scatter over a stretch is one rough patch', () => {
    const rough = opening(
      (at, level) => level + (within(at, 0.8, 1.3) ? 0.06 * Math.sin(1e7 * at * at) : 0),
    );
    expect(kinds(rough)).toEqual(['rough']);
  });

  test('a crack that no single pass at 200 samples a second surely shows is told by all of them together', () => {
    const random = randomNumbers(3);
    const time = Float64Array.from({ length: 800 }, (_, i) => i * 0.005);
    const noise = time.map(() => 0.003 * random.normal());
    const strokes = (crackedUntil: number) => {
      const mean = time.map((at, i) => {
        const level = 0.5 - 0.4 * Math.cos(4 * Math.PI * at);
        return level + (level > 0.45 && at < crackedUntil ? 0.035 : 0) + noise[i]!;
      });
      return { ...plainLevels(time, mean), noise: 0.003, sampleNoise: 0.003 };
    };
    const steps = departuresOf(strokes(4));
    expect(new Set(steps.map(({ kind }) => kind))).toEqual(new Set(['step']));
    expect(steps.length).toBeGreaterThan(10);
    expect(Math.max(...evidenceOfSingle(strokes(4)))).toBeLessThan(8);
    expect(kinds(strokes(0.5))).toEqual([]);
  });

  test('a dead spot that is gone over either way is one place, and shown by one pass it is told of the other', () => {
    const random = randomNumbers(5);
    const noise = 0.006;
    const time = Float64Array.from({ length: 4000 }, (_, i) => i / 1000);
    const mean = time.map((at) => {
      const isOpening = at < 1.9;
      const opening = Math.min(0.9, 0.1 + 0.5 * Math.max(0, at - 0.1));
      const level = isOpening ? opening : Math.max(0.1, 0.9 - 0.4 * (at - 1.9));
      const stuck = isOpening ? 0.4 : 0.45;
      return (level > 0.4 && level < 0.45 ? stuck : level) + noise * random.normal();
    });
    const levels = { ...plainLevels(time, mean), visible: 0.03, noise, sampleNoise: noise };
    const [one, other] = departuresOf(levels);
    expect(one).toMatchObject({ kind: 'dead-spot', depth: expect.closeTo(0.05, 1) });
    expect(other).toMatchObject({ kind: 'dead-spot', depth: expect.closeTo(-0.05, 1) });
    // One of them shows less than a hand that stops needs where nothing else stands there.
    expect(Math.min(...evidenceOfSingle(levels))).toBeLessThan(15);
    expect(Math.abs(mean[one!.from]! - mean[other!.from]!)).toBeGreaterThan(0.03);
  });

  test('a departure below the visible limit is not reported', () => {
    expect(kinds(opening((at, level) => (within(at, 1, 1.008) ? level - 0.014 : level)))).toEqual(
      [],
    );
  });

  test('without a rest level a departure counts as a dropout', () => {
    const levels = {
      ...opening((at, level) => (within(at, 1, 1.004) ? level + 0.2 : level)),
      rest: undefined,
    };
    expect(kinds(levels)).toEqual(['dropout']);
  });
});
