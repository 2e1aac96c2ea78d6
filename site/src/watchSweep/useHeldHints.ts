import type { Hint } from '@truesweep/core';
import { useEffect, useState } from 'preact/hooks';

/** What was told once can be read for so long, ms. */
const readable = 4000;

/** Hints with those that were told a moment ago: each can be read, however short it held. */
export function useHeldHints(hints: readonly Hint[]): readonly Hint[] {
  const [held, setHeld] = useState<readonly { readonly hint: Hint; readonly until: number }[]>([]);
  useEffect(() => {
    const now = performance.now();
    setHeld((before) => [
      ...before.filter(
        ({ hint, until }) => until > now && !hints.some((one) => one.hint === hint.hint),
      ),
      ...hints.map((hint) => ({ hint, until: now + readable })),
    ]);
  }, [hints]);
  return held.map(({ hint }) => hint);
}
