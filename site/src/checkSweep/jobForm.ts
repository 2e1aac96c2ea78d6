import { InputError, type Stretch } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import {
  checkSweepWords,
  couplingLabels,
  entryHints,
  entryLabels,
  neededWithSentence,
  pairSentence,
  readingsWords,
  recorderHints,
  recorderLabels,
  samplingLabels,
  testTimeHint,
  testTimeLabels,
} from '@truesweep/wording';
import { benchNames, hookUpEntries } from '../calculators/hookUpEntries.js';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';
import { momentEntries } from './momentEntries.js';
import { testTimes } from './testTimes.js';

const entries = {
  jobTitle: { unit: 'text', initial: '' },
  ...hookUpEntries,
  rangeLow: { unit: 'V', low: -1e3, high: 1e3, initial: '', optional: true },
  rangeHigh: { unit: 'V', low: -1e3, high: 1e3, initial: '', optional: true },
  sampling: { unit: 'choice', initial: 'picked', choices: samplingLabels },
  sampledEvery: { unit: 's', low: 1e-9, high: 1e4, initial: '', optional: true },
  coupling: {
    unit: 'choice',
    initial: 'unsaid',
    choices: { unsaid: checkSweepWords.unsaid, ...couplingLabels },
  },
  resolution: { unit: 'V', low: 1e-9, high: 10, initial: '', optional: true },
  readingDoubt: { unit: 'V', low: 0, high: 10, initial: '', optional: true },
  ...momentEntries,
} as const satisfies Readonly<Record<string, Entry>>;

/** The form of what recordings are judged by, where no job file says it. */
export const jobForm: Form<typeof entries> = {
  groups: [
    { title: checkSweepWords.job, names: ['jobTitle'] },
    {
      title: readingsWords.parts,
      names: benchNames,
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
    {
      title: checkSweepWords.recorder,
      names: [
        'rangeLow',
        'rangeHigh',
        'readingDoubt',
        'sampling',
        'sampledEvery',
        'coupling',
        'resolution',
      ],
      folded: true,
    },
    {
      title: checkSweepWords.testTimes,
      names: testTimes.flatMap(({ from, to }) => [from, to]),
      folded: true,
    },
  ],
  entries,
  labels: {
    jobTitle: checkSweepWords.jobTitle,
    ...entryLabels,
    ...recorderLabels,
    ...testTimeLabels,
  },
  hints: {
    jobTitle: checkSweepWords.jobTitleHint,
    ...entryHints,
    ...recorderHints,
    flexedFrom: testTimeHint,
    flexedTo: testTimeHint,
    tappedFrom: testTimeHint,
    tappedTo: testTimeHint,
    warmedFrom: testTimeHint,
    warmedTo: testTimeHint,
  },
};

/** A job of what was entered. */
export function jobOf(values: Values<typeof entries>): Job {
  const { pullUp, resolution, readingDoubt, positionTolerance, sampling, sampledEvery } = values;
  const range = rangeOf(values);
  return {
    version: 3,
    title: values.jobTitle || checkSweepWords.untitled,
    sensor: {
      kind: 'potentiometer',
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
      ...(range && { range }),
      ...(sampling !== 'picked' && { sampling }),
      ...(sampling === 'interpolated' && { sampledEvery: intervalOf(sampledEvery) }),
      ...(values.coupling !== 'unsaid' && { coupling: values.coupling }),
    },
  };
}

/** The recorder's range; none where it is not known. */
function rangeOf({ rangeLow: low, rangeHigh: high }: Values<typeof entries>) {
  if (low === undefined && high === undefined) return undefined;
  if (low !== undefined && high !== undefined && low < high) return { low, high };
  const { rangeLow, rangeHigh } = recorderLabels;
  throw new InputError('no-range', 'rangeLow', pairSentence(rangeLow, rangeHigh));
}

function intervalOf(sampledEvery: number | undefined): number {
  if (sampledEvery !== undefined) return sampledEvery;
  const { sampling, sampledEvery: label } = recorderLabels;
  throw new InputError(
    'missing',
    'sampledEvery',
    neededWithSentence(label, sampling, samplingLabels.interpolated),
  );
}

/**
 * What was done to the sensor when.
 *
 * @throws InputError where only one end of a test is given, or they are in the wrong order.
 */
export function stretchesOf(values: Values<typeof entries>): readonly Stretch[] {
  return testTimes.flatMap(({ kind, from, to }): readonly Stretch[] => {
    const [start, end] = [values[from], values[to]];
    if (start === undefined && end === undefined) return [];
    if (start !== undefined && end !== undefined && start < end) return [{ kind, start, end }];
    throw new InputError(
      'no-stretch',
      from,
      pairSentence(testTimeLabels[from], testTimeLabels[to]),
    );
  });
}
