import { explainDropoutChance, explainOperatingPoint } from '@truesweep/explain';
import { openStop } from '../lessons/bench.js';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { metersAt } from '../lessons/meters.js';
import { written } from './written.js';

/** What the meter's input takes at the open stop, and with which chance it shows the dropout in three passes. */
export function stepsOf(places: Places): LessonSteps {
  const { circuit, meter, dropout } = metersAt(places);
  return {
    workings: written(
      () => explainOperatingPoint({ ...circuit, load: { pullDown: meter.inputOhms } }, openStop),
      () => explainDropoutChance(meter, dropout, 3),
    ),
  };
}
