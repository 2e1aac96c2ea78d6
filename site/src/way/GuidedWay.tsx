import {
  cautions,
  goesOnSentence,
  type RefitAnswer,
  type SweepTask,
  takeOverSentence,
  type WayStep,
  wayStepCautions,
  wayStepLabels,
  wayStepTasks,
  wayWords,
} from '@truesweep/wording';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { HeldSweep } from '../checkSweep/CheckSweep.js';
import { KeptFile } from '../forms/KeptFile.js';
import { holdRecordings } from '../offline/held.js';
import { NewerVersion } from '../offline/NewerVersion.js';
import { Bench } from './Bench.js';
import { LastSteps } from './LastSteps.js';
import { SweepStep } from './SweepStep.js';
import { type StepPart, stepParts } from './stepParts.js';
import { trackFound } from './takeOver.js';
import { emptyWay, readWay, type Way, waySteps } from './way.js';
import { inWay, type NotKept, type WayStore, wayStore } from './wayStore.js';

/** The whole job, step by step; what is entered goes from step to step, and stays in the browser. */
export function GuidedWay() {
  const [store, setStore] = useState<WayStore>();
  const [way, setWay] = useState<Way>(emptyWay);
  const [refusal, setRefusal] = useState<string>();
  const [notKept, setNotKept] = useState<NotKept>();
  const title = useRef<HTMLHeadingElement>(null);
  const steps = useRef<HTMLDetailsElement>(null);
  // The recordings are too large to be kept; they stay while the page is open, whatever step is shown.
  const held = useRef<HeldSweep>({});
  const { step } = way;

  useEffect(() => {
    const opened = wayStore();
    setStore(opened);
    const show = () => {
      setWay(opened.read());
      setNotKept(opened.notKept());
    };
    show();
    return opened.follow(show);
  }, []);

  const goTo = (to: WayStep) => {
    store?.change((before) => ({ ...before, step: to }));
    if (steps.current) steps.current.open = false;
    title.current?.focus();
    title.current?.scrollIntoView();
  };
  const tick = (code: SweepTask | RefitAnswer, isDone: boolean) =>
    store?.change((before) => ({
      ...before,
      done: [...before.done.filter((one) => one !== code), ...(isDone ? [code] : [])],
    }));
  const open = async (file: File | undefined) => {
    if (!file) return;
    const read = readWay(await file.text());
    setRefusal('refusal' in read ? read.refusal : undefined);
    if ('way' in read) store?.change(() => read.way);
  };
  const index = waySteps.indexOf(step);
  const [before, after] = [waySteps[index - 1], waySteps[index + 1]];
  return (
    <div class="readings way not-content">
      <NewerVersion />
      <div role="status">{notKept && <p class="notice">{notKeptSentences[notKept]}</p>}</div>
      <nav aria-label={wayWords.steps}>
        <details ref={steps}>
          <summary>
            {wayWords.stepOf(index + 1, waySteps.length)}, <u>{wayWords.allSteps}</u>
          </summary>
          <ol>
            {waySteps.map((one) => (
              <li key={one}>
                <button
                  type="button"
                  aria-current={one === step ? 'step' : undefined}
                  onClick={() => goTo(one)}
                >
                  {wayStepLabels[one]}
                </button>
              </li>
            ))}
          </ol>
        </details>
      </nav>
      <h2 ref={title} tabIndex={-1}>
        {wayStepLabels[step]}
      </h2>
      <p>{wayStepTasks[step]}</p>
      {wayStepCautions[step].length > 0 && (
        <ul class="caution" aria-label={wayWords.cautions}>
          {wayStepCautions[step].map((caution) => (
            <li key={caution}>{cautions[caution]}</li>
          ))}
        </ul>
      )}
      <Step key={step} step={step} store={store} way={way} held={held} onTick={tick} />
      {step === 'terminals-open' && <TakeOver store={store} way={way} />}
      <p class="onward">
        {after && (step !== 'bench' || way.bench === 'throttle') && (
          <button type="button" class="main" onClick={() => goTo(after)}>
            {wayWords.next}: {wayStepLabels[after]}
          </button>
        )}
        {before && (
          <button type="button" class="quiet" onClick={() => goTo(before)}>
            {wayWords.back}: {wayStepLabels[before]}
          </button>
        )}
      </p>
      <details class="keep-way">
        <summary>{wayWords.keep}</summary>
        <p>{notKept ? notKeptSentences[notKept] : wayWords.kept}</p>
        <p class="keep">
          <KeptFile name="sensor.way.json" type="application/json" text={JSON.stringify(way)}>
            {wayWords.saveWay}
          </KeptFile>
          <label class="file">
            {wayWords.openWay}{' '}
            <input
              type="file"
              accept=".json"
              onChange={async (event) => await open(event.currentTarget.files?.[0])}
            />
          </label>
          <button
            type="button"
            onClick={() => {
              held.current = {};
              holdRecordings(false);
              store?.forget();
            }}
          >
            {wayWords.forget}
          </button>
        </p>
        {refusal !== undefined && <p class="refusal">{refusal}</p>}
      </details>
    </div>
  );
}

