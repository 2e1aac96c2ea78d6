import { say } from './say.js';

/** The entries of a trouble code and what was seen of it. */
export type CodeEntry =
  | 'code'
  | 'unplugged'
  | 'bridged'
  | 'leads'
  | 'pull'
  | 'plugSupply'
  | 'side'
  | 'limitVolts'
  | 'unitSupply';

/**
 * What each entry of a trouble code is called.
 *
 * @example
 * codeLabels.bridged // => 'Unplugged, the plug bridged'
 */
export const codeLabels: Readonly<Record<CodeEntry, string>> = {
  code: 'Code, sensor plugged in',
  unplugged: 'The signal, sensor unplugged',
  bridged: 'Unplugged, the plug bridged',
  leads: 'The leads by an ohmmeter',
  pull: 'The unit pulls the signal',
  plugSupply: 'The supply at the plug',
  side: 'The page says that it is set',
  limitVolts: 'Voltage that the page names',
  unitSupply: 'What the unit’s circuit is fed from',
};

/**
 * What each entry of a trouble code means, in one line.
 *
 * @example
 * codeHints.unplugged // => 'By a scan tool or a voltmeter at the plug: low, high, or between.'
 */
export const codeHints: Readonly<Record<CodeEntry, string>> = {
  code: 'P0105 to P0119: those of road vehicles; the machine may use its own.',
  unplugged: 'By a scan tool or a voltmeter at the plug: low, high, or between.',
  bridged:
    'A thermistor’s two terminals; of a pressure sensor the signal to where it isn’t pulled. Only where the service manual lets you, never the supply to ground.',
  leads: 'Unplugged at both ends, the battery off.',
  pull: 'Of a pressure sensor only; it differs from machine to machine.',
  plugSupply: 'At its feed terminal to its ground, of a pressure sensor only.',
  side: 'To tell a page that has two codes swapped.',
  limitVolts: 'Leave empty where the page names none.',
  unitSupply: 'Often 5 V.',
};

/**
 * Words of the page that reads a trouble code.
 *
 * @example
 * codeWords.sensors['coolant-temperature'] // => 'coolant temperature'
 */
export const codeWords = {
  pluggedIn: 'Plugged in',
  unplugged: 'Unplugged',
  page: 'What a service page says of it',
  notSeen: 'not looked at',
  signals: { low: 'low', high: 'high', between: 'between' },
  leadStates: { sound: 'sound', shorted: 'shorted', open: 'open' },
  pulls: { up: 'up', down: 'down' },
  supplies: { right: 'right', missing: 'missing' },
  sides: { below: 'below a voltage', above: 'above a voltage' },
  sensors: {
    'manifold-pressure': 'manifold or barometric pressure',
    'air-temperature': 'air temperature',
    'coolant-temperature': 'coolant temperature',
  },
  kinds: {
    circuit: 'a fault of the circuit, not told further',
    range: 'a value that doesn’t fit the others',
    low: 'a signal too low',
    high: 'a signal too high',
    intermittent: 'a signal that comes and goes',
  },
  says: (code: string, sensor: string, kind: string): string =>
    say`${code} says of the ${sensor}: ${kind}. It names a circuit, not a part.`,
  means: {
    'hot-or-shorted': 'Of a thermistor low volts are hot, or a short.',
    'cold-or-open': 'Of a thermistor high volts are cold, or no connection.',
  },
  conclusions: {
    sensor: 'The fault is the sensor’s, as far as this tells.',
    'wiring-short': 'The fault is a short in the wiring.',
    'wiring-open': 'The fault is an open lead.',
    'control-unit': 'The fault is the control unit’s.',
    'control-unit-or-wiring':
      'The fault lies in front of the plug: the wiring or the control unit.',
    'cannot-tell': 'Whose fault it is can’t be told yet.',
  },
  reasons: {
    'plugged-in-only': 'With the sensor plugged in nothing is told of a part.',
    'substitute-value':
      'A value between is one that the unit puts in place of the signal, and no reading.',
    'stays-unplugged': 'It is there without the sensor.',
    'gone-unplugged': 'It went with the sensor.',
    'looks-unplugged': 'A plug that is off looks as the code does.',
    'ignores-bridge': 'The unit doesn’t see the bridge at the plug.',
    'follows-plug': 'What the plug is made to show, the unit sees.',
    contradictory: 'These can’t all be true at once: something comes and goes.',
    'leads-shorted': 'The leads are shorted by themselves.',
    'leads-open': 'A lead is open by itself.',
    'no-supply': 'No supply stands at the plug.',
    'pull-unknown': 'Which way the unit pulls the signal isn’t known.',
  },
  steps: {
    unplug: 'Next: unplug the sensor, and look again.',
    bridge: 'Next: bridge the plug where the service manual lets you, and look again.',
    'read-volts': 'Next: read the volts at the plug with a meter.',
    'measure-leads': 'Next: measure the leads, unplugged at both ends.',
    'measure-supply': 'Next: measure the supply at the plug.',
    'measure-sensor': 'Next: judge the sensor by itself.',
    'move-leads': 'Next: move leads and plug while somebody watches the signal.',
    'find-pull': 'Next: find out which way the unit pulls: the signal’s volts with the plug off.',
  },
  comparisons: {
    agrees: 'The page’s limit agrees with the code.',
    swapped: (code: string): string =>
      say`The page has two codes swapped: such a limit belongs to ${code}.`,
    'cannot-tell':
      'Whether the page has the right side can’t be told: this code names no side, or the voltage is in the middle.',
  },
  notThermistor:
    'This belongs to a pressure sensor; a thermistor is pulled up and has no supply of its own.',
  aboveSupply: 'No limit is above what the circuit is fed from.',
  caution:
    'Switch the key off before a plug comes off, touch grounded metal first, and bridge only what the service manual lets you bridge.',
  numbers: 'What was seen, and what follows',
  what: 'What',
  value: 'Seen',
} as const;
