import type { Criteria } from '../criteria.js';
import type { Stroke } from '../sweep/movement.js';
import type { Cause, Check, Finding, Score } from './score.js';

/**
 * Weighs what the evidence points to. Departures at one travel on several passes speak for the track, at
 * different travel or at rest for a connection, both ways and regardless of travel for interference; one
 * dropout alone leaves track and connection equally likely.
 */
export function findCauses(
  findings: readonly Finding[],
  checks: readonly Check[],
  strokes: readonly Stroke[],
  criteria: Criteria,
): Score['causes'] {
  const bad = (code: Check['check']): boolean => {
    const outcome = checks.find(({ check }) => check === code)?.outcome;
    return outcome === 'fails' || outcome === 'marginal';
  };
  if (bad('live-output')) return [{ cause: 'wiring', weight: 1 }];
  if (findings.length > 0) return departureCauses(findings, strokes, criteria);
  if (bad('closed-end') && bad('open-end')) return halves('wiring', 'ends');
  if (bad('closed-end') || bad('open-end')) return [{ cause: 'ends', weight: 1 }];
  if (bad('closed-rest')) return [{ cause: 'closed-rest', weight: 1 }];
  if (checks.some(({ outcome }) => outcome === 'cannot-tell'))
    return [{ cause: 'recording', weight: 1 }];
  return [{ cause: 'none', weight: 1 }];
}

function departureCauses(
  findings: readonly Finding[],
  strokes: readonly Stroke[],
  criteria: Criteria,
): Score['causes'] {
  if (findings.some(({ kind }) => kind === 'step' || kind === 'dead-spot' || kind === 'rough')) {
    return [{ cause: 'track', weight: 1 }];
  }
  const spikes = findings.filter(({ kind }) => kind === 'spike');
  const moving = findings.filter(({ during }) => during !== 'rest');
  const together = mostAtOnePlace(moving, criteria.sameTravel);
  if (together >= 2 && together >= 0.6 * findings.length) return [{ cause: 'track', weight: 1 }];
  if (spikes.length > 0) return [{ cause: 'interference', weight: 1 }];
  const dropouts = findings.length - spikes.length;
  if (dropouts > 1 || moving.length === 0) return [{ cause: 'connection', weight: 1 }];
  return strokes.length > 0 ? halves('track', 'connection') : [{ cause: 'connection', weight: 1 }];
}

function mostAtOnePlace(findings: readonly Finding[], within: number): number {
  return findings.reduce((most, { travel }) => {
    const count = findings.filter((other) => Math.abs(other.travel - travel) <= within).length;
    return Math.max(most, count);
  }, 0);
}

function halves(one: Cause, other: Cause): Score['causes'] {
  return [
    { cause: one, weight: 0.5 },
    { cause: other, weight: 0.5 },
  ];
}
