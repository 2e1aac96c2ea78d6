import type { Job } from '@truesweep/jobs';
import {
  checkPageWords,
  judgedByJobSentence,
  judgeWords,
  progressSentence,
} from '@truesweep/wording';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { inAddress } from '../forms/address.js';
import type { CalculatorProps } from '../forms/Calculator.js';
import { EntryFields } from '../forms/EntryFields.js';
import { namesOf, readForm } from '../forms/form.js';
import { KeepEntries } from '../forms/KeepEntries.js';
import { useEntries } from '../forms/useEntries.js';
import { holdRecordings } from '../offline/held.js';
import { NewerVersion } from '../offline/NewerVersion.js';
import { KeepOnShelf } from '../shelf/KeepOnShelf.js';
import { keepResults } from '../shelf/keepResults.js';
import type { ShelfSensor } from '../shelf/shelf.js';
import { type Chosen, groundsOf } from './basis.js';
import { ChooseFiles } from './ChooseFiles.js';
import { chosenFiles, isJobFile } from './chosenFiles.js';
import { demoFiles } from './demoFiles.js';
import { JudgedPart } from './JudgedPart.js';
import { jobForm } from './jobForm.js';
import type { ReadBy } from './protocol.js';
import { RestsOn } from './RestsOn.js';
import { shortName } from './shortName.js';
import { type FirstJudged, firstOf } from './sweepWorker.js';
import { TakeUnits } from './TakeUnits.js';
import { useJudged } from './useJudged.js';
import { useLooked } from './useLooked.js';
import { VerdictAnswer } from './VerdictAnswer.js';
import { WhichSensor } from './WhichSensor.js';

/** An earlier judgement without its recordings. */
export interface KeptJudged extends FirstJudged {
  /** The entries that it rests on; left out where a file said what it rests on. */
  readonly key?: string;
}

/** What the page holds while it is open: what was chosen, and by what it is to be judged. */
export interface HeldSweep {
  readonly chosen?: Chosen | undefined;
  readonly job?: Job | undefined;
  /** The entries that were said to be one's own, as they stood. */
  readonly mine?: string | undefined;
  /** How the recordings are read, where that was told. */
  readonly read?: ReadBy | undefined;
  /** The sensor on the shelf that the entries were taken from. */
  readonly sensor?: ShelfSensor | undefined;
}

