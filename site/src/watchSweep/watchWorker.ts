import { startWorker } from '../checkSweep/startWorker.js';
import type { WatchAsked, WatchTold } from './watchProtocol.js';

/** A worker that watches a recording. */
export interface WatchWorker {
  readonly ask: (asked: WatchAsked) => void;
  readonly end: () => void;
}

/**
 * Starts the worker that judges recordings as one that watches one.
 *
 * @param onBroken Called where it ends by itself.
 */
export function watchWorker(onTold: (told: WatchTold) => void, onBroken: () => void): WatchWorker {
  const worker = startWorker();
  const { port1, port2 } = new MessageChannel();
  worker.postMessage({ kind: 'watch', port: port2 }, [port2]);
  worker.onerror = onBroken;
  port1.onmessage = ({ data }: MessageEvent<WatchTold>) => onTold(data);
  return {
    ask: (asked) => port1.postMessage(asked, handedOver(asked)),
    end: () => worker.terminate(),
  };
}

/** What is not copied on its way. */
function handedOver(asked: WatchAsked): Transferable[] {
  if (asked.kind === 'bytes') return [asked.bytes.buffer as ArrayBuffer];
  return asked.kind === 'sound' ? [asked.samples] : [];
}
