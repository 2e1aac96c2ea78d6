import type { Job } from '@truesweep/jobs';
import {
  checkSweepWords,
  entryHints,
  entryLabels,
  readingsWords,
  recorderHints,
  recorderLabels,
} from '@truesweep/wording';
import { hookUpEntries } from '../calculators/hookUp.js';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';

const entries = {
  jobTitle: { unit: 'text', initial: '' },
  ...hookUpEntries,
  resolution: { unit: 'V', low: 1e-9, high: 10, initial: '', optional: true },
  readingDoubt: { unit: 'V', low: 0, high: 10, initial: '', optional: true },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form of what recordings are judged by, where no job file says it. */
export const jobForm: Form<typeof entries> = {
  groups: [
    { title: checkSweepWords.job, names: ['jobTitle'] },
    {
      title: readingsWords.parts,
      names: ['source', 'limiter', 'track', 'input', 'closedPosition', 'openPosition'],
    },
    {
      title: readingsWords.tolerances,
      names: ['sourceTolerance', 'limiterTolerance', 'trackTolerance', 'positionTolerance'],
      folded: true,
    },
    {
      title: readingsWords.furtherParts,
      names: ['supplyLead', 'groundLead', 'contact', 'pullUp', 'pullUpVolts'],
      folded: true,
    },
    { title: checkSweepWords.recorder, names: ['resolution', 'readingDoubt'] },
  ],
  entries,
  labels: { jobTitle: checkSweepWords.jobTitle, ...entryLabels, ...recorderLabels },
  hints: { jobTitle: checkSweepWords.jobTitleHint, ...entryHints, ...recorderHints },
};

/** A job of what was entered. */
export function jobOf(values: Values<typeof entries>): Job {
  const { pullUp, resolution, readingDoubt, positionTolerance } = values;
  return {
    version: 2,
    title: values.jobTitle || checkSweepWords.untitled,
    sensor: {
      name: checkSweepWords.sensorName,
      track: values.track,
      contact: values.contact,
      closedPosition: values.closedPosition,
      openPosition: values.openPosition,
      tolerances: {
        track: values.trackTolerance,
        closedPosition: positionTolerance,
        openPosition: positionTolerance,
      },
    },
    hookUp: {
      source: { volts: values.source },
      limiter: values.limiter,
      leads: { supply: values.supplyLead, ground: values.groundLead },
      ...(pullUp !== undefined && { pullUp: { ohms: pullUp, volts: values.pullUpVolts } }),
      tolerances: { source: values.sourceTolerance, limiter: values.limiterTolerance },
    },
    instrument: {
      name: checkSweepWords.instrumentName,
      inputResistance: values.input,
      ...(resolution !== undefined && { resolution }),
      ...(readingDoubt !== undefined && { uncertainty: readingDoubt }),
    },
  };
}
