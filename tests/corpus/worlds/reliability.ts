import { clopperPearson } from '../clopperPearson.js';
import type { Rate } from '../measure.js';
import type { Told } from './toldOdds.js';

/** What was told with odds from `from` up to `to`: how many, and how many of them were so, with 95 % bounds of that share. */
export interface Band {
  readonly from: number;
  readonly to: number;
  /** Mean of the odds told. */
  readonly told: number;
  readonly so: Rate;
  readonly atLeast: number;
  readonly atMost: number;
}

const borders = [0, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 1];

/** Odds told beside what was so, by bands; empty ones are left out. */
export function reliability(all: readonly Told[]): readonly Band[] {
  return borders.slice(1).flatMap((to, i): readonly Band[] => {
    const from = borders[i]!;
    const within = all.filter(({ odds }) => odds >= from && odds < to);
    if (within.length === 0) return [];
    const hits = within.filter(({ isSo }) => isSo).length;
    return [
      {
        from,
        to,
        told: within.reduce((sum, { odds }) => sum + odds, 0) / within.length,
        so: { hits, of: within.length },
        atLeast: clopperPearson('lower', hits, within.length),
        atMost: clopperPearson('upper', hits, within.length),
      },
    ];
  });
}

/** How far the odds told may lie from what the bounds of the share allow: the goal. */
const goal = 0.05;

/** Whether the odds told are those by which it was so, as far as so many cases can show. */
export function isReliable({ told, atLeast, atMost }: Band, tolerated = goal): boolean {
  return told >= atLeast - tolerated && told <= atMost + tolerated;
}

/** The bands as text, `✗` before one that misses the goal. */
export function printReliability(title: string, bands: readonly Band[]): string {
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;
  return [
    title,
    ...bands.map((band) => {
      const { from, to, told, so, atLeast, atMost } = band;
      const { hits, of } = so;
      return `${isReliable(band) ? ' ' : '✗'} told ${percent(from)} to ${percent(to)}: on average ${percent(told)}, so in ${percent(hits / of)} (${hits}/${of}, 95 % ≥ ${percent(atLeast)}, ≤ ${percent(atMost)})`;
    }),
  ].join('\n');
}
