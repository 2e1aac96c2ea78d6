import { checkPageWords, judgeWords, reportWords, workingWords } from '@truesweep/wording';
import { useMemo, useRef, useState } from 'preact/hooks';
import { useReachable } from '../forms/useReachable.js';
import type { ShelfSensor } from '../shelf/shelf.js';
import { KeepReport } from './KeepReport.js';
import type { Judged, JudgedRecording } from './protocol.js';
import { shortName } from './shortName.js';
import type { SweepWorker } from './sweepWorker.js';
import { TraceView } from './TraceView.js';
import { widthWithin } from './usePlaceWidth.js';

/** Judged recordings, one after the other, and what of them can be kept. */
export function JudgedPart(props: {
  readonly judged: Judged;
  readonly worker: SweepWorker;
  /** The sensor of the shelf that it is, if it is one. */
  readonly sensor: ShelfSensor | undefined;
  /** An address with what was entered. */
  readonly link: string | undefined;
}) {
  const { judged, worker } = props;
  return (
    <>
      {judged.recordings.map((recording, i) => (
        <RecordingPart key={recording.name} recording={recording} index={i} worker={worker} />
      ))}
      <KeepReport
        judged={judged}
        worker={worker}
        serial={props.sensor?.serial}
        machine={props.sensor?.machine}
        link={props.link}
      />
    </>
  );
}

/** What the frame around the evidence takes, px. */
const besideEvidence = 30;

function RecordingPart(props: {
  readonly recording: JudgedRecording;
  readonly index: number;
  readonly worker: SweepWorker;
}) {
  const { recording, index, worker } = props;
  const { name, bounds, findings, hasPasses } = recording;
  const [draw, drawPasses] = useMemo(
    () =>
      [
        (window: Parameters<SweepWorker['drawTrace']>[1]) => worker.drawTrace(index, window),
        (width: number) => worker.drawPasses(index, width),
      ] as const,
    [worker, index],
  );
  return (
    <section class="judged" aria-label={name}>
      <h2>{shortName(name)}</h2>
      <h3>{reportWords.trace}</h3>
      <TraceView
        name={name}
        bounds={bounds}
        findings={findings}
        draw={draw}
        drawPasses={hasPasses ? drawPasses : undefined}
      />
      <Unfolded
        kind="evidence"
        summary={judgeWords.evidence}
        waiting={checkPageWords.looks}
        write={(width) => worker.writeEvidence(index, widthWithin(width - besideEvidence))}
      />
      <Unfolded
        kind="workings"
        summary={workingWords.show}
        waiting={workingWords.fetching}
        write={() => worker.writeWorking(index)}
      />
    </section>
  );
}

/** What is written, as HTML, once it is unfolded, for the width that it has. */
function Unfolded(props: {
  readonly kind: string;
  readonly summary: string;
  readonly waiting: string;
  readonly write: (width: number) => Promise<string>;
}) {
  const { kind, summary, waiting, write } = props;
  const [text, setText] = useState<string>();
  const place = useRef<HTMLDetailsElement>(null);
  useReachable(place);
  const unfold = (event: { readonly currentTarget: HTMLElement }) => {
    if (text === undefined) void write(event.currentTarget.clientWidth).then(setText);
  };
  return (
    <details ref={place} class={kind} onToggle={unfold}>
      <summary>{summary}</summary>
      {text === undefined ? (
        <p role="status">{waiting}</p>
      ) : (
        <div dangerouslySetInnerHTML={{ __html: text }} />
      )}
    </details>
  );
}
