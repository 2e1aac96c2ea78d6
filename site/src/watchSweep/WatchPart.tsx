import { formatQuantity, type Hint } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import {
  findingLine,
  hintSentence,
  passesTitle,
  readAtSentence,
  standingSentence,
  stillMissingSentence,
  testButtons,
  tryingSentence,
  watchWords,
} from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { ReadBy } from '../checkSweep/protocol.js';
import { TakeUnits } from '../checkSweep/TakeUnits.js';
import type { ShelfSensor } from '../shelf/shelf.js';
import { LiveTrace } from './LiveTrace.js';
import { ReadLines } from './ReadLines.js';
import { ToneSwitch } from './ToneSwitch.js';
import { TravelPasses } from './TravelPasses.js';
import { useHeldHints } from './useHeldHints.js';
import { useSpoken } from './useSpoken.js';
import { useWatched, type WatchSource } from './useWatched.js';

/** So many of the latest findings stand in words. */
const mostShown = 5;
type StoppedPart = typeof import('./StoppedPart.js')['StoppedPart'];

const none: readonly Hint[] = [];
const tests = ['harness-flexed', 'housing-tapped', 'warmed'] as const;

/** A recording that runs: its trace, what was found, what to do better, what is still missing; and once it is stopped, what becomes of it. */
export function WatchPart(props: {
  readonly source: WatchSource;
  readonly job: Job;
  readonly read: ReadBy;
  /** The sensor of the shelf that it is, if it is one, and what was entered. */
  readonly sensor: ShelfSensor | undefined;
  readonly texts: Readonly<Record<string, string>>;
  /** Told how the lines are read from now on: the next recording is read so from the beginning. */
  readonly onRead: (read: ReadBy) => void;
  readonly onOver: () => void;
}) {
  const { source, job, sensor, texts, onOver } = props;
  const watched = useWatched(source, job, props.read);
  const { stage, standing, judged, recent, looked, model } = watched;
  const place = useRef<HTMLElement>(null);
  // The button that was pressed is gone: the eye finds the trace in its place.
  useEffect(() => {
    place.current?.focus({ preventScroll: true });
    place.current?.scrollIntoView({ block: 'start', behavior: 'instant' });
  }, []);
  const [Stopped, setStopped] = useState<{ readonly Part: StoppedPart }>();
  const isEnded = stage.kind === 'ended';
  useEffect(() => {
    if (isEnded)
      void import('./StoppedPart.js').then(({ StoppedPart: Part }) => setStopped({ Part }));
  }, [isEnded]);
  const readBy = (by: ReadBy): void => {
    props.onRead(by);
    watched.readBy(by);
  };
  const hints = useHeldHints(recent?.hints ?? none);
  const missing = judged ? stillMissingSentence(judged.missing) : undefined;
  const latest = recent?.findings.at(-1);
  const isSound = source.kind === 'sound';
  const spoken = useSpoken(
    [
      latest && findingLine(latest),
      ...hints.map(hintSentence),
      judged?.missing.length === 0 ? watchWords.enough : undefined,
    ]
      .filter((line) => line !== undefined)
      .join(' '),
  );
  if (stage.kind === 'failed')
    return (
      <section class="watched">
        <p class="refusal" role="alert">
          {stage.why}
        </p>
        <p class="keep">
          <button type="button" onClick={onOver}>
            {watchWords.back}
          </button>
        </p>
      </section>
    );
  if (stage.kind === 'ended' && Stopped)
    return (
      <Stopped.Part
        ended={stage.told}
        sensor={sensor}
        texts={texts}
        missing={missing}
        onOver={onOver}
      />
    );
  const isRefused = looked && 'refusal' in looked.look.read;
  return (
    <section class="watched" aria-label={watchWords.trace} ref={place} tabIndex={-1}>
      <p class="standing">
        {stage.kind === 'trying'
          ? tryingSentence(stage.baud)
          : stage.kind === 'opening'
            ? isSound
              ? watchWords.waitingSound
              : watchWords.waiting
            : standing && standing.samples > 0
              ? standingSentence({
                  ...standing,
                  seconds: formatQuantity(standing.seconds, 's', { digits: 3 }),
                })
              : watchWords.waiting}{' '}
        {stage.kind === 'running' && !isSound && readAtSentence(stage.baud)}
      </p>
      <div role="alert">
        {stage.kind === 'lost' && <p class="refusal">{watchWords.lost}</p>}
        {standing?.isNoText && standing.samples === 0 && (
          <p class="refusal">{watchWords.notLines}</p>
        )}
        {watched.trouble && (
          <p class="notice">{watched.trouble === 'full' ? watchWords.full : watchWords.notKept}</p>
        )}
      </div>
      {looked && isRefused && <ReadLines look={looked.look} read={looked.read} onRead={readBy} />}
      {looked && judged && judged.units.length > 0 && (
        <div class="notice">
          <p>{watchWords.otherUnit}</p>
          <TakeUnits
            units={judged.units}
            onText={(text) => readBy({ ...looked.read, text: { ...looked.read.text, ...text } })}
          />
        </div>
      )}
      <LiveTrace model={model} />
      <p class="sr-only" role="status">
        {spoken}
      </p>
      <div class="live-words">
        <section aria-label={watchWords.doBetter}>
          <h2>{watchWords.doBetter}</h2>
          {hints.length === 0 ? (
            <p>{watchWords.nothingToMend}</p>
          ) : (
            <ul class="hints">
              {hints.map((hint) => (
                <li key={hint.hint}>{hintSentence(hint)}</li>
              ))}
            </ul>
          )}
        </section>
        <section aria-label={watchWords.passes}>
          <h2>{passesTitle(judged?.looksAskedFor)}</h2>
          {isSound ? (
            <p>{watchWords.noTravel}</p>
          ) : (
            <>
              <TravelPasses judged={judged} />
              <p class="missing">{missing ?? watchWords.noPasses}</p>
            </>
          )}
        </section>
      </div>
      <fieldset class="tests">
        <legend>{watchWords.tests}</legend>
        {tests.map((test) => (
          <button
            key={test}
            type="button"
            aria-pressed={watched.test === test}
            disabled={!standing || standing.samples === 0}
            onClick={() => watched.mark(test)}
          >
            {testButtons[test]}
          </button>
        ))}
      </fieldset>
      <p class="keep">
        <button
          type="button"
          class="main"
          disabled={stage.kind === 'ending' || isEnded}
          onClick={watched.stop}
        >
          {watchWords.stop}
        </button>
        {!isSound && <ToneSwitch hearer={watched.hearer} model={model} />}
      </p>
      <section aria-label={watchWords.findings}>
        <h2>
          {watchWords.findings}
          {recent && recent.found > 0 && `: ${recent.found}`}
        </h2>
        {!recent || recent.found === 0 ? (
          <p>{watchWords.noFindings}</p>
        ) : (
          <ol class="findings" reversed start={recent.found}>
            {recent.findings
              .slice(-mostShown)
              .toReversed()
              .map((finding) => (
                <li key={finding.start}>{findingLine(finding)}</li>
              ))}
          </ol>
        )}
      </section>
      {looked && !isRefused && (
        <details>
          <summary>{watchWords.readOtherwise}</summary>
          <ReadLines look={looked.look} read={looked.read} onRead={readBy} />
        </details>
      )}
    </section>
  );
}
