import { operatingPoint, positionAt } from '@truesweep/core';
import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { jobCircuit, jobCriteria, jobExpectation } from '@truesweep/jobs';
import { reportWords, sweepCautions } from '@truesweep/wording';
import { conditionRows } from './conditionRows.js';
import { RecordingPart } from './RecordingPart.js';
import { ReportFrame } from './ReportFrame.js';
import type { Report } from './report.js';
import { WorkingsPart } from './WorkingsPart.js';

/** The report as it is read: each recording, then the conditions, cautions and room for a signature. */
export function ReportPage({ job, writtenAt, record, recordings }: Report) {
  const circuit = jobCircuit(job);
  const expected = jobExpectation(job);
  const criteria = jobCriteria(job);
  return (
    <ReportFrame
      kind={reportWords.title}
      title={job.title}
      writtenAt={writtenAt}
      record={record}
      cautions={sweepCautions()}
    >
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
      <WorkingsPart of={recordings} />
    </ReportFrame>
  );
}
