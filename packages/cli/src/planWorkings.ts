import { explainLimiter, explainMistake, type Working, whereWritten } from '@truesweep/explain';
import { type Job, jobCircuit } from '@truesweep/jobs';
import { type HookUpPlan, type PlanWishes, ratingsOf, wishOf } from './planHookUp.js';

/** How the limiting resistor comes about, and what each wrong connection does where it is worst for the wiper. */
export function planWorkings(
  job: Job,
  wishes: PlanWishes,
  { connections }: HookUpPlan,
): readonly Working[] {
  const circuit = jobCircuit(job);
  return whereWritten(
    () => explainLimiter(circuit, ratingsOf(wishes), wishOf(wishes)),
    ...connections.map(
      ({ mistake, planned }) =>
        () =>
          explainMistake(circuit, mistake, planned.ratings.wiper.position),
    ),
  );
}
