import { InputError } from '@truesweep/core';
import type { Job } from '@truesweep/jobs';
import {
  checkSweepWords,
  jobOpenedSentence,
  judgedByJobSentence,
  mendEntriesSentence,
  progressSentence,
  verdictLabels,
  verdictMeanings,
} from '@truesweep/wording';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { inAddress } from '../forms/address.js';
import type { CalculatorProps } from '../forms/Calculator.js';
import { EntryFields } from '../forms/EntryFields.js';
import { namesOf, readForm } from '../forms/form.js';
import { KeepEntries } from '../forms/KeepEntries.js';
import { useEntries } from '../forms/useEntries.js';
import { NewerVersion } from '../offline/NewerVersion.js';
import { demoFiles } from './demoFiles.js';
import { JudgedPart } from './JudgedPart.js';
import { jobForm, jobOf, stretchesOf } from './jobForm.js';
import type { GivenJob, Progress } from './protocol.js';
import {
  type FirstJudged,
  firstOf,
  type Outcome,
  type SweepWorker,
  sweepWorker,
} from './sweepWorker.js';

/** The calculator: recordings in, by a job or by what was entered; verdicts, traces, evidence and report out. Nothing is sent anywhere. */
export function CheckSweep(
  props: CalculatorProps & {
    readonly first?: FirstJudged;
    readonly onJudged?: (judged: FirstJudged) => void;
  },
) {
  const keeping = useMemo(() => props.keeping ?? inAddress(namesOf(jobForm)), [props.keeping]);
  const { texts, notice, link, setText, startAgain } = useEntries(jobForm, keeping);
  const [job, setJob] = useState<Job>();
  const [outcome, setOutcome] = useState<Outcome>();
  const [progress, setProgress] = useState<Progress>();
  const [isBusy, setBusy] = useState(false);
  const worker = useRef<SweepWorker>();
  useEffect(() => () => worker.current?.end(), []);

  const entered = readForm(jobForm, texts);
  const refusals = 'refusals' in entered ? entered.refusals : {};
  const wrong = namesOf(jobForm).filter((name) => name in refusals);

  const judge = async (files: readonly File[]): Promise<void> => {
    if (files.length === 0) return;
    const hasJob = files.some(({ name }) => /\.json$/i.test(name));
    if (!hasJob && !job && wrong.length > 0) {
      const labels = wrong.map((name) => jobForm.labels[name]);
      setOutcome({ kind: 'refused', refusal: mendEntriesSentence(labels) });
      return;
    }
    let given: GivenJob = { stretches: [], ...(job && { job }) };
    // A job among the files goes before what was entered, and before what is wrong in it.
    if (!hasJob && !job && 'values' in entered) {
      try {
        given = { job: jobOf(entered.values), stretches: stretchesOf(entered.values) };
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        setOutcome({ kind: 'refused', refusal: error.message });
        return;
      }
    }
    worker.current?.end();
    worker.current = sweepWorker();
    setBusy(true);
    setProgress(undefined);
    const found = await worker.current.judge(files, given, setProgress);
    if (found.kind !== 'refused' && hasJob) setJob(found.job);
    setOutcome(found);
    if (found.kind === 'judged') props.onJudged?.(firstOf(found.judged));
    setBusy(false);
  };
  return (
    <div class="readings not-content">
      <NewerVersion />
      {notice !== undefined && <p class="notice">{notice}</p>}
      <form
        class="drop"
        onSubmit={(event) => event.preventDefault()}
        onDragOver={(event) => event.preventDefault()}
        onDrop={async (event) => {
          event.preventDefault();
          await judge([...(event.dataTransfer?.files ?? [])]);
        }}
      >
        <label for="files">{checkSweepWords.files}</label>
        <input
          id="files"
          type="file"
          multiple
          onChange={async (event) => await judge([...(event.currentTarget.files ?? [])])}
        />
        <button type="button" onClick={async () => await judge(await demoFiles())}>
          {checkSweepWords.demo}
        </button>
      </form>
      {job ? (
        <p class="notice">
          {judgedByJobSentence(job.title)}{' '}
          <button type="button" onClick={() => setJob(undefined)}>
            {checkSweepWords.useEntries}
          </button>
        </p>
      ) : (
        <details class="job-entries">
          <summary>{checkSweepWords.entries}</summary>
          <EntryFields form={jobForm} texts={texts} refusals={refusals} onText={setText} />
          <KeepEntries link={link} onAgain={startAgain} />
        </details>
      )}
      <div class="answer" role="status" aria-busy={isBusy}>
        {isBusy ? (
          <p>{progress && progressSentence(progress.name, progress.step)}</p>
        ) : (
          <Answer outcome={outcome} first={props.first} />
        )}
      </div>
      {isBusy && (
        <progress aria-label={checkSweepWords.judged} max={1} value={progress?.part ?? 0} />
      )}
      {!isBusy && outcome?.kind === 'judged' && worker.current && (
        <JudgedPart judged={outcome.judged} worker={worker.current} />
      )}
    </div>
  );
}

function Answer(props: {
  readonly outcome: Outcome | undefined;
  readonly first: FirstJudged | undefined;
}) {
  const { outcome, first } = props;
  if (outcome?.kind === 'refused') return <p class="refusal">{outcome.refusal}</p>;
  if (outcome?.kind === 'opened') return <p>{jobOpenedSentence(outcome.job.title)}</p>;
  const judged = outcome?.judged ?? first;
  return (
    judged && (
      <>
        <p>{judged.title}</p>
        <ul>
          {judged.recordings.map(({ name, verdict }) => (
            <li key={name}>
              {name}: <strong>{verdictLabels[verdict]}.</strong> {verdictMeanings[verdict]}
            </li>
          ))}
        </ul>
      </>
    )
  );
}
