import { type Advice, listOf } from '@truesweep/core';
import { codeOf } from './rules.js';

/** What a caution is about. */
export type Caution =
  | 'manual-first'
  | 'battery-and-fuel'
  | 'static'
  | 'unplugged'
  | 'limiter'
  | 'not-hall'
  | 'fingers'
  | 'electronic-throttle'
  | 'snaps-shut'
  | 'hot-bath'
  | 'coil-kick'
  | 'low-ohm-coil'
  | 'hand-pump'
  | 'starting-points';

/**
 * Usual cautions of the trade; each gives way to the service manual, local rules and licensed practice.
 *
 * @example
 * cautions.fingers // => 'Keep fingers out of the bore: the plate can snap shut.'
 */
export const cautions: Readonly<Record<Caution, string>> = {
  'battery-and-fuel':
    'Disconnect the battery before you open fuel or electrical connections, and keep a powered bench away from fuel vapour.',
  static: 'Touch grounded metal before you unplug a control unit: static can harm it.',
  unplugged: 'Never feed a sensor that is still plugged in to a control unit.',
  limiter:
    "Find the terminals first; never feed a sensor without its limiting resistor. A supply's current limit does not replace it.",
  'not-hall': 'A Hall or inductive sensor is no potentiometer: do not test it this way.',
  fingers: 'Keep fingers out of the bore: the plate can snap shut.',
  'electronic-throttle': 'A bench result alone never releases a sensor of an electronic throttle.',
  'snaps-shut':
    'Before the engine runs, the throttle must snap fully shut by itself at every handlebar or pedal position.',
  'hot-bath': 'Hot and boiling water scalds; keep mains-fed meters and bare ends out of baths.',
  'coil-kick':
    'Never open a fed coil by hand: it kicks with hundreds of volts and more, and the spark lights fuel vapour.',
  'low-ohm-coil':
    'Never hold a coil of a few ohms on a battery for more than an instant: it burns (common practice, no source).',
  'hand-pump':
    'Move a pressure sensor by a hand pump only, never by compressed air, and keep fuel vapour out of it.',
  'starting-points': "The limits used are starting points; the maker's service data wins.",
  'manual-first':
    "The machine's service manual, local rules and licensed practice come before all this.",
};

/**
 * The cautions that concern a potentiometer's sweep: all but those of other sensors.
 *
 * @example
 * sweepCautions().includes('limiter') // => true
 */
export function sweepCautions(): readonly Caution[] {
  return (Object.keys(cautions) as Caution[]).filter(
    (one) => !['hot-bath', 'coil-kick', 'low-ohm-coil', 'hand-pump'].includes(one),
  );
}

/** The cautions that concern whoever does what is advised. */
const ofAdvice: Readonly<Record<Advice, readonly Caution[]>> = {
  refit: ['snaps-shut', 'electronic-throttle'],
  'replace-sensor': ['battery-and-fuel', 'static', 'snaps-shut', 'electronic-throttle'],
  'prove-connection': ['static', 'unplugged', 'fingers'],
  'remove-interference': ['unplugged', 'battery-and-fuel'],
  'check-wiring': ['unplugged', 'limiter'],
  'check-adjustment': ['fingers', 'snaps-shut', 'not-hall'],
  'state-tolerances': ['starting-points', 'manual-first'],
  'record-more-returns': ['unplugged', 'fingers'],
  'record-again': ['unplugged', 'fingers'],
  'record-faster': ['unplugged', 'fingers'],
  'record-without-smoothing': ['unplugged', 'fingers'],
  'record-quieter': ['unplugged', 'fingers'],
  'record-whole-strokes': ['unplugged', 'fingers'],
  'couple-directly': ['unplugged', 'fingers'],
  'change-range': ['unplugged', 'fingers'],
  'record-every-reading': ['unplugged', 'fingers'],
  'complete-recording': ['unplugged', 'fingers'],
  'finer-instrument': ['unplugged', 'fingers'],
  'tighten-criteria': ['starting-points', 'manual-first'],
  'tell-units': ['starting-points', 'manual-first'],
};

/**
 * The cautions that concern what is advised, in their usual order; where a fault was found those for hands at the throttle too.
 *
 * @example
 * adviceCautions(['refit'], false) // => ['electronic-throttle', 'snaps-shut']
 */
export function adviceCautions(advice: readonly Advice[], isFault: boolean): readonly Caution[] {
  listOf(codeOf(ofAdvice))(advice, 'advice');
  const concerned = new Set(advice.flatMap((one) => ofAdvice[one]));
  if (isFault) for (const one of ['unplugged', 'fingers'] as const) concerned.add(one);
  return (Object.keys(cautions) as Caution[]).filter((one) => concerned.has(one));
}

/**
 * Stands below the cautions that concern a command, where the others are left out.
 *
 * @example
 * moreCautionsSentence.includes('truesweep --help') // => true
 */
export const moreCautionsSentence =
  "The machine's service manual, local rules and licensed practice come first. “truesweep --help” prints all the cautions.";
