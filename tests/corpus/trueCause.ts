import type { Cause } from '@truesweep/core';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';
import type { TrueEvent } from './trueEvents.js';
import { isPlainInterference, surely } from './trueOutcomes.js';
import type { Outcome } from './truth.js';

/** The cause, where it is scored: at least three whole passes, one fault, and enough of it to be seen. */
export function trueCause(
  plan: CorpusPlan,
  simulated: Simulated,
  events: readonly TrueEvent[],
  parts: Readonly<Record<string, readonly Outcome[]>>,
): { readonly causes?: readonly Cause[] } {
  if (parts.wiring) return parts.wiring.length === 1 ? { causes: ['wiring'] } : {};
  if (wholePasses(simulated) < 3 || plan.className === 'two faults') return {};
  const breached = (part: string): boolean => parts[part]?.includes('conforms') === false;
  const may = (part: string): boolean =>
    parts[part]?.some((outcome) => outcome !== 'conforms') === true;
  const others: Cause[] = [
    ...(may('ends') ? (['ends'] as const) : []),
    ...(may('closed rest') ? (['closed-rest'] as const) : []),
  ];
  if (plan.faults.length === 0) {
    if (plan.className === 'sticky return')
      return breached('closed rest')
        ? { causes: [...new Set<Cause>(['closed-rest', ...others])] }
        : {};
    return breached('ends') ? { causes: ['ends'] } : {};
  }
  const sure = events.filter(({ ratio, counted }) => ratio >= surely && counted);
  const first = sure[0];
  if (plan.faults[0]!.kind === 'slipped') return first ? { causes: ['track', ...others] } : {};
  if (sure.length < 2) return {};
  if (first!.cause === 'interference' && !isPlainInterference(sure)) return {};
  return { causes: [first!.cause, ...(first!.cause === 'track' ? others : [])] };
}

/** Whole openings and closings, snaps included. */
function wholePasses({ motion }: Simulated): number {
  return motion.stages.filter(
    ({ kind, from, to }) =>
      kind !== 'rest' && Math.abs(to - from) > 0.75 && (from === 1 || to === 1),
  ).length;
}
