import type { Job } from '@truesweep/jobs';
import { checkPageWords, judgedByJobSentence, progressSentence } from '@truesweep/wording';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { inAddress } from '../forms/address.js';
import type { CalculatorProps } from '../forms/Calculator.js';
import { EntryFields } from '../forms/EntryFields.js';
import { namesOf, readForm } from '../forms/form.js';
import { KeepEntries } from '../forms/KeepEntries.js';
import { useEntries } from '../forms/useEntries.js';
import { holdRecordings } from '../offline/held.js';
import { NewerVersion } from '../offline/NewerVersion.js';
import { type Chosen, groundsOf } from './basis.js';
import { ChooseFiles } from './ChooseFiles.js';
import { chosenFiles, isJobFile } from './chosenFiles.js';
import { demoFiles } from './demoFiles.js';
import { JudgedPart } from './JudgedPart.js';
import { jobForm } from './jobForm.js';
import { Mine } from './Mine.js';
import type { GivenJob } from './protocol.js';
import { RestsOn } from './RestsOn.js';
import { shortName } from './shortName.js';
import { type FirstJudged, firstOf } from './sweepWorker.js';
import { TakeUnits } from './TakeUnits.js';
import { useJudged } from './useJudged.js';
import { VerdictAnswer } from './VerdictAnswer.js';

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
  /** In which units the recordings are read, where that was told. */
  readonly text?: GivenJob['text'] | undefined;
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
  const { texts, notice, link, setText, startAgain } = useEntries(jobForm, keeping);
  const [held, setHeld] = useState<HeldSweep>(props.held?.current ?? {});
  const [isUnfolded, setUnfolded] = useState(false);
  if (props.held) props.held.current = held;
  const hold = (change: Partial<HeldSweep>) => setHeld((before) => ({ ...before, ...change }));
  const { chosen, job } = held;

  const standing = JSON.stringify(texts);
  const isMine = held.mine === standing;
  const byEntries = groundsOf('recordings', undefined, texts, isMine);
  const grounds = groundsOf(chosen?.kind, job, texts, isMine, held.text);
  const read = readForm(jobForm, texts);
  const refusals = 'refusals' in read ? read.refusals : {};

  const { outcome, worker, isBusy, progress, stop, again } = useJudged(
    chosen,
    grounds,
    (found, of, key) => {
      if (of.kind === 'job' && (found.kind === 'judged' || found.kind === 'opened'))
        hold({ job: found.job });
      if (found.kind !== 'judged' || of.kind === 'demo') return;
      const isByEntries = of.kind === 'recordings' && !job;
      props.onJudged?.({ ...firstOf(found.judged), ...(isByEntries && { key }) });
    },
  );
  // A demo and a report have jobs of their own.
  const isByJob = job !== undefined && chosen?.kind !== 'demo' && chosen?.kind !== 'report';
  const isWaiting = chosen !== undefined && grounds.kind !== 'ready';
  useEffect(() => {
    if (isWaiting) setUnfolded(true);
  }, [isWaiting]);
  useEffect(() => holdRecordings(chosen !== undefined && chosen.kind !== 'demo'), [chosen]);

  const choose = async (files: readonly File[]) => {
    if (files.length > 0) hold({ chosen: await chosenFiles(files), text: undefined });
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
  return (
    <div class={chosen ? 'readings not-content chosen' : 'readings not-content'}>
      {!props.keeping && <NewerVersion />}
      {notice !== undefined && <p class="notice">{notice}</p>}
      <ChooseFiles
        onFiles={choose}
        onDemo={async () => {
          const files = await demoFiles();
          hold({ chosen: { files, kind: 'demo' }, job: undefined, text: undefined });
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
      {chosen?.kind === 'recordings' && !job && (
        <Mine
          texts={texts}
          isMine={isMine}
          isWrong={byEntries.kind === 'refused'}
          onMine={(is) => hold({ mine: is ? standing : undefined })}
        />
      )}
      <div class="answer" role="status" aria-busy={isBusy}>
        {isBusy ? (
          <p>
            {progress
              ? progressSentence(shortName(progress.name), progress.step)
              : checkPageWords.begins}
          </p>
        ) : (
          <VerdictAnswer
            outcome={outcome}
            waiting={
              chosen && grounds.kind !== 'ready'
                ? grounds.why
                : !chosen && isStruck
                  ? checkPageWords.struck
                  : undefined
            }
            shown={shown}
            origin={
              shown === kept && kept
                ? kept.key === undefined
                  ? checkPageWords.keptByJob
                  : checkPageWords.kept
                : !chosen || chosen.kind === 'demo'
                  ? checkPageWords.demoOnly
                  : shown?.origin
            }
          />
        )}
      </div>
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
          onText={(text) => hold({ text: { ...held.text, ...text } })}
        />
      )}
      {shown && !isBusy && <RestsOn rows={shown.restsOn} />}
      {!isByJob && (
        <details
          class="job-entries"
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
          <KeepEntries
            link={link}
            onAgain={() => {
              hold({ mine: undefined });
              startAgain();
            }}
          />
        </details>
      )}
      {outcome?.kind === 'judged' && worker && (
        <JudgedPart judged={outcome.judged} worker={worker} />
      )}
    </div>
  );
}

/** What was chosen without the job among it; nothing where nothing is left. */
function withoutJob(chosen: Chosen | undefined): Chosen | undefined {
  const files = chosen?.files.filter((file) => !isJobFile(file)) ?? [];
  return files.length > 0 ? { files, kind: 'recordings' } : undefined;
}
