import type { FilingRecord } from '@truesweep/report';
import { filingLabels, judgeWords, verdictLabels } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import type { JudgedRecording } from './protocol.js';
import { VerdictSign } from './VerdictSign.js';

/** While the label alone is printed, the page bears this class. */
const printsLabel = 'prints-label';

/** A label for the sensor's bag: verdict, job, serial number, day; and a square code that opens the entries. */
export function LabelSheet(props: {
  readonly title: string;
  readonly recording: JudgedRecording;
  readonly record: FilingRecord;
  readonly link: string | undefined;
}) {
  const { title, recording, record, link } = props;
  const [code, setCode] = useState<string>();
  const address = new URL(link ?? '', location.href.replace(/[#?].*$/, '')).href;
  const [isOpen, setOpen] = useState(false);
  useEffect(() => {
    if (!isOpen) return;
    let isOver = false;
    void import('./squareCode.js').then(({ squareCode }) => {
      if (!isOver) setCode(squareCode(address));
    });
    return () => {
      isOver = true;
    };
  }, [address, isOpen]);
  const print = () => {
    const { classList } = document.documentElement;
    classList.add(printsLabel);
    addEventListener('afterprint', () => classList.remove(printsLabel), { once: true });
    window.print();
  };
  const told = (['jobNumber', 'machine', 'serial', 'at'] as const).filter((name) => record[name]);
  return (
    <details class="label" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{judgeWords.label}</summary>
      <div class={`label-sheet ${recording.verdict}`}>
        <div>
          <p class="word">
            <VerdictSign verdict={recording.verdict} />
            <strong>{verdictLabels[recording.verdict]}</strong>
          </p>
          <p>{title}</p>
          {told.map((name) => (
            <p key={name}>
              {filingLabels[name]}: {record[name]}
            </p>
          ))}
        </div>
        {code !== undefined && (
          <svg
            class="square-code"
            viewBox={codeBox(code)}
            role="img"
            aria-label={judgeWords.opensEntries}
          >
            <path d={code} fill="#000" />
          </svg>
        )}
      </div>
      <p class="keep">
        <button type="button" onClick={print}>
          {judgeWords.printLabel}
        </button>
      </p>
    </details>
  );
}

/** The box of a code's path, with the four empty squares around it that readers ask for. */
function codeBox(path: string): string {
  const rows = [...path.matchAll(/M\d+,(\d+)/g)].map(([, y]) => Number(y));
  const size = Math.max(...rows) + 1;
  return `-4 -4 ${size + 8} ${size + 8}`;
}
