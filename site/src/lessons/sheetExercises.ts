import { type Exercise, type ExerciseTopic, makeExercise } from '@truesweep/explain';
import { pick } from './pick.js';
import type { SheetChoice } from './sheetAddress.js';

/** So many exercises are on a sheet. */
const count = 20;
/** So many seeds a sheet has for each of its exercises: one that asks what another has asked is drawn anew. */
const seedsEach = 40;

/** The exercises of a sheet: its topics in turn, no two alike. */
export function sheetExercises({ seed, level, topics }: SheetChoice): readonly Exercise[] {
  const asked = new Set<string>();
  return Array.from({ length: count }, (_, i) => {
    const first = (seed * count + i) * seedsEach;
    const exercise = unasked(pick(topics, i % topics.length), first);
    asked.add(askedBy(exercise));
    return exercise;
  });

  function unasked(topic: ExerciseTopic, first: number): Exercise {
    let exercise = makeExercise(topic, level, first);
    for (let again = 1; again < seedsEach && asked.has(askedBy(exercise)); again++)
      exercise = makeExercise(topic, level, first + again);
    return exercise;
  }
}

/** What tells two exercises apart: two drawn sweeps may have the same words. */
const askedBy = ({ question, working }: Exercise): string => `${question} ${working.answer.value}`;
