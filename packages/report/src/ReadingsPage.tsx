import { resistanceBand, sweepColumns } from '@truesweep/core';
import {
  type DrawnReading,
  PressureDrawing,
  StepsDrawing,
  ThermistorDrawing,
  traceColumns,
} from '@truesweep/drawings';
import { expectReadings, type JudgedReadings, type ReadingsJob } from '@truesweep/jobs';
import {
  judgedReadingWords,
  readingAdviceSentences,
  readingCautions,
  readingCheckRows,
  readingCodesSentences,
  readingReasonSentences,
  readingUnsaidSentences,
  readingVerdictMeanings,
  reportWords,
  sensorKindLabels,
  stepWords,
  verdictLabels,
} from '@truesweep/wording';
import { ReportFrame } from './ReportFrame.js';
import type { ReadingsReport, ReportedPumpDown } from './readingsReport.js';
import { Table } from './Table.js';
import { WorkingsPart } from './WorkingsPart.js';

/** The report of single readings as it is read: verdict and reasons, readings beside their limits, the drawing, cautions, room for a signature. */
export function ReadingsPage(report: ReadingsReport) {
  const { job, writtenAt, record, judged, pumpDowns = [], workings = [] } = report;
  const { verdict } = judged.judgement;
  const [head = [], ...rows] = readingCheckRows(judged);
  return (
    <ReportFrame
      kind={reportWords.readingsTitle}
      title={job.title}
      writtenAt={writtenAt}
      record={record}
      cautions={readingCautions(judged.kind)}
    >
      <section class="recording">
        <h2>
          {sensorKindLabels[judged.kind]}: {job.sensor.name}
        </h2>
        <p class={`verdict ${verdict}`}>
          <strong>{verdictLabels[verdict].toUpperCase()}</strong> {readingVerdictMeanings[verdict]}
        </p>
        <Said title={judgedReadingWords.why} sentences={readingReasonSentences(judged)} />
        <Said title={judgedReadingWords.next} sentences={readingAdviceSentences(judged)} />
        <Said title={judgedReadingWords.codes} sentences={readingCodesSentences(judged)} />
        <h3>{judgedReadingWords.checks}</h3>
        <Table head={head} rows={rows} />
        <p>{judgedReadingWords.spread}</p>
        <div class="band">
          <Drawing job={job} judged={judged} />
        </div>
        {pumpDowns.map((one, i) => (
          <Steps key={one.name} id={`steps-${i + 1}`} pumpDown={one} judged={judged} />
        ))}
        <Said title={judgedReadingWords.unsaid} sentences={readingUnsaidSentences(judged)} />
        {job.notes && (
          <p class="notes">
            {reportWords.notes}: {job.notes}
          </p>
        )}
      </section>
      <WorkingsPart of={[{ name: job.sensor.name, workings }]} />
    </ReportFrame>
  );
}

function Said(props: { readonly title: string; readonly sentences: readonly string[] }) {
  const { title, sentences } = props;
  if (sentences.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}

/** Points of the band over the sensor's range. */
const points = 60;

function Drawing({ job, judged }: { readonly job: ReadingsJob; readonly judged: JudgedReadings }) {
  if (judged.kind === 'thermistor' && job.sensor.kind === 'thermistor') {
    const { law, tolerances } = job.sensor as Extract<
      ReadingsJob,
      { readonly sensor: { readonly kind: 'thermistor' } }
    >['sensor'];
    const expected = expectReadings(job);
    const at = expected.kind === 'thermistor' ? expected.rows.map((row) => row.temperature) : [];
    const [low, high] = [at[0]!, at.at(-1)!];
    const readings = judged.readings.flatMap(({ ohms, uncertainty, ...read }, i) => {
      if (ohms === undefined) return [];
      const { temperature, temperatureUncertainty } = read;
      const outcome = outcomeOf(judged, i);
      return [{ temperature, temperatureUncertainty, ohms, uncertainty, outcome }];
    });
    if (readings.length === 0 || !(high > low)) return null;
    const band = Array.from({ length: points + 1 }, (_, i) => {
      const temperature = i === points ? high : low + ((high - low) * i) / points;
      return { temperature, ...resistanceBand(law, temperature, tolerances) };
    });
    return <ThermistorDrawing id="curve" points={band} readings={readings} />;
  }
  if (judged.kind === 'pressure' && job.sensor.kind === 'pressure') {
    const { reference } = job.sensor as { readonly reference: 'absolute' | 'gauge' };
    const expected = expectReadings(job);
    if (expected.kind !== 'pressure' || expected.rows.length < 2) return null;
    const isAbsolute = reference === 'absolute';
    const band = expected.rows
      .map(({ gauge, absolute, ratio }) => ({ pressure: isAbsolute ? absolute : gauge, ...ratio }))
      .reverse();
    const readings = judged.readings.map(
      ({ gauge, gaugeUncertainty, readAs = 'gauge', volts, supply, uncertainty }, i) => ({
        pressure: isAbsolute ? judged.station.pressure + gauge : gauge,
        // The air's pressure stands between what the sensor counts from and what was read.
        pressureUncertainty: Math.hypot(
          gaugeUncertainty,
          readAs === reference ? 0 : judged.station.uncertainty,
        ),
        signal: volts / supply,
        uncertainty: (Math.hypot(1, volts / supply) * uncertainty) / supply,
        outcome: outcomeOf(judged, i),
      }),
    );
    return (
      <PressureDrawing id="band" unit="1" against={reference} points={band} readings={readings} />
    );
  }
  return null;
}

/** What came of a reading's own comparison. */
function outcomeOf({ judgement }: JudgedReadings, place: number): DrawnReading['outcome'] {
  const checks: readonly { reading?: number; check: string; outcome: DrawnReading['outcome'] }[] =
    judgement.checks;
  return (
    checks.find(({ reading, check }) => reading === place && check !== 'supply')?.outcome ??
    'not-judged'
  );
}

function Steps(props: {
  readonly id: string;
  readonly pumpDown: ReportedPumpDown;
  readonly judged: JudgedReadings;
}) {
  const { id, pumpDown, judged } = props;
  const { name, sweep, steps } = pumpDown;
  const first = judged.readings.length - steps.length;
  return (
    <>
      <h3>{name}</h3>
      <StepsDrawing
        id={id}
        unit="V"
        columns={sweepColumns(sweep, traceColumns(760))}
        stretches={steps.map(({ start, end, volts }, i) => ({
          start,
          end,
          mean: volts,
          outcome: outcomeOf(judged, first + i),
        }))}
      />
      <ul>
        {steps.map((step) => (
          <li key={step.start}>{stepWords.held(step)}</li>
        ))}
      </ul>
    </>
  );
}
