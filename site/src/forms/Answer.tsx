import { useEffect, useRef, useState } from 'preact/hooks';
import { AsItCame } from './AsItCame.js';

/** A screen reader is told once the hand rests, not at each key. */
const announceAfter = 1000;

/**
 * The answer in sentences, and what a screen reader is told of it when it changes. Without sentences those that the page came with
 * stay.
 */
export function Answer({ sentences }: { readonly sentences: readonly string[] | undefined }) {
  const said = sentences?.join(' ');
  const shown = useRef<HTMLDivElement>(null);
  const last = useRef(said);
  const [announced, setAnnounced] = useState('');
  useEffect(() => {
    last.current ??= [...(shown.current?.children ?? [])].map((p) => p.textContent).join(' ');
    if (said === undefined || said === last.current) return;
    const timer = setTimeout(() => {
      last.current = said;
      setAnnounced(said);
    }, announceAfter);
    return () => clearTimeout(timer);
  }, [said]);
  return (
    <>
      {sentences ? (
        <div key="own" class="answer">
          {sentences.map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
        </div>
      ) : (
        <AsItCame key="came" class="answer" at={shown} />
      )}
      <p class="sr-only" role="status">
        {announced}
      </p>
    </>
  );
}
