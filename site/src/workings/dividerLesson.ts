import { explainOperatingPoint } from '@truesweep/explain';
import { dividerAt } from '../lessons/divider.js';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { written } from './written.js';

/** How the reading of a plain divider comes about. */
export function stepsOf(places: Places): LessonSteps {
  const { circuit, position } = dividerAt(places);
  return { workings: written(() => explainOperatingPoint(circuit, position)) };
}
