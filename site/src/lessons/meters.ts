import {
  type Circuit,
  type DigitalMeter,
  dropoutOf,
  type ModelledDropout,
  type Ohms,
  type Seconds,
} from '@truesweep/core';
import { lessonWords } from '@truesweep/wording/working';
import { bench } from './bench.js';
import type { LessonSlider, Places } from './lesson.js';
import { pick } from './pick.js';

const inputs: readonly Ohms[] = [10e3, 20e3, 50e3, 100e3, 200e3, 500e3, 1e6, 10e6];
const lengths: readonly Seconds[] = [0.005, 0.01, 0.02, 0.03, 0.05, 0.1, 0.2, 0.4];

export const meterSliders: readonly LessonSlider[] = [
  { name: 'input', label: lessonWords.meterInput, most: inputs.length - 1, first: 1 },
  { name: 'length', label: lessonWords.dropoutLength, most: lengths.length - 1, first: 3 },
];

/** Where the dropout lies. */
const travel = 0.5;

/** A bench, a meter on it that averages a tenth of a second and shows a new number every 0.4 s, and a dropout. */
export function metersAt([input, length]: Places): {
  readonly circuit: Circuit;
  readonly meter: DigitalMeter;
  readonly dropout: ModelledDropout;
} {
  const meter: DigitalMeter = {
    kind: 'digital-meter',
    name: 'meter',
    inputOhms: pick(inputs, input),
    ranges: [5.999],
    counts: 5999,
    aperture: 0.1,
    deadTime: 0.02,
    displayInterval: 0.4,
  };
  return { circuit: bench, meter, dropout: dropoutOf(bench, meter, travel, pick(lengths, length)) };
}
