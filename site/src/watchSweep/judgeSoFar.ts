import { type WatchedSweep, watchSweep } from '@truesweep/jobs';
import { mostKept } from './mostKept.js';
import type { SoFarAsked } from './soFarWorker.js';
import type { JudgedSoFar } from './watchProtocol.js';

/** All that is kept is judged no oftener, ms. */
const soonest = 1000;
/** It is judged again after so many times what it took: most of the time the processor is free. */
const rest = 10;

/** Judges all that is kept of a recording now and then, by samples that come through a port. */
export function judgeSoFar(port: MessagePort): void {
  let watched: WatchedSweep | undefined;
  let isNew = false;
  const judge = (): void => {
    const begun = performance.now();
    const found = isNew ? watched?.soFar() : undefined;
    isNew = false;
    if (found) {
      const { score, missing } = found;
      const { looksAskedFor } = score.restsOn;
      const { coverage, unitsThatFit: units = [] } = score;
      const judged: JudgedSoFar = { coverage, looksAskedFor, missing, units };
      port.postMessage(judged);
    }
    setTimeout(judge, Math.max(soonest, rest * (performance.now() - begun)));
  };
  setTimeout(judge, soonest);
  port.onmessage = ({ data }: MessageEvent<SoFarAsked>) => {
    if (data.kind === 'begin') watched = watchSweep(data.job, { mostKept });
    else if (data.kind === 'samples') watched?.feedSamples(data.samples);
    else watched?.mark(data.test);
    isNew = true;
  };
}
