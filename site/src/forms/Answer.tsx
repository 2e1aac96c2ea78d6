import { useEffect, useRef, useState } from 'preact/hooks';

/** A screen reader is told once the hand rests, not at each key. */
const announceAfter = 1000;

/** The answer in sentences, and what a screen reader is told of it when it changes. */
export function Answer({ sentences }: { readonly sentences: readonly string[] }) {
  const said = sentences.join(' ');
  const last = useRef(said);
  const [announced, setAnnounced] = useState('');
  useEffect(() => {
    if (said === last.current) return;
    const timer = setTimeout(() => {
      last.current = said;
      setAnnounced(said);
    }, announceAfter);
    return () => clearTimeout(timer);
  }, [said]);
  return (
    <>
      <div class="answer">
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <p class="sr-only" role="status">
        {announced}
      </p>
    </>
  );
}
