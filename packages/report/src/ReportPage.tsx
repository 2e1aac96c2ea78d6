import { operatingPoint, positionAt } from '@truesweep/core';
import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { jobCircuit, jobCriteria, jobExpectation } from '@truesweep/jobs';
import { cautions, reportWords, scoreLabels } from '@truesweep/wording';
import { conditionRows } from './conditionRows.js';
import { filingRows } from './filingRows.js';
import { RecordingPart } from './RecordingPart.js';
import type { Report } from './report.js';

/** The report as it is read: each recording, then the conditions, cautions and room for a signature. */
export function ReportPage({ job, writtenAt, record, recordings }: Report) {
  const filed = filingRows(record);
  const circuit = jobCircuit(job);
  const expected = jobExpectation(job);
  const criteria = jobCriteria(job);
  return (
    <main>
      <header>
        <p class="kind">{reportWords.title}</p>
        <h1>{job.title}</h1>
        <p>
          {reportWords.written} {writtenAt}
        </p>
        {filed.length > 0 && (
          <dl class="filed">
            {filed.map(([label, value]) => (
              <div key={label}>
                <dt>{label}</dt>
                <dd>{value}</dd>
              </div>
            ))}
          </dl>
        )}
      </header>
      {recordings.map((recording, i) => (
        <RecordingPart
          key={recording.name}
          id={`recording-${i + 1}`}
          recording={recording}
          expected={expected}
          criteria={criteria}
        />
      ))}
      <section class="conditions">
        <h2>{reportWords.conditions}</h2>
        <table class="pairs">
          <tbody>
            {conditionRows(job, expected).map(([label, value]) => (
              <tr key={label}>
                <th scope="row">{label}</th>
                <td>{value}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {job.notes && (
          <p class="notes">
            {reportWords.notes}: {job.notes}
          </p>
        )}
        <h3>{reportWords.hookUp}</h3>
        <div class="drawings">
          <CircuitDrawing
            id="circuit"
            circuit={circuit}
            closed={operatingPoint(circuit, positionAt(circuit.sensor, 0))}
            open={operatingPoint(circuit, positionAt(circuit.sensor, 1))}
          />
          <CurveDrawing id="curve" curve={expected.curve} windows={expected.windows} />
        </div>
      </section>
      <section class="cautions">
        <h2>{scoreLabels.cautions}</h2>
        <ul>
          {Object.values(cautions).map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      </section>
      <p class="signature">
        <span>{reportWords.examined}</span>
        <span>{reportWords.date}</span>
        <span>{reportWords.signature}</span>
      </p>
    </main>
  );
}
