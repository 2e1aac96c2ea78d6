import { jobOpenedSentence } from '@truesweep/wording';
import type { FirstJudged, Outcome } from './sweepWorker.js';
import { VerdictCard } from './VerdictCard.js';

/** The answer: the verdicts, or why there are none. */
export function VerdictAnswer(props: {
  readonly outcome: Outcome | undefined;
  /** What is waited for before there can be a verdict. */
  readonly waiting: string | undefined;
  readonly shown: FirstJudged | undefined;
  /** Where the verdicts are from, if not from files that were judged now. */
  readonly origin: string | undefined;
}) {
  const { outcome, waiting, shown, origin } = props;
  if (outcome?.kind === 'refused') return <p class="refusal">{outcome.refusal}</p>;
  if (outcome?.kind === 'broken') return <p class="refusal">{outcome.why}</p>;
  if (outcome?.kind === 'opened') return <p>{jobOpenedSentence(outcome.job.title)}</p>;
  if (waiting !== undefined) return <p>{waiting}</p>;
  if (!shown) return null;
  return (
    <>
      {origin !== undefined && <p class="origin">{origin}</p>}
      <p class="title">{shown.title}</p>
      {shown.recordings.map((recording) => (
        <VerdictCard key={recording.name} recording={recording} />
      ))}
    </>
  );
}
