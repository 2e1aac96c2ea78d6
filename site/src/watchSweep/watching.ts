import { type DeliberateTest, InputError, type Seconds, type Stretch } from '@truesweep/core';
import { jobExpectation, type WatchedSweep, watchSweep } from '@truesweep/jobs';
import type { Samples } from '@truesweep/recordings';
import { isTextOf } from '@truesweep/recordings';
import { lookAt } from '../checkSweep/lookAt.js';
import type { ReadBy } from '../checkSweep/protocol.js';
import { headOfLines } from './headOfLines.js';
import { keepRecording } from './keepRecording.js';
import { liveColumns } from './liveColumns.js';
import { mostRecent } from './mostKept.js';
import type { KeptRecording, Piece } from './recordingStore.js';
import { soFarWorker } from './soFarWorker.js';
import { withSupply } from './supplyColumn.js';
import type { Standing, WatchPlan, WatchTold } from './watchProtocol.js';

/** A recording that runs and is watched. */
export interface Watching {
  feed(bytes: Uint8Array, arrived: Seconds): void;
  listen(samples: MessagePort, rate: number): void;
  lost(): void;
  mark(test: DeliberateTest): void;
  readBy(read: ReadBy): void;
  end(): Promise<void>;
}

/** The latest seconds are judged so often, ms; and where that takes long, what came in is read between. */
const recentEvery = 80;
const leastBetween = 20;
/** The trace goes on so often, ms: as often as a screen shows it. */
const columnsEvery = 16;
const standingEvery = 250;
/** What is looked at where lines don't tell how they are read. */
const drawnWidth = 340;
/** Fewer bytes tell nothing about a rate. */
const tellingBytes = 200;

