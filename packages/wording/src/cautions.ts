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
  'manual-first':
    "The machine's service manual, local rules and, where one is required, a licensed technician come before anything said here.",
  'battery-and-fuel':
    'Disconnect the battery before you open fuel or electrical connections, and keep a powered bench away from fuel vapour.',
  static:
    'Static discharge can harm a control unit: touch grounded metal and follow the manual before you unplug it.',
  unplugged:
    "Never feed a sensor that is still plugged in: the current runs back into the control unit's reference.",
  limiter:
    "Find the terminals first and never feed a sensor without its limiting resistor; a supply's current limit does not replace it.",
  'not-hall':
    'A non-contacting sensor (Hall, inductive) is no potentiometer: do not test it this way.',
  fingers: 'Keep fingers out of the bore: the plate can snap shut.',
  'electronic-throttle':
    'A sensor of an electronic throttle is never released by a bench result alone.',
  'snaps-shut':
    'Before the engine runs, the throttle must snap fully shut by itself at every handlebar or pedal position.',
  'starting-points': "The limits used here are starting points; the maker's service data wins.",
};
