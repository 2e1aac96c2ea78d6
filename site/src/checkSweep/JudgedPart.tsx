import { checkPageWords, reportWords } from '@truesweep/wording';
import { useMemo } from 'preact/hooks';
import type { Judged, JudgedRecording, TimeStretch } from './protocol.js';
import { shortName } from './shortName.js';
import type { SweepWorker } from './sweepWorker.js';
import { TraceView } from './TraceView.js';

/** Judged recordings, one after the other, and what of them can be kept. */
export function JudgedPart(props: { readonly judged: Judged; readonly worker: SweepWorker }) {
  const { judged, worker } = props;
  return (
    <>
      <p class="keep">
        <Kept name="sweep-report.html" type="text/html" text={judged.report}>
          {checkPageWords.download}
        </Kept>
        <Kept name="bench.job.json" type="application/json" text={judged.jobText}>
          {checkPageWords.saveJob}
        </Kept>
      </p>
      {judged.recordings.map((recording, i) => (
        <RecordingPart key={recording.name} recording={recording} index={i} worker={worker} />
      ))}
    </>
  );
}

function RecordingPart(props: {
  readonly recording: JudgedRecording;
  readonly index: number;
  readonly worker: SweepWorker;
}) {
  const { recording, index, worker } = props;
  const { name, answer, evidence, whole, shortest, findings } = recording;
  const draw = useMemo(
    () => (stretch: TimeStretch) => worker.drawTrace(index, stretch),
    [worker, index],
  );
  return (
    <section class="judged" aria-label={name}>
      <h2>{shortName(name)}</h2>
      <div dangerouslySetInnerHTML={{ __html: answer }} />
      <h3>{reportWords.trace}</h3>
      <TraceView whole={whole} shortest={shortest} findings={findings} draw={draw} />
      <div dangerouslySetInnerHTML={{ __html: evidence }} />
    </section>
  );
}

/** A text that can be kept as a file. */
function Kept(props: {
  readonly name: string;
  readonly type: string;
  readonly text: string;
  readonly children: string;
}) {
  const { name, type, text, children } = props;
  // No blob: browsers look ahead at the addresses of links, and the page's policy lets nothing be fetched from one.
  const url = useMemo(() => `data:${type};charset=utf-8,${encodeURIComponent(text)}`, [type, text]);
  return (
    <a download={name} href={url}>
      {children}
    </a>
  );
}