/** Watches a recording: reads what comes, keeps it, and tells what it shows. */
export function watching(
  { id, job, read: told, startedAt }: WatchPlan,
  tell: (told: WatchTold, handedOver?: Transferable[]) => void,
): Watching {
  const expected = jobExpectation(job);
  const { volts } = expected.curve;
  const [closed = 0, open = 0] = [volts[0], volts.at(-1)];
  const tellLevels = () => tell({ kind: 'levels', ...(!told.sound && { closed, open }) });
  tellLevels();
  let read = told;
  const head = headOfLines();
  let watched = begun();
  const columns = liveColumns();
  const soFar = soFarWorker((judged) => tell({ kind: 'so-far', judged }));
  soFar.ask({ kind: 'begin', job });
  const isText = isTextOf();
  const isTextSoFar = { bytes: 0, isText: true };
  let text = '';
  let blocks: Float32Array<ArrayBuffer>[] = [];
  let rate: number | undefined;
  let samples = 0;
  let latest: Seconds = 0;
  let latestVolts = 0;
  let isNew = false;
  let isBegun = false;
  let isLooked = false;
  /** Lines that can't be read wait for nothing: they are no part of the recording. */
  let isRefused = false;
  let isMissed = false;
  let isEnded = false;
  let running: { readonly kind: DeliberateTest; readonly start: Seconds } | undefined;
  let columnsDue: ReturnType<typeof setTimeout> | undefined;
  let recentDue: ReturnType<typeof setTimeout> | undefined;

  function begun(fromMiddle = true): WatchedSweep {
    return watchSweep(job, { text: read.text ?? {}, fromMiddle, mostKept: mostRecent });
  }

  const kept = keepRecording(
    id,
    () => recordingNow(isEnded),
    takePiece,
    (trouble) => tell({ kind: 'not-kept', trouble }),
  );

  function takePiece(): Piece | undefined {
    if (blocks.length > 0) {
      const all = joined(blocks);
      blocks = [];
      return all;
    }
    if (text === '') return undefined;
    const lines = text;
    text = '';
    return lines;
  }

  function recordingNow(isWhole: boolean): KeptRecording {
    const stretches: readonly Stretch[] =
      running && latest > running.start
        ? [...watched.stretches(), { ...running, end: latest }]
        : [...watched.stretches()];
    return {
      id,
      startedAt,
      isWhole,
      isHandedOn: false,
      job,
      stretches,
      read: told.sound ? { sound: told.sound } : { text: watched.reading().savedAs },
      ...(rate !== undefined && { rate }),
    };
  }

  function standing(): Standing {
    const { damagedLines, gapCount } = watched.reading();
    return {
      seconds: latest,
      samples,
      damagedLines,
      gaps: gapCount,
      isNoText: isTextSoFar.bytes > tellingBytes && !isTextSoFar.isText,
    };
  }

  /** Takes samples that were read; a page is told of them at its screen's rate. */
  function taken(some: Samples): void {
    const { time, signal, supply } = some;
    if (time.length === 0) return;
    samples += time.length;
    latest = time.at(-1) ?? latest;
    latestVolts = signal.at(-1) ?? latestVolts;
    columns.add(time, signal);
    // Without its text, which would be copied for nothing.
    soFar.ask({ kind: 'samples', samples: { time, signal, ...(supply && { supply }) } });
    isNew = true;
    columnsDue ??= setTimeout(tellColumns, columnsEvery);
    recentDue ??= setTimeout(tellRecent, leastBetween);
  }

  function tellColumns(): void {
    columnsDue = undefined;
    const some = columns.take();
    if (!some) return;
    tell({ kind: 'columns', ...some, latest, volts: latestVolts }, [
      some.low.buffer,
      some.high.buffer,
    ]);
  }

  function tellRecent(): void {
    const since = performance.now();
    recentDue = undefined;
    const recent = isNew ? watched.recent() : undefined;
    isNew = false;
    if (recent) {
      const { findings, found, hints } = recent;
      tell({ kind: 'recent', recent: { findings, found, hints, latest } });
    }
    const took = performance.now() - since;
    recentDue = setTimeout(tellRecent, Math.max(leastBetween, recentEvery - took));
  }

  const standingTimer = setInterval(
    () => tell({ kind: 'standing', standing: standing() }),
    standingEvery,
  );

  /** Reads lines; where they don't tell how, the page is shown what came. */
  function readLines(bytes: Uint8Array, arrived: Seconds): void {
    if (isRefused) {
      isMissed = true;
      return;
    }
    try {
      const some = watched.feed(bytes, arrived);
      text += some.text;
      taken(some);
      if (!isLooked && watched.reading().columns) look();
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      isRefused = true;
      look();
    }
  }

  /** Shows the page how the lines are read, or why they can't be; a supply that a heading names is read too. */
  function look(): void {
    isLooked = true;
    const bytes = head.bytes();
    const found = lookAt({ name: 'recording', bytes }, read, 'look', drawnWidth);
    const more = withSupply(read, found.headings);
    if (more === read) tell({ kind: 'looked', look: found, read });
    else readBy(more);
  }

  /** Begins anew: with all that came, or under the heading that came with what comes next. What was read otherwise is no part of the recording. */
  function readBy(by: ReadBy): void {
    const isAll = head.isAll() && !isMissed;
    const heading = isAll ? undefined : head.heading();
    read = by;
    watched = begun(isAll ? !head.beginsWithHeading() : heading === undefined);
    [text, samples, latest, running] = ['', 0, 0, undefined];
    [isLooked, isRefused, isMissed] = [false, false, false];
    columns.take();
    kept.restart();
    soFar.ask({ kind: 'begin', job });
    tell({ kind: 'marked', test: undefined });
    tellLevels();
    if (isAll) for (const { bytes, arrived } of head.parts()) readLines(bytes, arrived);
    else {
      if (heading) watched.feed(heading);
      watched.lost();
    }
  }

  return {
    feed(bytes, arrived) {
      head.add(bytes, arrived);
      isTextSoFar.bytes += bytes.length;
      isTextSoFar.isText = isText(bytes);
      if (isBegun) return readLines(bytes, arrived);
      isBegun = head.isBegun();
      if (isBegun) readBy(read);
    },
    listen(port, hertz) {
      rate = hertz;
      const { fullScale = 1, attenuation = 1 } = told.sound ?? {};
      const scale = fullScale * attenuation;
      port.onmessage = ({ data }: MessageEvent<Float32Array<ArrayBuffer>>) => {
        const from = samples;
        const some = {
          time: Float64Array.from(data, (_, i) => (from + i) / hertz),
          signal: Float64Array.from(data, (sample) => sample * scale),
        };
        blocks.push(data);
        watched.feedSamples(some);
        taken(some);
      };
    },
    lost: () => watched.lost(),
    mark(test) {
      const kind = watched.mark(test);
      soFar.ask({ kind: 'mark', test });
      running = kind === test ? { kind: test, start: latest } : undefined;
      tell({ kind: 'marked', test: running?.kind });
    },
    readBy,
    async end() {
      const some = watched.end();
      text += some.text;
      taken(some);
      clearTimeout(columnsDue);
      clearTimeout(recentDue);
      clearInterval(standingTimer);
      running = undefined;
      isEnded = true;
      soFar.end();
      const rest = await kept.end();
      tell({ kind: 'ended', standing: standing(), recording: recordingNow(true), rest });
    },
  };
}

function joined(blocks: readonly Float32Array[]): Float32Array<ArrayBuffer> {
  const all = new Float32Array(blocks.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const block of blocks) {
    all.set(block, at);
    at += block.length;
  }
  return all;
}
