import { InputError } from '../errors.js';
import { finiteBetween, oneOf, positive, resistance, wholeNumber } from '../guard.js';
import type {
  ControlUnit,
  DigitalMeter,
  InputRange,
  Instrument,
  Logger,
  NeedleMeter,
  Oscilloscope,
} from './instrument.js';
import { checkMovement } from './needleMovement.js';

const most = 1e9;

/** Refuses what no instrument can be. */
export function checkInstrument(instrument: Instrument): void {
  oneOf(
    instrument.kind,
    ['digital-meter', 'needle-meter', 'oscilloscope', 'logger', 'control-unit'],
    'instrument.kind',
  );
  finiteBetween(instrument.inputFarads ?? 0, 0, 1, 'instrument.inputFarads', 'F');
  if (instrument.kind === 'digital-meter') checkDigitalMeter(instrument);
  else if (instrument.kind === 'needle-meter') checkNeedleMeter(instrument);
  else if (instrument.kind === 'oscilloscope') checkOscilloscope(instrument);
  else if (instrument.kind === 'logger') checkLogger(instrument);
  else checkControlUnit(instrument);
}

function checkDigitalMeter(meter: DigitalMeter): void {
  const { inputOhms, ranges, counts, heldRange, aperture, deadTime = 0 } = meter;
  const { displayInterval, rangeChange, accuracy } = meter;
  someOhms(inputOhms, 'instrument.inputOhms');
  wholeNumber(counts, 1, 1e9, 'instrument.counts');
  wholeNumber(ranges?.length, 1, 100, 'instrument.ranges.length');
  for (const [i, range] of ranges.entries()) {
    finiteBetween(range, ranges[i - 1] ?? 1e-9, most, `instrument.ranges[${i}]`, 'V');
  }
  positive(aperture, 'instrument.aperture', 's');
  finiteBetween(deadTime, 0, most, 'instrument.deadTime', 's');
  if (displayInterval !== undefined) {
    positive(displayInterval, 'instrument.displayInterval', 's');
    if (displayInterval < (aperture + deadTime) * (1 - 1e-9)) {
      impossible(
        'displayInterval',
        `${displayInterval} s, shorter than aperture and dead time together, ${aperture + deadTime} s; a display can't change more often than there are conversions`,
      );
    }
  }
  if (heldRange !== undefined && !ranges.includes(heldRange)) {
    impossible('heldRange', `${heldRange} V, which is none of the ranges`);
  }
  if (rangeChange) {
    finiteBetween(rangeChange.up, 0.1, 10, 'instrument.rangeChange.up');
    finiteBetween(rangeChange.down, 0, rangeChange.up, 'instrument.rangeChange.down');
    finiteBetween(rangeChange.blank, 0, most, 'instrument.rangeChange.blank', 's');
  }
  if (accuracy) {
    finiteBetween(accuracy.ofReading, 0, 1, 'instrument.accuracy.ofReading');
    finiteBetween(accuracy.counts, 0, counts, 'instrument.accuracy.counts');
  }
}

function checkNeedleMeter(meter: NeedleMeter): void {
  const { ohmsPerVolt, range, movement, accuracyClass = 0, parallax = 0, noticed = 0 } = meter;
  someOhms(ohmsPerVolt, 'instrument.ohmsPerVolt');
  positive(range, 'instrument.range', 'V');
  if (movement) checkMovement(movement, 'instrument.movement');
  finiteBetween(accuracyClass, 0, 1, 'instrument.accuracyClass');
  finiteBetween(parallax, 0, 1, 'instrument.parallax');
  finiteBetween(noticed, 0, 1, 'instrument.noticed');
}

function checkOscilloscope(scope: Oscilloscope): void {
  someOhms(scope.inputOhms, 'instrument.inputOhms');
  checkRange(scope.range, 'instrument.range');
  wholeNumber(scope.bits, 1, 32, 'instrument.bits');
  if (scope.bandwidth !== undefined) positive(scope.bandwidth, 'instrument.bandwidth', 'Hz');
  positive(scope.record, 'instrument.record', 's');
  wholeNumber(scope.memory, 2, 1e12, 'instrument.memory');
  positive(scope.fastest, 'instrument.fastest', 's');
  finiteBetween(scope.offsetError ?? 0, 0, most, 'instrument.offsetError', 'V');
  finiteBetween(scope.gainError ?? 0, 0, 1, 'instrument.gainError');
}

function checkLogger(logger: Logger): void {
  someOhms(logger.inputOhms, 'instrument.inputOhms');
  checkRange(logger.range, 'instrument.range');
  wholeNumber(logger.bits, 1, 32, 'instrument.bits');
  positive(logger.interval, 'instrument.interval', 's');
  finiteBetween(logger.filter ?? 0, 0, most, 'instrument.filter', 's');
  if (logger.highPass !== undefined) positive(logger.highPass, 'instrument.highPass', 's');
  const { sampling } = logger;
  if (!sampling) return;
  finiteBetween(sampling.ohms, 0, most, 'instrument.sampling.ohms', 'Ω');
  positive(sampling.farads, 'instrument.sampling.farads', 'F');
  positive(sampling.seconds, 'instrument.sampling.seconds', 's');
  if (sampling.seconds <= logger.interval) return;
  impossible('sampling.seconds', `${sampling.seconds} s, longer than the interval of samples`);
}

function checkControlUnit(unit: ControlUnit): void {
  if (unit.pullDown !== undefined) someOhms(unit.pullDown, 'instrument.pullDown');
  positive(unit.interval, 'instrument.interval', 's');
  finiteBetween(unit.filter ?? 0, 0, most, 'instrument.filter', 's');
  checkRange(unit.limits, 'instrument.limits');
  finiteBetween(unit.debounce, 0, most, 'instrument.debounce', 's');
}

function someOhms(value: unknown, path: string): void {
  if (resistance(value, path) === 0) positive(value, path, 'Ω');
}

function checkRange({ low, high }: InputRange, path: string): void {
  finiteBetween(low, -most, most, `${path}.low`, 'V');
  finiteBetween(high, low, most, `${path}.high`, 'V');
  if (high === low) impossible(path.replace('instrument.', ''), 'empty: high must be above low');
}

function impossible(field: string, wrong: string): never {
  throw new InputError(
    'impossible-setting',
    `instrument.${field}`,
    `instrument.${field} is ${wrong}.`,
  );
}