/** What a step shows; the first one stands on the page before any script runs. */
function Step(props: {
  readonly step: WayStep;
  readonly store: WayStore | undefined;
  readonly way: Way;
  readonly held: { current: HeldSweep };
  readonly onTick: (code: SweepTask | RefitAnswer, isDone: boolean) => void;
}) {
  const { step, store, way, held, onTick } = props;
  const [loaded, setLoaded] = useState<StepPart>();
  useEffect(() => {
    void stepParts[step]?.().then(setLoaded);
  }, [step]);
  const keeping = useMemo(() => store && loaded && inWay(store, loaded.names), [store, loaded]);
  if (step === 'verdict' || step === 'refit')
    return store ? (
      <LastSteps step={step} store={store} way={way} held={held} onTick={onTick} />
    ) : null;
  if (step === 'sweep') return store ? <SweepStep store={store} way={way} onTick={onTick} /> : null;
  if (step === 'bench') return <Bench store={store} way={way} />;
  if (!loaded) return null;
  return (
    <loaded.Part key={keeping ? 'kept' : 'first'} keeping={keeping ?? nowhere} asks={asks[step]} />
  );
}

/** What each step asks for; the other values of its calculator were answered before, or are as most have them. */
const asks: Readonly<Partial<Record<WayStep, readonly string[]>>> = {
  terminals: ['ABclosed', 'ACclosed', 'BCclosed'],
  'terminals-open': ['ABopen', 'ACopen', 'BCopen'],
  'hook-up': ['source', 'limiter'],
  readings: ['trackTolerance'],
  instrument: ['width', 'stroke'],
};

const notKeptSentences: Readonly<Record<NotKept, string>> = {
  'blocked-or-full': wayWords.notKept,
  newer: wayWords.newerKept,
};

/** Keeps nothing. */
const nowhere = { read: () => undefined, write: () => {}, follow: () => () => {} };

/** Says what of the terminals' readings goes on; offers it again where something else was written in a later step. */
function TakeOver({ store, way }: { readonly store: WayStore | undefined; readonly way: Way }) {
  const found = trackFound(way.texts);
  if (!found || !store) return null;
  const { track, closedPosition, openPosition } = found;
  if (Object.entries(found).every(([name, text]) => way.texts[name] === text))
    return <p class="goes-on">{goesOnSentence(track, closedPosition, openPosition)}</p>;
  return (
    <p class="keep">
      <button
        type="button"
        onClick={() =>
          store.change((before) => ({ ...before, texts: { ...before.texts, ...found } }))
        }
      >
        {takeOverSentence(track, closedPosition, openPosition)}
      </button>
    </p>
  );
}
