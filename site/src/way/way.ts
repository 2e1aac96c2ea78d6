import type { Verdict } from '@truesweep/core';
import {
  type BenchKind,
  benchKindLabels,
  type RefitAnswer,
  refitAnswers,
  type SweepTask,
  sweepTaskLabels,
  verdictLabels,
  type WayStep,
  wayStepLabels,
  wayWords,
} from '@truesweep/wording';
import type { KeptJudged } from '../checkSweep/CheckSweep.js';
import type { RestsOnRow } from '../checkSweep/protocol.js';

/** All that the guided way keeps: as it stands in the browser's storage, and in a saved file. */
export interface Way {
  readonly kind: 'truesweep-way';
  readonly version: 1;
  readonly step: WayStep;
  /** What lies on the bench. */
  readonly bench: BenchKind;
  /** What was entered, by the names of the entries; one name means the same in every step. */
  readonly texts: Readonly<Record<string, string>>;
  /** What was ticked. */
  readonly done: readonly (SweepTask | RefitAnswer)[];
  /** What the recordings came to; they themselves are too large to be kept here. */
  readonly judged?: KeptJudged;
}

export const benchKinds = Object.keys(benchKindLabels) as readonly BenchKind[];

export const waySteps = Object.keys(wayStepLabels) as readonly WayStep[];

export const emptyWay: Way = {
  kind: 'truesweep-way',
  version: 1,
  step: 'bench',
  bench: 'throttle',
  texts: {},
  done: [],
};

/** No entry is written longer. */
const longestText = 200;

/** A way that was read, or why it can't be. */
export type ReadWay = { readonly way: Way } | { readonly refusal: string; readonly isNewer?: true };

/** Reads a way from JSON; what is unknown in it is left out. */
export function readWay(json: string): ReadWay {
  const given = parsed(json);
  if (!isRecord(given) || given.kind !== emptyWay.kind) return { refusal: wayWords.notWay };
  if (typeof given.version !== 'number') return { refusal: wayWords.notWay };
  if (given.version > emptyWay.version) return { refusal: wayWords.newerWay, isNewer: true };
  const { step, bench, texts, done, judged } = given;
  const known = judgedOf(judged);
  return {
    way: {
      ...emptyWay,
      step: waySteps.find((one) => one === step) ?? emptyWay.step,
      bench: benchKinds.find((one) => one === bench) ?? emptyWay.bench,
      texts: isRecord(texts) ? textsOf(texts) : {},
      done: Array.isArray(done) ? done.filter(isTick) : [],
      ...(known && { judged: known }),
    },
  };
}

function parsed(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function textsOf(given: Record<string, unknown>): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(given).filter(
      (entry): entry is [string, string] =>
        typeof entry[1] === 'string' && entry[1].length <= longestText,
    ),
  );
}

function isTick(value: unknown): value is SweepTask | RefitAnswer {
  return typeof value === 'string' && (value in sweepTaskLabels || value in refitAnswers);
}

/** An earlier judgement; none where it doesn't say what it rests on. */
function judgedOf(given: unknown): KeptJudged | undefined {
  if (!isRecord(given) || typeof given.title !== 'string' || !Array.isArray(given.recordings))
    return undefined;
  const { key, restsOn } = given;
  if (!Array.isArray(restsOn) || !restsOn.every(isRow)) return undefined;
  if (key !== undefined && typeof key !== 'string') return undefined;
  const recordings = given.recordings.flatMap((one: unknown) =>
    isRecord(one) && typeof one.name === 'string' && String(one.verdict) in verdictLabels
      ? [
          {
            name: one.name,
            verdict: one.verdict as Verdict,
            said: typeof one.said === 'string' ? one.said : '',
          },
        ]
      : [],
  );
  return { title: given.title, recordings, restsOn, ...(key !== undefined && { key }) };
}

function isRow(value: unknown): value is RestsOnRow {
  return (
    Array.isArray(value) && value.length === 2 && value.every((one) => typeof one === 'string')
  );
}
