import { explainLimiter, explainMistake, explainOperatingPoint } from '@truesweep/explain';
import { openStop } from '../lessons/bench.js';
import type { LessonSteps, Places } from '../lessons/lesson.js';
import { limiterAt, limiterRatings, wrongConnection } from '../lessons/limiter.js';
import { written } from './written.js';

/** What flows while a lead sits wrongly, what the limiting resistor costs at the open stop, and how large it must be. */
export function stepsOf(places: Places): LessonSteps {
  const { circuit, position } = limiterAt(places);
  const mistake = { kind: 'exchanged-leads', connection: wrongConnection } as const;
  return {
    workings: written(
      () => explainMistake(circuit, mistake, position),
      () => explainOperatingPoint(circuit, openStop),
      () => explainLimiter(circuit, limiterRatings),
    ),
  };
}
