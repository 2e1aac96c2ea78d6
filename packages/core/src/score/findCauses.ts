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
 */
export function findCauses(
  checks: readonly Check[],
  weights: CauseWeights | undefined,
  real: Fraction = 1,
): Score['causes'] {
  const bad = (code: Check['check']): boolean => {
    const outcome = checks.find(({ check }) => check === code)?.outcome;
    return outcome === 'fails' || outcome === 'marginal';
  };
  const end = bad('closed-end') || bad('open-end');
  const still = checks.some(
    ({ check, outcome }) => check === 'live-output' && outcome !== 'conforms',
  );
  if (bad('live-output') || (end && still)) return [{ cause: 'wiring', weight: 1 }];
  if (weights) return leading(weights, real);
  if (bad('supply')) return [{ cause: 'wiring', weight: 1 }];
  if (bad('closed-end') && bad('open-end')) return halves('wiring', 'ends');
  if (end) return [{ cause: 'ends', weight: 1 }];
  if (bad('closed-rest')) return [{ cause: 'closed-rest', weight: 1 }];
  if (checks.some(({ outcome }) => outcome === 'cannot-tell')) {
    return [{ cause: 'recording', weight: 1 }];
  }
  return [{ cause: 'none', weight: 1 }];
}

function leading(weights: CauseWeights, real: Fraction): Score['causes'] {
  return (['track', 'connection', 'interference'] as const)
    .filter((cause) => weights[cause] >= leastWeight)
    .map((cause) => ({ cause, weight: roundedOdds(real * weights[cause]) }))
    .sort((a, b) => b.weight - a.weight);
}

function halves(one: Cause, other: Cause): Score['causes'] {
  return [
    { cause: one, weight: 0.5 },
    { cause: other, weight: 0.5 },
  ];
}
