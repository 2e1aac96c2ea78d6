import type { DeliberateTest } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import type { Samples } from '@truesweep/recordings';
import type { JudgedSoFar } from './watchProtocol.js';

/** What the worker that judges all of a running recording is told. */
export type SoFarAsked =
  | { readonly kind: 'begin'; readonly job: Job }
  | { readonly kind: 'samples'; readonly samples: Samples }
  | { readonly kind: 'mark'; readonly test: DeliberateTest };

/**
 * Starts a worker that judges all of a recording now and then, beside the one that judges its latest seconds: neither waits for the other.
 *
 * @param onJudged Called with each judgement.
 */
export function soFarWorker(onJudged: (judged: JudgedSoFar) => void) {
  // The same script once more: it is there already.
  const worker = new Worker(self.location.href, { type: 'module' });
  const { port1, port2 } = new MessageChannel();
  worker.postMessage({ kind: 'judge-so-far', port: port2 }, [port2]);
  port1.onmessage = ({ data }: MessageEvent<JudgedSoFar>) => onJudged(data);
  return {
    ask: (asked: SoFarAsked): void => port1.postMessage(asked),
    end: () => worker.terminate(),
  };
}
