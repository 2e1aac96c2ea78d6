import type { Criteria, Expectation } from '@truesweep/core';
import { TraceDrawing, TravelMapDrawing } from '@truesweep/drawings';
import {
  checkRows,
  findingLabels,
  findingMeanings,
  findingRows,
  limitSources,
  reportWords,
  restOfFindingsSentence,
  scoreLabels,
  scoreSentences,
  supplyAssumedSentence,
  verdictLabels,
  verdictMeanings,
} from '@truesweep/wording';
import type { ReportRecording } from './report.js';
import { Table } from './Table.js';

/** So many findings are listed; the drawings mark all of them. */
const mostListed = 12;

/** One judged recording: verdict, causes, next steps, trace, map, findings and checks. */
export function RecordingPart(props: {
  readonly id: string;
  readonly recording: ReportRecording;
  readonly expected: Expectation;
  readonly criteria: Criteria;
}) {
  const { id, recording, expected, criteria } = props;
  const { name, bytes, sha256, howRead, sweep, score } = recording;
  const { verdict, findings } = score;
  const { cause, next, abrupt, places, tests, codes, movement, couldShow } = scoreSentences(
    score,
    criteria,
  );
  const kinds = [...new Set(findings.map(({ kind }) => kind))];
  const more = findings.length - mostListed;
  const [head = [], ...rows] = findingRows(findings.slice(0, mostListed));
  const [checkHead = [], ...checks] = checkRows(score.checks);
  return (
    <section class="recording" aria-labelledby={`${id}-name`}>
      <h2 id={`${id}-name`}>{name}</h2>
      <p class={`verdict ${verdict}`}>
        <strong>{verdictLabels[verdict]}</strong> {verdictMeanings[verdict]}
      </p>
      <dl class="reasons">
        <Sentences label={scoreLabels.cause} sentences={cause} />
        <Sentences label={scoreLabels.next} sentences={next} />
        <Sentences label={scoreLabels.abrupt} sentences={abrupt} />
      </dl>
      <h3>{reportWords.trace}</h3>
      <TraceDrawing
        id={`${id}-trace`}
        sweep={sweep}
        findings={findings}
        {...(!score.abrupt && { windows: expected.windows })}
      />
      {findings.length > 0 && (
        <>
          <Table
            head={[reportWords.number, ...head]}
            rows={rows.map((row, i) => [String(i + 1), ...row])}
          />
          {more > 0 && <p>{restOfFindingsSentence(more)}</p>}
          <ul aria-label={reportWords.meaning}>
            {kinds.map((kind) => (
              <li key={kind}>
                {findingLabels[kind]}: {findingMeanings[kind]}
              </li>
            ))}
          </ul>
          <h3>{reportWords.map}</h3>
          <TravelMapDrawing id={`${id}-map`} score={score} />
        </>
      )}
      <Table head={checkHead} rows={checks} />
      <p>{limitSources(score.checks)}</p>
      <dl class="reasons">
        <Sentences label={scoreLabels.places} sentences={places} />
        <Sentences label={scoreLabels.tests} sentences={tests} />
        <Sentences label={scoreLabels.codes} sentences={codes} />
        <Sentences label={scoreLabels.movement} sentences={[movement]} />
        <Sentences label={scoreLabels.couldShow} sentences={couldShow} />
        <Sentences
          label={scoreLabels.supply}
          sentences={score.supplyAssumed ? [supplyAssumedSentence] : []}
        />
        <Sentences label={reportWords.howRead} sentences={[howRead]} />
        <Sentences label={reportWords.size} sentences={[`${bytes} bytes`]} />
        <Sentences label={reportWords.hash} sentences={[sha256]} />
      </dl>
    </section>
  );
}

function Sentences(props: { readonly label: string; readonly sentences: readonly string[] }) {
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
