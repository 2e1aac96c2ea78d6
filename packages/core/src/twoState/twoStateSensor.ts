import { InputError } from '../errors.js';
import { checkKind, type FieldRule, type FieldRules } from '../fields.js';
import { between, yesOrNo } from '../guard.js';
import { checkLimits, type ReadingLimits } from '../judgement/checkLimits.js';
import type { Degrees } from '../units.js';

/** A sensor or switch that knows two states, and what it must read in each. */
export interface TwoStateSensor {
  /**
   * What is read: volts at its signal terminal, V; the same as a ratio to the supply that is measured beside it, without unit; or the resistance of a contact,
   * Ω. The windows bear that unit. A contact that must be open has no upper limit; one that must be closed no lower one.
   */
  readonly kind: 'volts' | 'ratio' | 'ohms';
  /** What it reads at rest: upright, the stand up, nothing pressed. */
  readonly rest: ReadingLimits;
  /** What it reads when it is operated: tilted, the stand down, pressed. It may be above or below `rest`, and shares no value with it. */
  readonly operated: ReadingLimits;
  /** Whether it stays operated, back at rest, until the key was switched off and on. */
  readonly latched: boolean;
  /** Whether it must answer to both directions: to a lean to the left and to the right. */
  readonly bothWays: boolean;
  /** Between which angles from rest it must change; not judged when left out. */
  readonly changesBetween?: {
    /** Not yet at less, °, 0 to 180. */
    readonly low: Degrees;
    /** At this by the latest, °, 0 to 180, not below `low`. */
    readonly high: Degrees;
  };
}

const angle = between(0, 180, '°');

function rules(limit: FieldRule): FieldRules {
  const window = { 'low?': limit, 'high?': limit };
  return {
    rest: window,
    operated: window,
    latched: yesOrNo,
    bothWays: yesOrNo,
    'changesBetween?': { low: angle, high: angle },
  };
}

const kinds: Readonly<Record<TwoStateSensor['kind'], FieldRules>> = {
  volts: rules(between(-100, 100, 'V')),
  ratio: rules(between(-1, 2)),
  ohms: rules(between(0, 1e12, 'Ω')),
};

/** Refuses what is no sensor of two states, or one whose windows overlap. */
export function checkTwoStateSensor(sensor: TwoStateSensor): void {
  checkKind(sensor, 'sensor', kinds);
  const { rest, operated, changesBetween } = sensor;
  checkLimits(rest, 'sensor.rest');
  checkLimits(operated, 'sensor.operated');
  if (changesBetween) checkLimits(changesBetween, 'sensor.changesBetween');
  if (isBelow(rest, operated) || isBelow(operated, rest)) return;
  throw new InputError(
    'out-of-order',
    'sensor.operated',
    'sensor.operated overlaps sensor.rest; the two must lie apart.',
  );
}

function isBelow({ high = Infinity }: ReadingLimits, { low = -Infinity }: ReadingLimits): boolean {
  return high < low;
}
