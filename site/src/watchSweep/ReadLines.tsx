import { watchWords } from '@truesweep/wording';
import { useEffect, useState } from 'preact/hooks';
import { FirstLines } from '../checkSweep/FirstLines.js';
import type { Look, ReadBy } from '../checkSweep/protocol.js';
import { ReadOtherwise } from '../checkSweep/ReadOtherwise.js';

/** Who types a number waits no longer for what comes of it, ms. */
const settleAfter = 600;

/** The first lines of a running recording, with choosers of how they are read. */
export function ReadLines(props: {
  readonly look: Look;
  readonly read: ReadBy;
  readonly onRead: (read: ReadBy) => void;
}) {
  const { look, read, onRead } = props;
  const [told, setTold] = useState<ReadBy>();
  useEffect(() => {
    if (!told) return;
    const timer = setTimeout(() => onRead(told), settleAfter);
    return () => clearTimeout(timer);
  }, [told]);
  return (
    <section class="looked" aria-label={watchWords.readOtherwise}>
      {'refusal' in look.read && (
        <>
          <h2>{watchWords.asks}</h2>
          <p class="refusal">{look.read.refusal}</p>
        </>
      )}
      <FirstLines look={look} />
      <ReadOtherwise look={look} read={read} onRead={setTold} />
    </section>
  );
}
