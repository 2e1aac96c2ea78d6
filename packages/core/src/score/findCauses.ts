import type { Fraction } from '../units.js';
import type { CauseWeights } from './contactEvent.js';
import { roundedOdds } from './roundedOdds.js';
import type { Cause, Check, Score } from './score.js';

/** A cause with less of the weight than this is not worth a sentence. */
const leastWeight = 0.05;

/**
 * What the evidence points to: the checks that went wrong first, then the causes of the departures.
 *
 * @param weights From the departures; nothing where there is none.
 * @param real How probable it is that the departures are real.
 * @param misconnected How probable it is that the leads are on wrong terminals.
 */
export function findCauses(
  checks: readonly Check[],
  weights: CauseWeights | undefined,
  real: Fraction = 1,
  misconnected: Fraction = 0,
): Score['causes'] {
  const bad = (code: Check['check']): boolean => {
    const outcome = checks.find(({ check }) => check === code)?.outcome;
    return outcome === 'fails' || outcome === 'marginal';
  };
  // Returns that scatter may leave their window, an end that lies elsewhere scatters no more for it.
  const end = bad('open-end') || (bad('closed-end') && !bad('closed-rest'));
  if (bad('live-output')) return [{ cause: 'wiring', weight: 1 }];
  if (weights) return leading(weights, real);
  if (bad('supply')) return [{ cause: 'wiring', weight: 1 }];
  if (end) return leading({ ends: 1 - misconnected, wiring: misconnected }, 1);
  if (bad('closed-rest')) return [{ cause: 'closed-rest', weight: 1 }];
  if (checks.some(({ outcome }) => outcome === 'cannot-tell')) {
    return [{ cause: 'recording', weight: 1 }];
  }
  return [{ cause: 'none', weight: 1 }];
}

function leading(weights: Partial<Record<Cause, Fraction>>, real: Fraction): Score['causes'] {
  return (Object.entries(weights) as (readonly [Cause, Fraction])[])
    .filter(([, weight]) => weight >= leastWeight)
    .map(([cause, weight]) => ({ cause, weight: roundedOdds(real * weight) }))
    .sort((a, b) => b.weight - a.weight);
}
