import type { NamedFile } from '@truesweep/jobs';
import { checkSweepWords, verdictLabels, verdictMeanings } from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { CheckedFiles, RefusedFiles } from './checkFiles.js';
import { demoFiles } from './demoFiles.js';

/** What a page shows of judged files; the report is left out of what was judged when the page was built. */
export type Shown = Omit<CheckedFiles, 'report'> & { readonly report?: string };

async function named(files: Iterable<File>): Promise<readonly NamedFile[]> {
  return await Promise.all(
    Array.from(files, async (file) => ({
      name: file.name,
      bytes: new Uint8Array(await file.arrayBuffer()),
    })),
  );
}

/** The calculator: a job and its recordings in, verdicts and the report out. Nothing is sent anywhere. */
export function CheckSweep({ first }: { readonly first: Shown }) {
  const [shown, setShown] = useState<Shown | RefusedFiles>(first);
  const [isBusy, setBusy] = useState(false);
  const worker = useRef<Worker>();
  useEffect(() => () => worker.current?.terminate(), []);

  const judge = async (files: readonly NamedFile[]): Promise<void> => {
    setBusy(true);
    worker.current?.terminate();
    worker.current = new Worker(new URL('./checkSweep.worker.ts', import.meta.url), {
      type: 'module',
    });
    worker.current.onmessage = ({ data }: MessageEvent<CheckedFiles | RefusedFiles>) => {
      setShown(data);
      setBusy(false);
    };
    worker.current.postMessage(files);
  };
  return (
    <div class="readings not-content">
      <form
        class="drop"
        onSubmit={(event) => event.preventDefault()}
        onDragOver={(event) => event.preventDefault()}
        onDrop={async (event) => {
          event.preventDefault();
          await judge(await named(event.dataTransfer?.files ?? []));
        }}
      >
        <label for="files">{checkSweepWords.files}</label>
        <input
          id="files"
          type="file"
          multiple
          onChange={async (event) => await judge(await named(event.currentTarget.files ?? []))}
        />
        <button type="button" onClick={async () => await judge(await demoFiles())}>
          {checkSweepWords.demo}
        </button>
      </form>
      <div class="answer" role="status" aria-busy={isBusy}>
        {isBusy ? <p>{checkSweepWords.busy}</p> : <Answer shown={shown} />}
      </div>
      {!isBusy && 'report' in shown && shown.report && (
        <>
          <p>
            <a
              download="sweep-report.html"
              href={`data:text/html;charset=utf-8,${encodeURIComponent(shown.report)}`}
            >
              {checkSweepWords.download}
            </a>
          </p>
          <iframe class="report" title={checkSweepWords.report} sandbox="" srcdoc={shown.report} />
        </>
      )}
    </div>
  );
}

function Answer({ shown }: { readonly shown: Shown | RefusedFiles }) {
  if ('refusal' in shown) return <p class="refusal">{shown.refusal}</p>;
  return (
    <>
      <p>{shown.title}</p>
      <ul>
        {shown.recordings.map(({ name, verdict }) => (
          <li key={name}>
            {name}: <strong>{verdictLabels[verdict]}.</strong> {verdictMeanings[verdict]}
          </li>
        ))}
      </ul>
    </>
  );
}
