import { explainDirt, explainDropoutChance } from '@truesweep/explain';
import { dirtySpot, dropoutAt } from '../lessons/dropout.js';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { written } from './written.js';

/** What the dirt changes, and with which chance a slow logger reads while the wiper is lifted. */
export function stepsOf(places: Places): LessonSteps {
  const { circuit, ohms, logger, dropout } = dropoutAt(places);
  return {
    workings: written(
      () => explainDirt(circuit, dirtySpot.travel, ohms),
      () => explainDropoutChance(logger, dropout, 6),
    ),
  };
}
