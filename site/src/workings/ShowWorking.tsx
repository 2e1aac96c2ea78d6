import { workingWords } from '@truesweep/wording';
import { useEffect, useRef, useState } from 'preact/hooks';
import { useReachable } from '../forms/useReachable.js';
import type { Written } from './written.js';

/** Code that writes workings of some values: fetched when they are opened. */
export interface WorkingsOf<Given> {
  readonly workings: (values: Given) => readonly Written[];
}

/** The working of what a page says, folded away: nothing of it is fetched or worked out before it is opened. */
export function ShowWorking<Given>(props: {
  readonly of: () => Promise<WorkingsOf<Given>>;
  /** What it is worked out from; nothing while that can't be read. */
  readonly values: Given | undefined;
}) {
  const { of, values } = props;
  const [isOpen, setOpen] = useState(false);
  const place = useRef<HTMLDetailsElement>(null);
  const [written, setWritten] = useState<readonly Written[] | 'failed'>();
  useEffect(() => {
    if (!isOpen || values === undefined) return;
    let isWanted = true;
    void of()
      .then(({ workings }) => workings(values))
      .catch(() => 'failed' as const)
      .then((all) => {
        if (isWanted) setWritten(all);
      });
    return () => {
      isWanted = false;
    };
  }, [isOpen, of, values]);
  useReachable(place);
  return (
    <details
      ref={place}
      class="workings"
      data-pagefind-ignore
      onToggle={(event) => setOpen(event.currentTarget.open)}
    >
      <summary>{workingWords.show}</summary>
      {isOpen && values === undefined && <p>{workingWords.mend}</p>}
      {isOpen && values !== undefined && !written && (
        <p aria-live="polite">{workingWords.fetching}</p>
      )}
      {written === 'failed' && <p>{workingWords.failed}</p>}
      {values !== undefined && written?.length === 0 && <p>{workingWords.none}</p>}
      {values !== undefined &&
        written !== 'failed' &&
        written?.map(({ title, html }, i) => (
          <details key={title} class="working" open={i === 0}>
            <summary>{title}</summary>
            {/* Written by the package of workings, which escapes every text. */}
            <div dangerouslySetInnerHTML={{ __html: html }} />
          </details>
        ))}
    </details>
  );
}
