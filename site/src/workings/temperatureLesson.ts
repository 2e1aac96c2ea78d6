import { explainThermistor } from '@truesweep/explain';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { temperatureAt, temperatureLaw } from '../lessons/temperature.js';
import { written } from './written.js';

/** The resistance at the temperature, and the voltage on the pull-up. */
export function stepsOf(places: Places): LessonSteps {
  const { temperature, divider } = temperatureAt(places);
  return { workings: written(() => explainThermistor(divider, temperatureLaw, temperature)) };
}
