import type { FilingRecord } from '@truesweep/report';
import { checkPageWords } from '@truesweep/wording';
import type { Chosen } from './basis.js';
import type {
  Answered,
  Asked,
  GivenJob,
  Judged,
  JudgedRecording,
  Look,
  Progress,
  ReadBy,
  TraceWindow,
} from './protocol.js';
import { startWorker } from './startWorker.js';

/** What judging comes to; `broken` where it did not come to its end. */
export type Outcome =
  | Extract<Answered, { kind: 'judged' | 'opened' | 'refused' }>
  | { readonly kind: 'broken'; readonly why: string };

/** A worker that judges recordings and draws their traces; one for each judgement. */
export interface SweepWorker {
  readonly judge: (chosen: Chosen, given: GivenJob) => void;
  /** Draws a part of a judged recording, as SVG. */
  readonly drawTrace: (recording: number, window: TraceWindow) => Promise<string>;
  /** Draws its passes laid over one another, as SVG. */
  readonly drawPasses: (recording: number, width: number) => Promise<string>;
  /** Writes what the judgement of a recording rests on, as HTML. */
  readonly writeEvidence: (recording: number, width: number) => Promise<string>;
  /** Writes how the numbers of a recording come about, as HTML. */
  readonly writeWorking: (recording: number) => Promise<string>;
  /** Writes the report, one HTML file, filed by what is said; with how the numbers come about, or without. */
  readonly writeReport: (record: FilingRecord, working: boolean) => Promise<string>;
  readonly end: () => void;
}

/** Starts a worker; `onOutcome` is told once more where it ends by itself later, since nothing can be drawn from then on. */
export function sweepWorker(
  onOutcome: (outcome: Outcome) => void,
  onProgress: (progress: Progress) => void,
): SweepWorker {
  const worker = startWorker();
  const ask = (asked: Asked): void => worker.postMessage(asked);
  const made = new Map<number, (text: string) => void>();
  let nextId = 1;
  const make = (asked: (id: number) => Asked): Promise<string> =>
    new Promise((done) => {
      made.set(nextId, done);
      ask(asked(nextId++));
    });
  // Such as a recording that is too long for the browser's memory.
  const breakOff = () => onOutcome({ kind: 'broken', why: checkPageWords.brokenOff });
  worker.onerror = breakOff;
  worker.onmessage = ({ data }: MessageEvent<Answered>) => {
    if (data.kind === 'alive') void untilEnded(data.lock).then(breakOff);
    else if (data.kind === 'progress') onProgress(data.progress);
    else if (data.kind !== 'made') {
      if (data.kind !== 'looked') onOutcome(data);
    } else {
      made.get(data.id)?.(data.text);
      made.delete(data.id);
    }
  };
  return {
    judge: ({ files, kind }, given) =>
      ask(kind === 'report' ? { kind: 'open-report', files } : { kind: 'judge', files, given }),
    drawTrace: (recording, window) => make((id) => ({ kind: 'trace', id, recording, window })),
    drawPasses: (recording, width) => make((id) => ({ kind: 'passes', id, recording, width })),
    writeEvidence: (recording, width) => make((id) => ({ kind: 'evidence', id, recording, width })),
    writeWorking: (recording) => make((id) => ({ kind: 'working', id, recording })),
    writeReport: (record, working) => make((id) => ({ kind: 'report', id, record, working })),
    end: () => worker.terminate(),
  };
}

/**
 * Looks into files, in a worker of its own that ends with its answer.
 *
 * @returns How to give up.
 */
export function lookInto(
  files: readonly File[],
  read: ReadBy,
  width: number,
  onLooks: (looks: readonly Look[]) => void,
): () => void {
  const worker = startWorker();
  worker.onmessage = ({ data }: MessageEvent<Answered>) => {
    if (data.kind !== 'looked') return;
    onLooks(data.looks);
    worker.terminate();
  };
  const asked: Asked = { kind: 'look', files, read, width };
  worker.postMessage(asked);
  return () => worker.terminate();
}

/** A worker that ends by itself says nothing; but the lock that it held is free then. */
async function untilEnded(lock: string): Promise<void> {
  await navigator.locks.request(lock, () => {});
}

/** A recording's verdict, with its reasons where they are known. */
export type FirstRecording = Pick<JudgedRecording, 'name' | 'verdict' | 'said'> &
  Partial<Pick<JudgedRecording, 'recheck' | 'why' | 'where' | 'next' | 'sure'>>;

/** What stands on a page before its script or its user judges: of an earlier judgement, or of one made when it was built. */
export type FirstJudged = Pick<Judged, 'title' | 'restsOn' | 'origin'> & {
  readonly recordings: readonly FirstRecording[];
};

/** Of a judgement what can be shown without its recordings. */
export function firstOf({ title, recordings, restsOn }: Judged): FirstJudged {
  const short = recordings.map(({ name, verdict, said }) => ({ name, verdict, said }));
  return { title, restsOn, recordings: short };
}
