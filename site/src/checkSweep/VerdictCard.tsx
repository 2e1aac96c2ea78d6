import { judgeWords, scoreLabels, verdictLabels } from '@truesweep/wording';
import { shortName } from './shortName.js';
import type { FirstRecording } from './sweepWorker.js';
import { VerdictSign } from './VerdictSign.js';

/** What a recording comes to: the verdict by sign, word and colour, then why, where and what next. */
export function VerdictCard({ recording }: { readonly recording: FirstRecording }) {
  const { name, verdict, said, recheck, why = [], where = [], next = [], sure = [] } = recording;
  const isTold = next.length > 0;
  return (
    <article class={`verdict-card ${verdict}`}>
      <h2>
        <VerdictSign verdict={verdict} />
        <strong>{verdictLabels[verdict]}</strong> <span class="of">{shortName(name)}</span>
      </h2>
      <p>
        {said} {recheck}
      </p>
      {isTold && (
        <dl>
          <Told label={judgeWords.why} sentences={why} />
          <Told
            label={judgeWords.where}
            sentences={where.length > 0 ? where : [judgeWords.nowhere]}
          />
          <Told label={judgeWords.next} sentences={next} />
          <Told label={scoreLabels.sure} sentences={sure} />
        </dl>
      )}
    </article>
  );
}

function Told(props: { readonly label: string; readonly sentences: readonly string[] }) {
  const { label, sentences } = props;
  if (sentences.length === 0) return null;
  return (
    <div>
      <dt>{label}</dt>
      {sentences.map((sentence) => (
        <dd key={sentence}>{sentence}</dd>
      ))}
    </div>
  );
}
