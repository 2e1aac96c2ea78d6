import { pullUpRule } from '../circuit/checkCircuit.js';
import { InputError } from '../errors.js';
import { checkFields, checkKind, type FieldRules, listOf } from '../fields.js';
import {
  above0,
  between,
  finiteBetween,
  positive,
  resistance,
  text,
  wholeBetween,
  yesOrNo,
} from '../guard.js';
import type { DigitalMeter, InputRange, Instrument, Logger } from './instrument.js';
import { movementRules } from './needleMovement.js';

const most = 1e9;
const leastRange = 1e-9;
const someTime = above0('s');
const duration = between(0, most, 's');
const part = between(0, 1);

const someOhms = (value: unknown, path: string): void => {
  if (resistance(value, path) === 0) positive(value, path, 'Ω');
};

const range = (value: unknown, path: string): void => {
  checkFields(value, path, { low: between(-most, most, 'V'), high: between(-most, most, 'V') });
  const { low, high } = value as InputRange;
  finiteBetween(high, low, most, `${path}.high`, 'V');
  if (high - low < leastRange) {
    impossible(path, `empty: high must be at least ${leastRange} V above low`);
  }
};

const named = (rules: FieldRules): FieldRules => ({
  name: text,
  'inputFarads?': between(0, 1, 'F'),
  ...rules,
});

/** Made when they are needed: a page that checks no instrument carries no table. */
const kinds = (): Readonly<Record<Instrument['kind'], FieldRules>> => ({
  'digital-meter': named({
    inputOhms: someOhms,
    ranges: listOf(between(1e-9, most, 'V'), 1, 100),
    counts: wholeBetween(1, 1e9),
    'heldRange?': between(1e-9, most, 'V'),
    aperture: someTime,
    'deadTime?': duration,
    'displayInterval?': someTime,
    'rangeChange?': { up: between(0.1, 10), down: between(0, 10), blank: duration },
    'accuracy?': { ofReading: part, counts: between(0, 1e9) },
    'keepsExtremes?': yesOrNo,
  }),
  'needle-meter': named({
    ohmsPerVolt: someOhms,
    range: between(1e-9, most, 'V'),
    'movement?': movementRules,
    'accuracyClass?': part,
    'parallax?': part,
    'noticed?': part,
  }),
  oscilloscope: named({
    inputOhms: someOhms,
    range,
    bits: wholeBetween(1, 32),
    'bandwidth?': above0('Hz'),
    record: someTime,
    memory: wholeBetween(2, 1e12),
    fastest: someTime,
    'keepsPeaks?': yesOrNo,
    'offsetError?': between(0, most, 'V'),
    'gainError?': part,
  }),
  logger: named({
    inputOhms: someOhms,
    range,
    bits: wholeBetween(1, 32),
    interval: someTime,
    'filter?': duration,
    'sampling?': { ohms: between(0, most, 'Ω'), farads: above0('F'), seconds: someTime },
    'highPass?': someTime,
  }),
  'control-unit': named({
    'pullDown?': someOhms,
    'pullUp?': pullUpRule,
    interval: someTime,
    'filter?': duration,
    limits: range,
    debounce: duration,
  }),
});

/** Refuses what no instrument can be, or one of another kind than these. */
export function checkInstrument(
  instrument: Instrument,
  wanted?: readonly Instrument['kind'][],
  path = 'instrument',
): void {
  const all = Object.entries(kinds());
  const known = all.filter(([kind]) => wanted?.includes(kind as Instrument['kind']) ?? true);
  checkKind(instrument, path, Object.fromEntries(known));
  if (instrument.kind === 'digital-meter') checkDigitalMeter(instrument, path);
  if (instrument.kind === 'logger') checkLogger(instrument, path);
}

function checkDigitalMeter(meter: DigitalMeter, path: string): void {
  const { ranges, counts, heldRange, aperture, deadTime = 0 } = meter;
  const { displayInterval, rangeChange, accuracy } = meter;
  for (const [i, range] of ranges.entries()) {
    finiteBetween(range, ranges[i - 1] ?? 0, most, `${path}.ranges[${i}]`, 'V');
  }
  if (displayInterval !== undefined && displayInterval < (aperture + deadTime) * (1 - 1e-9)) {
    impossible(
      `${path}.displayInterval`,
      `${displayInterval} s, shorter than aperture and dead time together, ${aperture + deadTime} s; a display can't change more often than there are conversions`,
    );
  }
  if (heldRange !== undefined && !ranges.includes(heldRange)) {
    impossible(`${path}.heldRange`, `${heldRange} V, which is none of the ranges`);
  }
  if (rangeChange) finiteBetween(rangeChange.down, 0, rangeChange.up, `${path}.rangeChange.down`);
  if (accuracy) finiteBetween(accuracy.counts, 0, counts, `${path}.accuracy.counts`);
}

function checkLogger({ sampling, interval }: Logger, path: string): void {
  if (!sampling || sampling.seconds <= interval) return;
  impossible(
    `${path}.sampling.seconds`,
    `${sampling.seconds} s, longer than the interval of samples`,
  );
}

function impossible(path: string, wrong: string): never {
  throw new InputError('impossible-setting', path, `${path} is ${wrong}.`);
}
