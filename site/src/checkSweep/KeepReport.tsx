import type { FilingRecord } from '@truesweep/report';
import { filingLabels, judgeWords } from '@truesweep/wording';
import { useState } from 'preact/hooks';
import { KeptFile } from '../forms/KeptFile.js';
import { keepFile } from '../forms/keepFile.js';
import { fileName } from './fileName.js';
import { LabelSheet } from './LabelSheet.js';
import { localTime } from './localTime.js';
import type { Judged } from './protocol.js';
import type { SweepWorker } from './sweepWorker.js';

const names = Object.keys(filingLabels) as readonly (keyof FilingRecord)[];
/** A line of the record is no longer. */
const longest = 120;

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
  const [isWorking, setWorking] = useState(false);
  const [first] = judged.recordings;
  if (!first) return null;
  const named = fileName(judged.title, first.verdict, record.at);
  const written = async () =>
    new File([await worker.writeReport(record, isWorking)], `${named}.report.html`, {
      type: 'text/html',
    });
  const keep = async () => keepFile(await written());
  const share = async () => {
    const files = [await written()];
    if (navigator.canShare?.({ files })) await navigator.share({ files, title: named });
    else keepFile(files[0] as File);
  };
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
      {judged.origin === undefined && (
        <p>
          <label>
            <input
              type="checkbox"
              checked={isWorking}
              onInput={(event) => setWorking(event.currentTarget.checked)}
            />{' '}
            {judgeWords.withWorking}
          </label>
        </p>
      )}
      <p class="keep">
        <button type="button" onClick={keep}>
          {judgeWords.keepReport}
        </button>
        {'share' in navigator && (
          // Who closes the sheet without sharing has decided.
          <button type="button" onClick={() => void share().catch(() => {})}>
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
