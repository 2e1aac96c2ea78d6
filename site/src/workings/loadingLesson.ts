import { explainLoadingError, explainOperatingPoint } from '@truesweep/explain';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { loadedDivider } from '../lessons/loadedDivider.js';
import { loadingAt } from '../lessons/loading.js';
import { written } from './written.js';

/** How a loaded reading comes about, and where the load takes most. */
export function stepsOf(places: Places): LessonSteps {
  const entries = loadingAt(places);
  const { circuit } = loadedDivider(entries);
  return {
    workings: written(
      () => explainOperatingPoint(circuit, entries.position),
      () => explainLoadingError(circuit),
    ),
  };
}
