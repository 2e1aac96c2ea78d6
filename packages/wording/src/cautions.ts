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
  'starting-points': "The limits used are starting points; the maker's service data wins.",
  'manual-first':
    "The machine's service manual, local rules and licensed practice come before all this.",
};
