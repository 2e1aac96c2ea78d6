import type { CheckOutcome } from '@truesweep/core';
import { bandWords, outcomeLabels } from '@truesweep/wording';

/** A sign of the legend with its words, and where it stands. */
export interface LegendEntry {
  readonly sign: CheckOutcome | 'limits' | 'nominal';
  readonly words: string;
  readonly x: number;
  readonly y: number;
}

/** Lines of the legend are so far apart; its first stands below the name of the level axis. */
const lineHeight = 18;
const firstLine = 36;
/** More than any letter of size 13 is wide on average, and the sign with its room. */
const letterWidth = 7;
const signWidth = 34;

/** What the signs of a drawing mean, as far as they stand in it, in as many lines as its width takes; and where the plot may begin. */
export function legendEntries(
  outcomes: readonly CheckOutcome[],
  others: readonly ('limits' | 'nominal')[],
  width: number,
): { readonly entries: readonly LegendEntry[]; readonly top: number } {
  const judged = (Object.keys(outcomeLabels) as CheckOutcome[]).filter((one) =>
    outcomes.includes(one),
  );
  let [x, y] = [2, firstLine];
  const entries = [...others, ...judged].map((sign): LegendEntry => {
    const words = sign === 'limits' || sign === 'nominal' ? bandWords[sign] : outcomeLabels[sign];
    const wide = signWidth + words.length * letterWidth;
    if (x > 2 && x + wide > width) [x, y] = [2, y + lineHeight];
    const entry = { sign, words, x, y };
    x += wide;
    return entry;
  });
  return { entries, top: y + 16 };
}
