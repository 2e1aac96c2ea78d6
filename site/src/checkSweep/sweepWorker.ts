import { checkPageWords } from '@truesweep/wording';
import type { Chosen } from './basis.js';
import type { Answered, Asked, GivenJob, Judged, Progress, TimeStretch } from './protocol.js';

/** What judging comes to; `broken` where it did not come to its end. */
export type Outcome =
  | Extract<Answered, { kind: 'judged' | 'opened' | 'refused' }>
  | { readonly kind: 'broken'; readonly why: string };

/** A worker that judges recordings and draws their traces; one for each judgement. */
export interface SweepWorker {
  readonly judge: (chosen: Chosen, given: GivenJob) => void;
  /** Draws a stretch of a judged recording, as SVG. */
  readonly drawTrace: (recording: number, stretch: TimeStretch) => Promise<string>;
  readonly end: () => void;
}

/** Starts a worker; `onOutcome` is told once more where it ends by itself later, since nothing can be drawn from then on. */
export function sweepWorker(
  onOutcome: (outcome: Outcome) => void,
  onProgress: (progress: Progress) => void,
): SweepWorker {
  const worker = new Worker(new URL('./checkSweep.worker.ts', import.meta.url), {
    type: 'module',
  });
  const ask = (asked: Asked): void => worker.postMessage(asked);
  const drawn = new Map<number, (svg: string) => void>();
  // Such as a recording that is too long for the browser's memory.
  const breakOff = () => onOutcome({ kind: 'broken', why: checkPageWords.brokenOff });
  let nextId = 1;
  worker.onerror = breakOff;
  worker.onmessage = ({ data }: MessageEvent<Answered>) => {
    if (data.kind === 'alive') void untilEnded(data.lock).then(breakOff);
    else if (data.kind === 'progress') onProgress(data.progress);
    else if (data.kind !== 'trace') onOutcome(data);
    else {
      drawn.get(data.id)?.(data.svg);
      drawn.delete(data.id);
    }
  };
  return {
    judge: ({ files, kind }, given) =>
      ask(kind === 'report' ? { kind: 'open-report', files } : { kind: 'judge', files, given }),
    drawTrace: (recording, stretch) =>
      new Promise((done) => {
        const id = nextId++;
        drawn.set(id, done);
        ask({ kind: 'trace', id, recording, stretch });
      }),
    end: () => worker.terminate(),
  };
}

/** A worker that ends by itself says nothing; but the lock that it held is free then. */
async function untilEnded(lock: string): Promise<void> {
  await navigator.locks.request(lock, () => {});
}

/** What stands on a page before its script or its user judges: of an earlier judgement, or of one made when it was built. */
export type FirstJudged = Pick<Judged, 'title' | 'restsOn' | 'origin'> & {
  readonly recordings: readonly Pick<
    Judged['recordings'][number],
    'name' | 'verdict' | 'said' | 'recheck'
  >[];
};

/** Of a judgement what can be shown without its recordings. */
export function firstOf({ title, recordings, restsOn }: Judged): FirstJudged {
  const short = recordings.map(({ name, verdict, said }) => ({ name, verdict, said }));
  return { title, restsOn, recordings: short };
}
