import {
  type Criteria,
  checkFields,
  checkText,
  type Expectation,
  type Score,
  sweepColumns,
} from '@truesweep/core';
import { TraceDrawing, TravelMapDrawing, traceColumns } from '@truesweep/drawings';
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
  verdictLabels,
} from '@truesweep/wording';
import { recordingRules } from './checkedReport.js';
import type { ReportRecording } from './report.js';
import { Table } from './Table.js';

const any = () => {};
/** What a framework hands to any component beside its own properties. */
const ofFramework = { 'children?': any, 'key?': any, 'ref?': any };

/** So many findings are listed; the drawings mark all of them. */
const mostListed = 12;

/** One judged recording: verdict, causes, next steps, trace, findings, map and checks. */
export function RecordingPart(props: {
  readonly id: string;
  readonly recording: ReportRecording;
  readonly expected: Expectation;
  readonly criteria: Criteria;
}) {
  const { id, recording, expected, criteria } = props;
  const { name, sweep, score } = recording;
  return (
    <section class="recording" aria-labelledby={`${id}-name`}>
      <h2 id={`${id}-name`}>{name}</h2>
      <RecordingAnswer score={score} criteria={criteria} />
      <h3>{reportWords.trace}</h3>
      <TraceDrawing
        id={`${id}-trace`}
        columns={sweepColumns(sweep, traceColumns())}
        findings={score.findings}
        {...(!score.abrupt && { windows: expected.windows })}
      />
      <RecordingEvidence id={id} recording={recording} criteria={criteria} />
    </section>
  );
}

/**
 * What a judged recording comes to: verdict, how sure it is, causes and next steps.
 *
 * @example
 * import { defaultCriteria, expectation, scoreSweep } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const still = { time: Float64Array.of(0, 1), signal: Float64Array.of(0, 0) };
 * const score = scoreSweep(still, expectation(circuit, {}));
 * renderToString(h(RecordingAnswer, { score, criteria: defaultCriteria })).includes('Inconclusive') // => true
 */
export function RecordingAnswer(props: { readonly score: Score; readonly criteria: Criteria }) {
  checkFields(props, 'props', { score: any, criteria: any, ...ofFramework });
  const { score, criteria } = props;
  const { verdict: said, loosened, sure, cause, next, abrupt } = scoreSentences(score, criteria);
  const { verdict } = score;
  return (
    <>
      <p class={`verdict ${verdict}`}>
        <strong>{verdictLabels[verdict]}</strong> {said}
      </p>
      <dl class="reasons">
        <Sentences label={scoreLabels.limits} sentences={loosened} />
        <Sentences label={scoreLabels.sure} sentences={sure} />
        <Sentences label={scoreLabels.cause} sentences={cause} />
        <Sentences label={scoreLabels.next} sentences={next} />
        <Sentences label={scoreLabels.abrupt} sentences={abrupt} />
      </dl>
    </>
  );
}

/**
 * What a judgement rests on: findings with their places, the map over the travel, checks with their limits, what the recording could
 * show, how it was read.
 *
 * @example
 * import { defaultCriteria, expectation, scoreSweep } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const still = { time: Float64Array.of(0, 1), signal: Float64Array.of(0, 0) };
 * const score = scoreSweep(still, expectation(circuit, {}));
 * const recording = { name: 'still.csv', bytes: 20, sha256: '', howRead: 'Read as text.', score };
 * renderToString(h(RecordingEvidence, { id: 'one', recording, criteria: defaultCriteria })).includes('20 bytes') // => true
 */
export function RecordingEvidence(props: {
  /** Begins the `id` of the drawing's elements. */
  readonly id: string;
  readonly recording: Omit<ReportRecording, 'sweep'>;
  readonly criteria: Criteria;
  /** How wide the map is drawn, 240 to 4000; 760 when left out. */
  readonly width?: number;
}) {
  checkFields(props, 'props', {
    id: checkText,
    recording: recordingRules,
    criteria: any,
    'width?': any,
    ...ofFramework,
  });
  const { id, recording, criteria, width } = props;
  const { bytes, sha256, howRead, score } = recording;
  const { findings } = score;
  const { places, tests, codes, movement, seen, couldShow, stamps, assumed } = scoreSentences(
    score,
    criteria,
  );
  const kinds = [...new Set(findings.map(({ kind }) => kind))];
  const more = findings.length - mostListed;
  const [head = [], ...rows] = findingRows(findings.slice(0, mostListed));
  const [checkHead = [], ...checks] = checkRows(score.checks);
  return (
    <>
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
          <TravelMapDrawing id={`${id}-map`} score={score} width={width} />
        </>
      )}
      <Table head={checkHead} rows={checks} />
      <p>{limitSources(score.checks)}</p>
      <dl class="reasons">
        <Sentences label={scoreLabels.places} sentences={places} />
        <Sentences label={scoreLabels.tests} sentences={tests} />
        <Sentences label={scoreLabels.codes} sentences={codes} />
        <Sentences label={scoreLabels.movement} sentences={[movement]} />
        <Sentences label={scoreLabels.seen} sentences={seen} />
        <Sentences label={scoreLabels.couldShow} sentences={couldShow} />
        <Sentences label={scoreLabels.stamps} sentences={stamps} />
        <Sentences label={scoreLabels.assumed} sentences={assumed} />
        <Sentences label={reportWords.howRead} sentences={[howRead]} />
        <Sentences label={reportWords.size} sentences={[`${bytes} bytes`]} />
        <Sentences label={reportWords.hash} sentences={[sha256]} />
      </dl>
    </>
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
