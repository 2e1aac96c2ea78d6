import { expectation, scoreSweep, sweepColumns } from '@truesweep/core';
import { traceColumns, traceSvg } from '@truesweep/drawings/svg';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import type { Exercise, ExerciseLevel, QuantityPart } from './exercise.js';
import { exerciseLevels } from './exercise.js';
import { drawsOf, makeExercise } from './makeExercise.js';
import { type DrawnRecording, drawnRecording } from './trace.js';
import { faultKinds } from './traceFault.js';

/** The recording behind an exercise, with its truth: that of its draws which has its readings. */
function truthOf({ level, seed, sweep }: Exercise): DrawnRecording {
  const draw = drawsOf('trace', level, seed);
  for (let draws = 0; draws < 1000; draws++) {
    const drawn = drawnRecording(draw, level);
    const { signal } = drawn.simulated.sweep;
    if (
      signal.length === sweep!.signal.length &&
      signal.every((volts, i) => Math.abs(volts - sweep!.signal[i]!) < 1e-9)
    )
      return drawn;
  }
  throw new Error(`No draw by the seed ${seed} is the exercise’s.`);
}

/** How often the throttle had come from one stop to the other before each sample. */
function passesBefore(travel: Float64Array): readonly number[] {
  let passes = 0;
  let stop = 0;
  return Array.from(travel, (at) => {
    if ((at === 0 || at === 1) && at !== stop) {
      stop = at;
      passes++;
    }
    return passes;
  });
}

/** On how many passes the recorded signal leaves the sound one: on both where it has left it at one stop and comes back on the way to the next. */
function passesLeft({ simulated: { sweep, sound, travel } }: DrawnRecording): number {
  const before = passesBefore(travel);
  const passes = new Set<number>();
  for (let i = 0; i < sound.length; i++)
    if (Math.abs(sweep.signal[i]! - sound[i]!) > 0.06 && travel[i]! > 0 && travel[i]! < 1)
      passes.add(before[i]!);
  return passes.size;
}

/** How often the recorded signal leaves the sound one for a moment. */
function departures({ simulated: { sweep, sound } }: DrawnRecording): number {
  let count = 0;
  let last = -Infinity;
  sound.forEach((volts, i) => {
    if (Math.abs(sweep.signal[i]! - volts) < 0.1) return;
    if (sweep.time[i]! - last > 0.01) count++;
    last = sweep.time[i]!;
  });
  return count;
}

const asked = ({ parts }: Exercise, id: string) =>
  parts.find((part) => part.id === id) as QuantityPart | undefined;

const seeds = (count: number): readonly number[] =>
  Array.from({ length: count * soak }, (_, i) => i);

describe.each(exerciseLevels)('a drawn sweep, %s', (level: ExerciseLevel) => {
  test('what is wrong, where and how often, is what was simulated', () => {
    for (const seed of seeds(80)) {
      const exercise = makeExercise('trace', level, seed);
      const truth = truthOf(exercise);
      const { fault } = truth;
      expect(exercise.parts[0]).toMatchObject({ right: fault.kind });
      const at = asked(exercise, 'travel')?.value;
      if ('at' in fault) {
        expect(at).toBeUndefined();
        expect(asked(exercise, 'count')!.value, `seed ${seed}`).toBe(departures(truth));
        expect(fault.at).toHaveLength(departures(truth));
        continue;
      }
      expect(at).toBeCloseTo('travel' in fault ? fault.travel : (fault.from + fault.to) / 2, 12);
      // What is read off the drawing, of a curve that its load bends a little.
      expect(Math.abs(exercise.working.answer.value - at!)).toBeLessThan(0.003);
      expect(asked(exercise, 'passes')!.value, `seed ${seed}`).toBe(passesLeft(truth));
    }
  });
});

test('every fault is drawn', () => {
  const kinds = seeds(80).map((seed) => {
    const [part] = makeExercise('trace', 'medium', seed).parts;
    return part?.kind === 'choice' ? part.right : '';
  });
  expect([...new Set(kinds)].sort()).toEqual([...faultKinds].sort());
});

/** What the judge calls a fault of the simulator. */
const findings: Readonly<Record<string, string>> = {
  'worn-spot': 'dropout',
  'loose-connection': 'dropout',
  interference: 'spike',
  'shifted-track': 'step',
};

test('what is plain to see at the easy level the judge finds as well', () => {
  for (const seed of seeds(40)) {
    const exercise = makeExercise('trace', 'easy', seed);
    const { fault } = truthOf(exercise);
    const score = scoreSweep(exercise.sweep!, expectation(exercise.circuit!));
    const kinds = score.findings.map(({ kind }) => kind);
    expect(['fail', 'marginal'], `seed ${seed}`).toContain(score.verdict);
    expect(kinds, `seed ${seed}: ${fault.kind}`).toContain(findings[fault.kind]);
    const at = asked(exercise, 'travel');
    // A spike down the judge may call a dropout; that it is there it says.
    const wanted = asked(exercise, at ? 'passes' : 'count')!.value;
    expect(kinds, `seed ${seed}: ${fault.kind}`).toHaveLength(wanted);
    for (const { travel } of at ? score.findings : [])
      expect(Math.abs(travel - at!.value), `seed ${seed}`).toBeLessThan(at!.tolerance);
  }
});

test('the recording can be drawn as it stands', () => {
  const { sweep } = makeExercise('trace', 'hard', 3);
  const columns = sweepColumns(sweep!, traceColumns());
  expect(traceSvg({ id: 'exercise', columns, findings: [] })).toContain('class="trace"');
});
