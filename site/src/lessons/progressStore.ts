/** How an exercise was done: by oneself, or with the worked answer. */
export type Done = 'right' | 'shown';

/** How far someone is in a set of exercises. */
export interface Progress {
  /** How often it was begun again; each round has other numbers. */
  readonly round: number;
  /** How each exercise so far was done, in their order. */
  readonly done: readonly Done[];
}

/** Nothing is done yet. */
export const noProgress: Progress = { round: 0, done: [] };

const keyOf = (set: string): string => `truesweep-exercises-${set}`;
/** Rounds beyond this begin from the first. */
const mostRounds = 1e6;

/** What was kept of a set of exercises; nothing where the browser keeps nothing or something else stands there. */
export function readProgress(set: string, count: number): Progress {
  try {
    return progressIn(JSON.parse(localStorage.getItem(keyOf(set)) ?? 'null'), count);
  } catch {
    return noProgress;
  }
}

function progressIn(kept: unknown, count: number): Progress {
  const { round, done } = (kept ?? {}) as Partial<Progress>;
  const isRound =
    Number.isInteger(round) && round !== undefined && round >= 0 && round < mostRounds;
  if (!isRound || !Array.isArray(done)) return noProgress;
  const known = done.filter((one): one is Done => one === 'right' || one === 'shown');
  return { round, done: known.slice(0, count) };
}

/** Keeps it; false where the browser keeps nothing or has no room. */
export function keepProgress(set: string, progress: Progress): boolean {
  try {
    localStorage.setItem(keyOf(set), JSON.stringify(progress));
    return true;
  } catch {
    return false;
  }
}
