import type { DigitalMeter, Instrument, Oscilloscope } from './instrument.js';

const digitalMeter: DigitalMeter = {
  kind: 'digital-meter',
  name: 'digital meter',
  inputOhms: 10e6,
  inputFarads: 100e-12,
  ranges: [1.999, 19.99],
  counts: 1999,
  aperture: 0.1,
  deadTime: 0.02,
  displayInterval: 0.4,
  accuracy: { ofReading: 0.005, counts: 2 },
};

const oscilloscope: Oscilloscope = {
  kind: 'oscilloscope',
  name: 'scope, roll of 50 s',
  inputOhms: 10e6,
  inputFarads: 15e-12,
  range: { low: -2, high: 6 },
  bits: 8,
  bandwidth: 20e6,
  record: 50,
  memory: 2500,
  fastest: 1e-8,
};

const usual = (): readonly Instrument[] => [
  digitalMeter,
  { ...digitalMeter, name: 'digital meter, extremes', keepsExtremes: true },
  {
    kind: 'needle-meter',
    name: 'needle, 20 kΩ/V',
    inputFarads: 50e-12,
    ohmsPerVolt: 20e3,
    range: 10,
    accuracyClass: 0.025,
    parallax: 0.005,
  },
  oscilloscope,
  { ...oscilloscope, name: 'scope, roll, peaks kept', keepsPeaks: true },
  {
    kind: 'logger',
    name: 'logger, 1 kHz',
    inputOhms: 10e6,
    inputFarads: 100e-12,
    range: { low: 0, high: 10 },
    bits: 12,
    interval: 1e-3,
    filter: 0,
  },
  {
    kind: 'logger',
    name: 'microcontroller, 50 Hz',
    inputOhms: 100e6,
    inputFarads: 20e-12,
    range: { low: 0, high: 5 },
    bits: 10,
    interval: 20e-3,
    filter: 1e-3,
  },
  {
    kind: 'control-unit',
    name: 'control unit, invented',
    inputFarads: 10e-9,
    pullDown: 220e3,
    filter: 2e-3,
    interval: 10e-3,
    limits: { low: 0.2, high: 4.8 },
    debounce: 0.1,
  },
];

/**
 * Instruments as they stand on benches, to compare: usual values of their kinds, common practice without a source. The control unit's limits are
 * invented. Replace each by the data of the instrument at hand.
 *
 * @example
 * exampleInstruments.map(({ kind }) => kind).includes('needle-meter') // => true
 */
// Marked pure, so that a page that doesn't use them doesn't carry them: a spread alone counts as an effect.
export const exampleInstruments: readonly Instrument[] = /* @__PURE__ */ usual();
