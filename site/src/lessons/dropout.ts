import {
  type Circuit,
  dropoutOf,
  type Logger,
  type ModelledDropout,
  type Ohms,
} from '@truesweep/core';
import { lessonWords } from '@truesweep/wording/working';
import { bench } from './bench.js';
import type { LessonSlider, Places } from './lesson.js';
import { pick } from './pick.js';

const dirts: readonly Ohms[] = [1e3, 3e3, 10e3, 30e3, 100e3, 300e3, 1e6, 10e6];
const loads: readonly Ohms[] = [10e3, 30e3, 100e3, 300e3, 1e6, 10e6];

export const dropoutSliders: readonly LessonSlider[] = [
  { name: 'dirt', label: lessonWords.dirt, most: dirts.length - 1, first: 3 },
  { name: 'load', label: lessonWords.load, most: loads.length - 1, first: 1 },
];

/** Where the dirt is, 0 closed to 1 open, and how wide. */
export const dirtySpot = { travel: 0.4, width: 0.02 } as const;
/** How long an opening takes, s. */
export const openingSeconds = 1;

/** A bench with a load on the wiper, dirt under it, and a logger that the dropout is recorded with. */
export function dropoutAt([dirt, load]: Places): {
  readonly circuit: Circuit;
  readonly ohms: Ohms;
  readonly logger: Logger;
  readonly dropout: ModelledDropout;
} {
  const pullDown = pick(loads, load);
  const logger: Logger = {
    kind: 'logger',
    name: 'logger',
    inputOhms: pullDown,
    range: { low: 0, high: 5 },
    bits: 12,
    interval: 0.05,
  };
  return {
    circuit: { ...bench, load: { pullDown } },
    ohms: pick(dirts, dirt),
    logger,
    dropout: dropoutOf(bench, logger, dirtySpot.travel, dirtySpot.width * openingSeconds),
  };
}
