import type { ExerciseLevel, ExerciseTopic } from '@truesweep/explain';

/** What an exercise of a set is drawn from. */
export interface Drawn {
  readonly topic: ExerciseTopic;
  readonly level: ExerciseLevel;
}

/** A lesson that ends with exercises. */
export type ExerciseSetName = keyof typeof exerciseSets;

const of = (topic: ExerciseTopic, level: ExerciseLevel): Drawn => ({ topic, level });

/** The exercises of each lesson, in their order. */
export const exerciseSets = {
  divider: [of('thermistor', 'easy'), of('windows', 'easy'), of('windows', 'easy')],
  loading: [of('loading', 'easy'), of('meter-loading', 'easy'), of('loading', 'easy')],
  limiter: [of('limiter', 'easy'), of('loading', 'medium'), of('limiter', 'medium')],
  meters: [
    of('meter-loading', 'medium'),
    of('meter-loading', 'hard'),
    of('dropout-visibility', 'medium'),
  ],
  dropout: [
    of('dropout-visibility', 'easy'),
    of('dropout-visibility', 'medium'),
    of('dropout-visibility', 'hard'),
  ],
  verdict: [
    of('trace', 'easy'),
    of('windows', 'medium'),
    of('trace', 'easy'),
    of('trace', 'medium'),
  ],
  temperature: [of('thermistor', 'easy'), of('thermistor', 'medium'), of('thermistor', 'hard')],
} as const satisfies Readonly<Record<string, readonly Drawn[]>>;

/** What an exercise of a set is drawn by: every round has numbers of its own. */
export const seedOf = (round: number, number: number): number => round * 10 + number + 1;
