import { checkFields, type FieldRules, InputError } from '@truesweep/core';
import { type Draws, drawsFrom } from './draws.js';
import { dropoutVisibility } from './dropoutVisibility.js';
import {
  type Draft,
  type Exercise,
  type ExerciseLevel,
  type ExercisePart,
  type ExerciseTopic,
  exerciseLevels,
  exerciseTopics,
} from './exercise.js';
import { limiter } from './limiter.js';
import { loading } from './loading.js';
import { meterLoading } from './meterLoading.js';
import { thermistor } from './thermistor.js';
import { trace } from './trace.js';
import { windows } from './windows.js';

type Drawn = (draw: Draws, level: ExerciseLevel) => Draft | undefined;

const drafts: Readonly<Record<ExerciseTopic, Drawn>> = {
  loading,
  limiter,
  'meter-loading': meterLoading,
  windows,
  'dropout-visibility': dropoutVisibility,
  trace,
  thermistor,
};

const rules: FieldRules = { topic: exerciseTopics, level: exerciseLevels, seed: someSeed };

/** So often is drawn anew at most; of 20,000 seeds on each topic and level (1000 of drawn sweeps) none took a tenth of that. */
const mostDraws = 1000;

/**
 * An exercise by its topic, level and seed; the same three always give the same one. Values are round ones (preferred resistances, whole
 * volts, whole percentages). What is no clear question is drawn anew: one whose wrong answers lie within three tolerances of the right one.
 *
 * Method: the answers are core's own; how they come about is written down step by step beside them.
 *
 * @param topic One of {@link exerciseTopics}.
 * @param level One of {@link exerciseLevels}.
 * @param seed A whole number from 0 to 2³² − 1.
 * @returns Plain data: question, hint, what is asked with right and wrong answers, the working, and for `trace` what is drawn.
 * @throws InputError at `exercise.topic`, `exercise.level` or `exercise.seed`.
 *
 * @example
 * const exercise = makeExercise('loading', 'easy', 1);
 * exercise.parts[0].unit // => 'V'
 * exercise.working.answer.value === makeExercise('loading', 'easy', 1).working.answer.value // => true
 */
export function makeExercise(topic: ExerciseTopic, level: ExerciseLevel, seed: number): Exercise {
  checkFields({ topic, level, seed }, 'exercise', rules);
  const draw = drawsOf(topic, level, seed);
  for (let drawn = 0; drawn < mostDraws; drawn++) {
    const draft = drafts[topic](draw, level);
    if (!draft?.parts.every(isClear)) continue;
    const { working, parts, ...said } = draft;
    return { topic, level, seed, ...said, parts: parts.filter(isClear), working: working() };
  }
  throw new Error(`No clear exercise was found on ${topic}, ${level}, by the seed ${seed}.`);
}

/** Of one seed every topic and level begins elsewhere, so that a learner who goes up a level meets other numbers. */
export function drawsOf(topic: ExerciseTopic, level: ExerciseLevel, seed: number): Draws {
  const place =
    exerciseTopics.indexOf(topic) * exerciseLevels.length + exerciseLevels.indexOf(level);
  return drawsFrom(seed ^ Math.imul(place + 1, 0x01000193));
}

const isClear = (part: ExercisePart | undefined): part is ExercisePart => part !== undefined;

function someSeed(value: unknown, path: string): void {
  if (Number.isInteger(value) && (value as number) >= 0 && (value as number) < 2 ** 32) return;
  const shown = typeof value === 'number' ? value : 'none';
  const wrong = `${path} is ${shown}; it must be a whole number from 0 to ${2 ** 32 - 1}.`;
  throw new InputError(value === undefined ? 'missing' : 'out-of-range', path, wrong);
}