/** The calculator: recordings in, by a job or by what was entered; verdicts, traces, evidence and report out. Nothing is sent anywhere. */
export function CheckSweep(
  props: CalculatorProps & {
    /** The demo's judgement, shown until anything is chosen. */
    readonly first?: FirstJudged;
    readonly kept?: KeptJudged;
    readonly onJudged?: (judged: KeptJudged) => void;
    /** Where what the page holds lives on while another step is shown. */
    readonly held?: { current: HeldSweep };
  },
) {
  const keeping = useMemo(() => props.keeping ?? inAddress(namesOf(jobForm)), [props.keeping]);
  const { texts, notice, link, setText, take, startAgain } = useEntries(jobForm, keeping);
  const [held, setHeld] = useState<HeldSweep>(props.held?.current ?? {});
  const [isUnfolded, setUnfolded] = useState(false);
  const [isResultKept, setResultKept] = useState(false);
  const answer = useRef<HTMLDivElement>(null);
  if (props.held) props.held.current = held;
  const hold = (change: Partial<HeldSweep>) => setHeld((before) => ({ ...before, ...change }));
  const { chosen, job, read = {} } = held;

  const standing = JSON.stringify(texts);
  const isMine = held.mine === standing;
  const byEntries = groundsOf('recordings', undefined, texts, isMine);
  const grounds = groundsOf(chosen?.kind, job, texts, isMine, read);
  const form = readForm(jobForm, texts);
  const refusals = 'refusals' in form ? form.refusals : {};
  const { looks, Looked } = useLooked(chosen, read) ?? {};
  const isReadable = looks?.every((look) => !('refusal' in look.read)) ?? false;
  // What can't be read is mended first: a verdict would only say so once more.
  const isLooking = chosen?.kind === 'recordings' && !isReadable;

  const { outcome, worker, isBusy, progress, stop, again } = useJudged(
    isLooking ? undefined : chosen,
    grounds,
    (found, of, key) => {
      if (of.kind === 'job' && (found.kind === 'judged' || found.kind === 'opened'))
        hold({ job: found.job });
      if (found.kind !== 'judged' || of.kind === 'demo') return;
      const isByEntries = of.kind === 'recordings' && !job;
      props.onJudged?.({ ...firstOf(found.judged), ...(isByEntries && { key }) });
      if (isByEntries && held.sensor)
        void keepResults(held.sensor, found.judged).then(setResultKept);
    },
  );
  // A demo and a report have jobs of their own.
  const isByJob = job !== undefined && chosen?.kind !== 'demo' && chosen?.kind !== 'report';
  const isAsked = chosen?.kind === 'recordings' && !job && !isLooking;
  const isWaiting = isAsked && grounds.kind !== 'ready';
  useEffect(() => {
    if (isWaiting && !held.sensor) setUnfolded(true);
  }, [isWaiting]);
  useEffect(() => holdRecordings(chosen !== undefined && chosen.kind !== 'demo'), [chosen]);
  useEffect(() => {
    if (props.keeping) return;
    const asked = new URLSearchParams(location.search);
    const [slug, id, kept] = ['example', 'sensor', 'recording'].map((name) => asked.get(name));
    if (slug)
      void import('./exampleFiles.js')
        .then(({ exampleFiles }) => exampleFiles(slug))
        .then((files) => files && hold({ chosen: { files, kind: 'demo' } }));
    if (kept)
      void import('../watchSweep/keptToJudge.js')
        .then(({ keptToJudge }) => keptToJudge(kept))
        .then((files) => files && hold({ chosen: { files, kind: 'job' } }));
    if (id)
      void import('../shelf/shelfStore.js')
        .then(({ readAll }) => readAll())
        .then((tried) => 'value' in tried && tried.value.sensors.find((one) => one.id === id))
        .then((sensor) => sensor && takeSensor(sensor));
  }, []);
  useEffect(() => {
    if (outcome) answer.current?.scrollIntoView({ block: 'start', behavior: 'smooth' });
  }, [outcome]);

  const choose = async (files: readonly File[]) => {
    if (files.length === 0) return;
    setResultKept(false);
    hold({ chosen: await chosenFiles(files), read: undefined });
  };
  /** A sensor of the shelf is one's own: its values stand in the entries, and recordings are judged by them. */
  const takeSensor = (sensor: ShelfSensor | undefined) => {
    setResultKept(false);
    hold({ sensor, mine: sensor && JSON.stringify(take(sensor.texts)) });
  };
  const { kept } = props;
  const isStruck =
    kept?.key !== undefined && !(byEntries.kind !== 'refused' && byEntries.key === kept.key);
  const shown =
    outcome?.kind === 'judged'
      ? outcome.judged
      : chosen
        ? undefined
        : (props.first ?? (isStruck ? undefined : kept));
  const origin =
    shown === kept && kept
      ? kept.key === undefined
        ? checkPageWords.keptByJob
        : checkPageWords.kept
      : !chosen || chosen.kind === 'demo'
        ? checkPageWords.demoOnly
        : shown?.origin;
  const waiting =
    chosen && grounds.kind !== 'ready'
      ? grounds.why
      : !chosen && isStruck
        ? checkPageWords.struck
        : undefined;
  return (
    <div class={chosen ? 'readings not-content chosen' : 'readings not-content'}>
      {!props.keeping && <NewerVersion />}
      {notice !== undefined && <p class="notice">{notice}</p>}
      <ChooseFiles
        onFiles={choose}
        onDemo={async () => {
          const files = await demoFiles();
          hold({ chosen: { files, kind: 'demo' }, job: undefined, read: undefined });
        }}
      />
      {isByJob && (
        <p class="notice">
          {judgedByJobSentence(job.title)}{' '}
          <button
            type="button"
            onClick={() => hold({ job: undefined, chosen: withoutJob(chosen) })}
          >
            {checkPageWords.useEntries}
          </button>
        </p>
      )}
      {looks && Looked && <Looked looks={looks} read={read} onRead={(by) => hold({ read: by })} />}
      {isAsked && (
        <WhichSensor
          texts={texts}
          isMine={isMine}
          isWrong={byEntries.kind === 'refused'}
          sensor={held.sensor}
          onSensor={takeSensor}
          onMine={() => hold({ mine: standing })}
        />
      )}
      {isLooking ? (
        !looks && <p role="status">{checkPageWords.looks}</p>
      ) : (
        <div class="answer" role="status" aria-busy={isBusy} ref={answer}>
          {isBusy ? (
            <p>
              {progress
                ? progressSentence(shortName(progress.name), progress.step)
                : checkPageWords.begins}
            </p>
          ) : (
            <VerdictAnswer outcome={outcome} waiting={waiting} shown={shown} origin={origin} />
          )}
        </div>
      )}
      {isBusy && (
        <p class="keep">
          <progress aria-label={checkPageWords.judged} max={1} value={progress?.part ?? 0} />
          <button type="button" onClick={stop}>
            {checkPageWords.stop}
          </button>
        </p>
      )}
      {outcome?.kind === 'broken' && (
        <p class="keep">
          <button type="button" onClick={again}>
            {checkPageWords.judgeAgain}
          </button>
        </p>
      )}
      {outcome?.kind === 'judged' && chosen?.kind !== 'report' && (
        <TakeUnits
          units={outcome.judged.recordings.flatMap(({ units }) => units)}
          onText={(text) => hold({ read: { ...read, text: { ...read.text, ...text } } })}
        />
      )}
      {isResultKept && <p class="notice">{judgeWords.resultKept}</p>}
      {shown && !isBusy && <RestsOn rows={shown.restsOn} />}
      {outcome?.kind === 'judged' && worker && (
        <JudgedPart
          judged={outcome.judged}
          worker={worker}
          sensor={held.sensor}
          link={isAsked ? link : undefined}
        />
      )}
      {!isByJob && (
        <details
          class="job-entries"
          hidden={isLooking}
          open={isUnfolded}
          onToggle={(event) => setUnfolded(event.currentTarget.open)}
        >
          <summary>{checkPageWords.entries}</summary>
          <EntryFields
            form={jobForm}
            texts={texts}
            refusals={refusals}
            onText={(name, text) => {
              setText(name, text);
              // Who enters a value says of it that it is theirs; what was said of the others stays.
              if (isMine) hold({ mine: JSON.stringify({ ...texts, [name]: text }) });
            }}
          />
          <KeepOnShelf texts={texts} onKept={(sensor) => hold({ sensor, mine: standing })} />
          <KeepEntries
            link={link}
            onAgain={() => {
              hold({ mine: undefined, sensor: undefined });
              startAgain();
            }}
          />
        </details>
      )}
    </div>
  );
}

/** What was chosen without the job among it; nothing where nothing is left. */
function withoutJob(chosen: Chosen | undefined): Chosen | undefined {
  const files = chosen?.files.filter((file) => !isJobFile(file)) ?? [];
  return files.length > 0 ? { files, kind: 'recordings' } : undefined;
}
