import type { RecordingResult } from '@truesweep/jobs/node';
import { batchProgressSentence, visibleText } from '@truesweep/wording';
import { errorLine } from '../errorLine.js';
import { stoppedCode } from '../exitCodes.js';
import type { Output, Screen } from '../terminal.js';

/** Tells how a batch stands while it runs. */
export interface BatchProgress {
  readonly onDone: (result: RecordingResult, bytes: number, isKept: boolean) => void;
  /** Told of each recording that there is to judge, as they are counted, and when that is all. */
  readonly onCounted: (bytes: number) => void;
  readonly allCounted: () => void;
  readonly end: () => void;
}

/** On a terminal it is told so often, elsewhere in lines that stay, ms. */
const [drawnEvery, printedEvery] = [250, 10_000];
/** A recording takes some time however short it is: as much as so many bytes more. */
const eachBytes = 3000;

/** Shows how a batch stands: drawn over itself where somebody watches, whose Ctrl-C is told, else as lines of the error output. */
export function batchProgress(output: Output, onStop: () => void): BatchProgress {
  const begun = performance.now();
  const [done, counted] = [newTally(), newTally()];
  let [kept, keptBytes, refused] = [0, 0, 0];
  let isCounted = false;
  let isStopping = false;
  const screen: Screen | undefined = output.screen?.((key) => {
    if (key !== 'stop') return;
    // Whoever doesn't want to wait for what was begun: the journal has all that is done.
    if (isStopping) {
      screen?.end();
      process.exit(stoppedCode);
    }
    isStopping = true;
    onStop();
  });
  const secondsLeft = (): number | undefined => {
    const judged = done.bytes - keptBytes;
    if (!isCounted || judged <= 0) return undefined;
    const passed = (performance.now() - begun) / 1000;
    return ((counted.bytes - done.bytes) / judged) * passed;
  };
  const tell = (): void => {
    const seconds = secondsLeft();
    const sentence = batchProgressSentence({
      done: done.count,
      ...(isCounted && { total: counted.count }),
      kept,
      'not-judged': refused,
      ...(seconds !== undefined && counted.count > done.count && { seconds }),
    });
    if (screen) screen.draw(`${visibleText(sentence)}\n`);
    else output.printError(errorLine(sentence));
  };
  const telling = setInterval(tell, screen ? drawnEvery : printedEvery);
  return {
    onDone(result, bytes, isKept) {
      done.add(bytes);
      if (isKept) {
        kept += 1;
        keptBytes += bytes + eachBytes;
      }
      if ('refused' in result) refused += 1;
    },
    onCounted: counted.add,
    allCounted() {
      isCounted = true;
    },
    end() {
      clearInterval(telling);
      if (screen) tell();
      screen?.end();
    },
  };
}

function newTally() {
  const tally = {
    count: 0,
    bytes: 0,
    add(bytes: number): void {
      tally.count += 1;
      tally.bytes += bytes + eachBytes;
    },
  };
  return tally;
}
