import { type Exercise, makeExercise } from '@truesweep/explain';
import { pick } from './pick.js';
import type { SheetChoice } from './sheetAddress.js';

/** So many exercises are on a sheet. */
const count = 20;

/** The exercises of a sheet: its topics in turn, each exercise drawn by a seed of its own. */
export function sheetExercises({ seed, level, topics }: SheetChoice): readonly Exercise[] {
  return Array.from({ length: count }, (_, i) =>
    makeExercise(pick(topics, i % topics.length), level, seed * count + i),
  );
}
