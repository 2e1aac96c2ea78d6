import type { Fraction, Travel, Verdict } from '@truesweep/core';
import type { WorldEvent } from '../worlds/worldCase.js';

export type Outcome = 'conforms' | 'marginal' | 'fails';

/** An event with how many samples it left beyond the visible departure, and how far the plate went from sample to sample. */
export interface SeenEvent extends WorldEvent {
  readonly samples: number;
  readonly swept: Travel;
}

/** From these ratios on an event may be seen, and is surely seen. */
const maybe = 0.7;
const surely = 1.4;

/** Neither a fall's speed nor a quick hand's hides it, and a pause of the hand would not leave so many samples behind. */
export function isSure(event: SeenEvent, visible: Fraction): boolean {
  const { ratio, fast, kinds, samples, swept } = event;
  const kind = kinds[0];
  if (fast || ratio * visible < swept * (kind === 'step' ? 3 : 1)) return false;
  if (kind === 'dead-spot') return ratio >= surely && samples >= 3;
  return ratio >= (kind === 'rough' ? 2 : surely);
}

/** Events closer than 0.1 s may count as one. */
function apart(events: readonly SeenEvent[]): number {
  return events.filter((one, i) => i === 0 || one.start - events[i - 1]!.end > 0.1).length;
}

/** What a fair judge may make of departures: repeated or deep ones fail, a single one must be settled. */
export function eventOutcomes(events: readonly SeenEvent[], visible: Fraction): readonly Outcome[] {
  const possible = events.filter(({ ratio }) => ratio >= maybe);
  if (possible.length === 0) return ['conforms'];
  const sure = events.filter((event) => isSure(event, visible));
  const times = apart(sure);
  const isDeadSpot = possible[0]!.kinds[0] === 'dead-spot';
  // One sample each could be anything that strikes.
  const plain = sure.filter(({ samples }) => samples >= 2).length;
  if (times >= 3 ? plain >= 1 || times >= 6 : times === 2 && plain >= 2 && !isDeadSpot)
    return ['fails'];
  const outcomes: Outcome[] = ['marginal'];
  const mayBeDeep = possible.some(({ ratio }) => ratio * visible >= 0.08);
  if (possible.length > 1 || mayBeDeep || times > 0) outcomes.push('fails');
  // A dead spot alone looks like a pause of the hand.
  if (times === 0 || (isDeadSpot && times === 1)) outcomes.push('conforms');
  return outcomes;
}

/** Interference never fails a sensor, but what went one way only nobody can tell from a contact. */
export function interferenceOutcomes(
  events: readonly SeenEvent[],
  bothWays: boolean,
): readonly Outcome[] {
  const possible = events.filter(({ ratio }) => ratio >= maybe);
  if (possible.length === 0) return ['conforms'];
  return bothWays ? ['conforms', 'marginal'] : ['conforms', 'marginal', 'fails'];
}

/** Outside a window by a share of the span: up to 2.5 % is marginal; unsure by a little. */
export function endOutcomes(excess: Fraction): readonly Outcome[] {
  return among(excess, 0, 0.025, 0.005);
}

/** The range of returns: up to 3 % is normal, up to 7 % marginal; a hand may have stopped short of closed. */
export function restOutcomes(
  range: Fraction,
  returns: number,
  byHand: boolean,
): readonly Outcome[] {
  if (returns < 2) return ['conforms'];
  const outcomes = among(range, 0.03, 0.07, 0.006);
  return byHand ? [...new Set<Outcome>(['conforms', ...outcomes])] : outcomes;
}

function among(
  value: number,
  normal: number,
  marginal: number,
  unsure: number,
): readonly Outcome[] {
  const outcomes = new Set<Outcome>();
  for (const off of [-unsure, 0, unsure]) {
    const at = value + off;
    outcomes.add(at <= normal ? 'conforms' : at <= marginal ? 'marginal' : 'fails');
  }
  return [...outcomes];
}

/**
 * All verdicts that some choice of one outcome from each part leads to. In a poor recording what was seen may be called
 * inconclusive too, but never a pass.
 */
export function fairVerdicts(
  parts: readonly (readonly Outcome[])[],
  adequate: boolean | undefined,
): readonly Verdict[] {
  const may = (outcome: Outcome): boolean => parts.some((part) => part.includes(outcome));
  const mustFail = parts.some((part) => part.every((one) => one === 'fails'));
  const allMay = (...allowed: readonly Outcome[]): boolean =>
    parts.every((part) => part.some((one) => allowed.includes(one)));
  const verdicts = new Set<Verdict>();
  if (may('fails')) verdicts.add('fail');
  if (!mustFail && may('marginal') && allMay('conforms', 'marginal')) verdicts.add('marginal');
  if (allMay('conforms') && adequate !== false) verdicts.add('pass');
  if (adequate !== true) verdicts.add('inconclusive');
  return [...verdicts];
}
