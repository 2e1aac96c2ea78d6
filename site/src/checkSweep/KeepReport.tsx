import type { FilingRecord } from '@truesweep/report';
import { filingLabels, judgeWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { KeptFile } from '../forms/KeptFile.js';
import { fileName } from './fileName.js';
import { LabelSheet } from './LabelSheet.js';
import { localTime } from './localTime.js';
import type { Judged } from './protocol.js';
import type { SweepWorker } from './sweepWorker.js';

const names = Object.keys(filingLabels) as readonly (keyof FilingRecord)[];
/** A line of the record is no longer. */
const longest = 120;
/** The report waits for a short rest of the hand, ms. */
const settleAfter = 300;

/** What a judgement is filed by, and what is kept of it: the report, the job, a label; shared where the machine shares files. */
export function KeepReport(props: {
  readonly judged: Judged;
  readonly worker: SweepWorker;
  readonly serial: string | undefined;
  readonly machine: string | undefined;
  readonly link: string | undefined;
}) {
  const { judged, worker, link } = props;
  const [record, setRecord] = useState<FilingRecord>(() => ({
    at: localTime(new Date()),
    ...(props.serial && { serial: props.serial }),
    ...(props.machine && { machine: props.machine }),
  }));
  const [report, setReport] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => void worker.writeReport(record).then(setReport), settleAfter);
    return () => clearTimeout(timer);
  }, [worker, record]);
  const [first] = judged.recordings;
  if (!first) return null;
  const named = fileName(judged.title, first.verdict, record.at);
  const file = () => new File([report], `${named}.report.html`, { type: 'text/html' });
  const canShare = report !== '' && navigator.canShare?.({ files: [file()] }) === true;
  return (
    <section class="filing" aria-label={judgeWords.record}>
      <h2>{judgeWords.record}</h2>
      <div class="filing-fields">
        {names.map((name) => (
          <div key={name} class="entry text">
            <label for={`filing-${name}`}>{filingLabels[name]}</label>
            <input
              id={`filing-${name}`}
              value={record[name] ?? ''}
              maxLength={longest}
              autocomplete="off"
              onInput={(event) => setRecord({ ...record, [name]: event.currentTarget.value })}
            />
          </div>
        ))}
      </div>
      <p class="keep">
        {report !== '' && (
          <KeptFile name={`${named}.report.html`} type="text/html" text={report}>
            {judgeWords.keepReport}
          </KeptFile>
        )}
        {canShare && (
          <button
            type="button"
            onClick={() => void navigator.share({ files: [file()], title: named }).catch(() => {})}
          >
            {judgeWords.shareReport}
          </button>
        )}
        <KeptFile name={`${named}.job.json`} type="application/json" text={judged.jobText}>
          {judgeWords.saveJob}
        </KeptFile>
      </p>
      <LabelSheet title={judged.title} recording={first} record={record} link={link} />
    </section>
  );
}
