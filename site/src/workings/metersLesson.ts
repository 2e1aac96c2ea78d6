import { explainDropoutChance, explainOperatingPoint } from '@truesweep/explain';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { metersAt } from '../lessons/meters.js';
import { written } from './written.js';

/** What the meter's input takes at the open stop, and with which chance it shows the dropout in three passes. */
export function stepsOf(places: Places): LessonSteps {
  const { circuit, meter, dropout } = metersAt(places);
  return {
    workings: written(
      () => explainOperatingPoint({ ...circuit, load: { pullDown: meter.inputOhms } }, 0.9),
      () => explainDropoutChance(meter, dropout, 3),
    ),
  };
}
