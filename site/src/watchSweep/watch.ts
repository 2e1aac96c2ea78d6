import { InputError } from '@truesweep/core';
import { rateFinder } from '@truesweep/recordings';
import { refusalSentence } from '@truesweep/wording';
import { type Watching, watching } from './watching.js';
import type { WatchAsked, WatchTold } from './watchProtocol.js';

/** Watches a recording for a page, away from it: the page asks and is told through a port. */
export function watch(port: MessagePort): void {
  const tell = (told: WatchTold, handedOver: Transferable[] = []): void =>
    port.postMessage(told, handedOver);
  let isRight: ReturnType<typeof rateFinder> | undefined;
  let running: Watching | undefined;
  /** What came at the rate that is tried: where it is right, the recording begins with it, its only heading perhaps among it. */
  let tried: { readonly bytes: Uint8Array; readonly arrived: number }[] = [];

  const act = (asked: WatchAsked): void => {
    switch (asked.kind) {
      case 'try':
        isRight = rateFinder({});
        tried = [];
        break;
      case 'begin':
        isRight = undefined;
        running = watching(asked.plan, tell);
        for (const { bytes, arrived } of tried) running.feed(bytes, arrived);
        tried = [];
        break;
      case 'bytes': {
        if (running) running.feed(asked.bytes, asked.arrived);
        else tried.push(asked);
        const found = isRight?.(asked.bytes);
        if (found === undefined) break;
        isRight = undefined;
        tell({ kind: 'tried', isRight: found });
        break;
      }
      case 'sound':
        running?.listen(asked.samples, asked.rate);
        break;
      case 'lost':
        running?.lost();
        break;
      case 'mark':
        running?.mark(asked.test);
        break;
      case 'read':
        running?.readBy(asked.read);
        break;
      case 'end':
        void running?.end();
    }
  };
  port.onmessage = ({ data }: MessageEvent<WatchAsked>) => {
    try {
      act(data);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const { path, place, message, code } = error;
      const refusal = refusalSentence({ path, place, sentence: message, code });
      tell({ kind: 'refused', refusal });
    }
  };
}
