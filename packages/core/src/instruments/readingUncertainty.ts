import { finiteBetween } from '../guard.js';
import type { Volts } from '../units.js';
import { checkInstrument } from './checkInstrument.js';
import type { Instrument } from './instrument.js';
import { rangeFor } from './rangeFor.js';
import { stepOf } from './sampling.js';

/** Half-widths are limits of a rectangular distribution: divided by √3 (JCGM 100:2008, 4.3.7). */
const fromHalfWidth = 1 / Math.sqrt(3);

/**
 * The standard uncertainty of a reading, V: from the data sheet's limits and from the step of the display, each rectangular (JCGM 100:2008, 4.3.7 and
 * F.2.2.1). What was not told counts as 0.
 *
 * @param volts The reading.
 * @throws InputError for what no instrument can be.
 *
 * @example
 * const meter = { kind: 'digital-meter', name: 'Hand-held meter', inputOhms: 10e6, ranges: [1.999, 19.99], counts: 1999, aperture: 0.1, accuracy: { ofReading: 0.005, counts: 2 } } as const;
 * readingUncertainty(meter, 1.5).toFixed(5) // => '0.00549'
 */
export function readingUncertainty(instrument: Instrument, volts: Volts): Volts {
  checkInstrument(instrument);
  finiteBetween(volts, -1e9, 1e9, 'volts', 'V');
  return Math.hypot(...halfWidths(instrument, volts)) * fromHalfWidth;
}

function halfWidths(instrument: Instrument, volts: Volts): readonly Volts[] {
  switch (instrument.kind) {
    case 'digital-meter': {
      const step = (rangeFor(instrument, volts) ?? instrument.ranges.at(-1)!) / instrument.counts;
      const { ofReading = 0, counts = 0 } = instrument.accuracy ?? {};
      return [ofReading * Math.abs(volts) + counts * step, step / 2];
    }
    case 'needle-meter': {
      const { accuracyClass = 0, parallax = 0, range } = instrument;
      return [accuracyClass * range, parallax * range];
    }
    case 'oscilloscope': {
      const { offsetError = 0, gainError = 0 } = instrument;
      return [offsetError, gainError * Math.abs(volts), stepOf(instrument) / 2];
    }
    case 'logger':
      return [stepOf(instrument) / 2];
    case 'control-unit':
      return [0];
  }
}
