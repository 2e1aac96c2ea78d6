import { checkSweepWords } from '@truesweep/wording';
import type { Answered, Asked, GivenJob, Judged, Progress, TimeStretch } from './protocol.js';

/** What judging comes to. */
export type Outcome = Extract<Answered, { kind: 'judged' | 'opened' | 'refused' }>;

/** A worker that judges recordings and draws their traces; one for each choice of files. */
export interface SweepWorker {
  readonly judge: (
    files: readonly File[],
    given: GivenJob,
    onProgress: (progress: Progress) => void,
  ) => Promise<Outcome>;
  /** Draws a stretch of a judged recording, as SVG. */
  readonly drawTrace: (recording: number, stretch: TimeStretch) => Promise<string>;
  readonly end: () => void;
}

/** Starts a worker. */
export function sweepWorker(): SweepWorker {
  const worker = new Worker(new URL('./checkSweep.worker.ts', import.meta.url), {
    type: 'module',
  });
  const ask = (asked: Asked): void => worker.postMessage(asked);
  const drawn = new Map<number, (svg: string) => void>();
  let nextId = 1;
  return {
    judge: (files, given, onProgress) =>
      new Promise((done) => {
        worker.onmessage = ({ data }: MessageEvent<Answered>) => {
          if (data.kind === 'progress') onProgress(data.progress);
          else if (data.kind !== 'trace') done(data);
          else {
            drawn.get(data.id)?.(data.svg);
            drawn.delete(data.id);
          }
        };
        // Such as a recording that is too long for the browser's memory.
        worker.onerror = () => done({ kind: 'refused', refusal: checkSweepWords.brokenOff });
        ask({ kind: 'judge', files, given });
      }),
    drawTrace: (recording, stretch) =>
      new Promise((done) => {
        const id = nextId++;
        drawn.set(id, done);
        ask({ kind: 'trace', id, recording, stretch });
      }),
    end: () => worker.terminate(),
  };
}

/** What stands on a page before its script or its user judges: of an earlier judgement, or of one made when it was built. */
export type FirstJudged = Pick<Judged, 'title'> & {
  readonly recordings: readonly Pick<Judged['recordings'][number], 'name' | 'verdict'>[];
};

/** Of a judgement what can be shown without its recordings. */
export function firstOf({ title, recordings }: Judged): FirstJudged {
  return { title, recordings: recordings.map(({ name, verdict }) => ({ name, verdict })) };
}
