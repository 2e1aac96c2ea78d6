import type { Circuit, Seconds, Volts } from '@truesweep/core';
import type { WorkingUnit } from '../quantity.js';
import type { Working } from '../working.js';

/**
 * What an exercise is about.
 *
 * @example
 * exerciseTopics.includes('loading') // => true
 */
export const exerciseTopics = [
  'loading',
  'limiter',
  'meter-loading',
  'windows',
  'dropout-visibility',
  'trace',
  'thermistor',
] as const;

/**
 * How hard an exercise is, easiest first.
 *
 * @example
 * exerciseLevels // => ['easy', 'medium', 'hard']
 */
export const exerciseLevels = ['easy', 'medium', 'hard'] as const;

/** One of {@link exerciseTopics}. */
export type ExerciseTopic = (typeof exerciseTopics)[number];

/** One of {@link exerciseLevels}. */
export type ExerciseLevel = (typeof exerciseLevels)[number];

/** What an answer is in. A temperature is in °C; `%` is a fraction, which may be answered as one, too; `1` is a count. */
export type AnswerUnit = Extract<WorkingUnit, 'V' | 'Ω' | '%' | '°C' | '1'>;

/** A value with how far an answer may be from it. */
export interface AnswerValue {
  /** In the part's unit: V, Ω, °C, a fraction or a count; any. */
  readonly value: number;
  /** How far an answer may lie from it, either way, in the same unit, above 0. */
  readonly tolerance: number;
}

/** An answer that is often given and is wrong. */
export interface WrongValue extends AnswerValue {
  /** What went wrong, as a sentence. */
  readonly mistake: string;
}

/** Asks for a value. */
export interface QuantityPart extends AnswerValue {
  /** Names it among the exercise's parts. */
  readonly id: string;
  readonly kind: 'quantity';
  /** What is asked, as a sentence. */
  readonly asks: string;
  /** What the answer is in. */
  readonly unit: AnswerUnit;
  /** At least one, each clear of the right answer and of one another. */
  readonly wrong: readonly WrongValue[];
}

/** Asks for one of several. */
export interface ChoicePart {
  /** Names it among the exercise's parts. */
  readonly id: string;
  readonly kind: 'choice';
  /** What is asked, as a sentence. */
  readonly asks: string;
  /** What there is to choose from, each with its name and its words. */
  readonly options: readonly { readonly id: string; readonly text: string }[];
  /** The right option's `id`. */
  readonly right: string;
  /** Every other option's `id`, with what speaks against it. */
  readonly wrong: readonly { readonly option: string; readonly mistake: string }[];
}

/** One question of an exercise. */
export type ExercisePart = QuantityPart | ChoicePart;

/** A recording that an exercise shows, ready for `sweepColumns` and a drawing. */
export interface DrawnSweep {
  /** Time of each sample, s, from 0 up. */
  readonly time: readonly Seconds[];
  /** What was recorded at each, V, any. */
  readonly signal: readonly Volts[];
}

/** What is drawn beside a question. */
export interface DrawnBeside {
  /** The recording; only where one is to be read. */
  readonly sweep?: DrawnSweep;
  /** The hook-up that it is of, with a sound sensor, for the curve and windows to expect; only where there is a recording. */
  readonly circuit?: Circuit;
}

/** An exercise with its answers, as plain data. */
export interface Exercise extends DrawnBeside {
  /** What it is about. */
  readonly topic: ExerciseTopic;
  /** How hard it is. */
  readonly level: ExerciseLevel;
  /** What it was drawn by: a whole number from 0 to 2³² − 1. */
  readonly seed: number;
  /** What is given, in words. */
  readonly question: string;
  /** Where to begin, in words. */
  readonly hint: string;
  /** What is asked: one or more. */
  readonly parts: readonly ExercisePart[];
  /** How the answer comes about. */
  readonly working: Working;
}

/** An exercise before it is known to be clear; a part is none where its wrong answers can't be told from the right one. */
export interface Draft extends DrawnBeside {
  readonly question: string;
  readonly hint: string;
  readonly parts: readonly (ExercisePart | undefined)[];
  readonly working: () => Working;
}
