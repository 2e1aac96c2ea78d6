import { shelfWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import type { ShelfResult } from './shelf.js';

/** What changed between two results of a sensor, in sentences; worked out when it is first unfolded. */
export function Compared(props: { readonly before: ShelfResult; readonly after: ShelfResult }) {
  const { before, after } = props;
  const [isOpen, setOpen] = useState(false);
  const [sentences, setSentences] = useState<readonly string[]>();
  useEffect(() => {
    if (!isOpen) return;
    void import('./comparedSentences.js').then(({ comparedSentences }) =>
      setSentences(comparedSentences(before.score, after.score)),
    );
  }, [isOpen, before, after]);
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{shelfWords.compare}</summary>
      <ul>
        {sentences?.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </details>
  );
}
