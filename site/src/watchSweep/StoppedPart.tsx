import { formatQuantity } from '@truesweep/core';
import { judgeWords, standingSentence, verdictLabels, watchWords } from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Judged } from '../checkSweep/protocol.js';
import { sweepWorker } from '../checkSweep/sweepWorker.js';
import { VerdictSign } from '../checkSweep/VerdictSign.js';
import { keepFile } from '../forms/keepFile.js';
import { KeepOnShelf } from '../shelf/KeepOnShelf.js';
import { keepResults } from '../shelf/keepResults.js';
import type { ShelfSensor } from '../shelf/shelf.js';
import { KeptActions } from './KeptActions.js';
import { type RecordedFiles, recordedFiles } from './recordedFiles.js';
import { handOn, readRecording } from './recordingStore.js';
import type { WatchTold } from './watchProtocol.js';

/** A recording that was stopped: it is judged, kept on the shelf with its result, saved or thrown away. */
export function StoppedPart(props: {
  readonly ended: Extract<WatchTold, { kind: 'ended' }>;
  readonly sensor: ShelfSensor | undefined;
  readonly texts: Readonly<Record<string, string>>;
  /** What it still lacks, as a sentence. */
  readonly missing: string | undefined;
  readonly onOver: () => void;
}) {
  const { ended, sensor, texts, missing, onOver } = props;
  const { standing, recording, rest } = ended;
  const [state, setState] = useState<'judging' | 'kept' | { readonly why: string }>();
  const [judged, setJudged] = useState<Judged>();
  const place = useRef<HTMLElement>(null);
  const title = useRef<HTMLHeadingElement>(null);
  // The button that was pressed is gone.
  useEffect(() => {
    title.current?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: 'start', behavior: 'instant' });
  }, []);
  const files = async (): Promise<RecordedFiles> => {
    // What the storage did not take is the end of it.
    const kept = await readRecording(recording.id).catch(() => undefined);
    return recordedFiles(recording, [...(kept?.pieces ?? []), ...rest]);
  };
  const keep = async (of: ShelfSensor): Promise<void> => {
    setState('judging');
    const worker = sweepWorker(
      async (outcome) => {
        worker.end();
        if (outcome.kind !== 'judged')
          return setState({ why: 'why' in outcome ? outcome.why : refusalOf(outcome) });
        setJudged(outcome.judged);
        const isKept = await keepResults(of, outcome.judged);
        setState(isKept ? 'kept' : { why: watchWords.full });
        if (isKept) await handOn(recording.id).catch(() => {});
      },
      () => {},
    );
    worker.judge({ files: await files(), kind: 'job' }, { stretches: [] });
  };
  const verdict = judged?.recordings[0];
  return (
    <section class="watched" aria-label={watchWords.stopped} ref={place}>
      <h2 tabIndex={-1} ref={title}>
        {watchWords.stopped}
      </h2>
      <p>
        {standing.samples === 0
          ? watchWords.nothingRecorded
          : standingSentence({
              ...standing,
              seconds: formatQuantity(standing.seconds, 's', { digits: 3 }),
            })}
      </p>
      {missing !== undefined && <p class="missing">{missing}</p>}
      {standing.samples > 0 && (
        <KeptActions
          id={rest.length === 0 ? recording.id : undefined}
          onSave={async () => {
            for (const file of await files()) keepFile(file);
            await handOn(recording.id).catch(() => {});
          }}
          throwsAway={recording.id}
          onThrown={onOver}
        >
          {sensor && (
            <button type="button" disabled={state === 'judging'} onClick={() => keep(sensor)}>
              {watchWords.keepResult}
            </button>
          )}
        </KeptActions>
      )}
      <div role="status">
        {state === 'judging' && <p>{watchWords.judging}</p>}
        {state === 'kept' && <p class="notice">{judgeWords.resultKept}</p>}
        {typeof state === 'object' && <p class="refusal">{state.why}</p>}
        {verdict && (
          <>
            <p class={`verdict-line ${verdict.verdict}`}>
              <VerdictSign verdict={verdict.verdict} /> {verdictLabels[verdict.verdict]}
            </p>
            <p>{verdict.said}</p>
          </>
        )}
      </div>
      {!sensor && standing.samples > 0 && (
        <KeepOnShelf texts={texts} onKept={(kept) => void keep(kept)} />
      )}
      <p class="keep">
        <button type="button" onClick={onOver}>
          {watchWords.another}
        </button>
      </p>
    </section>
  );
}

function refusalOf(outcome: { readonly kind: string; readonly refusal?: string }): string {
  return outcome.refusal ?? watchWords.broken;
}
