import { checkScore } from '../score/checkScore.js';
import type { DeliberateTest, Score } from '../score/score.js';

/** What a recording still lacks. */
export type Missing =
  | {
      /** Slow sweeps from stop to stop and back, or closings by the spring. */
      readonly missing: 'sweeps' | 'snaps';
      /** How many: a count, 1 or more. */
      readonly count: number;
    }
  | {
      /** A deliberate test: what it does to the signal tells a connection from the track. */
      readonly missing: 'test';
      /** Which one. */
      readonly test: DeliberateTest;
    };

/**
 * What a recording still lacks of what is asked of one: clean looks at every place, closings by the spring, and deliberate tests: flexing the harness of every
 * recording, tapping the housing where something was found.
 *
 * @param score Of what is recorded so far.
 * @returns In the order in which it is done best; empty where the recording is enough.
 * @throws InputError for what is no score.
 *
 * @example
 * const restsOn = { looks: 4, looksAskedFor: 6, snaps: 3, snapsAskedFor: 3, missedChance: 0.06 };
 * missingIn({ restsOn, testsNotDone: ['warmed'], findings: [] }) // => [{ missing: 'sweeps', count: 1 }]
 */
export function missingIn(
  score: Pick<Score, 'restsOn' | 'testsNotDone' | 'findings'>,
): readonly Missing[] {
  checkScore(score, 'score', ['restsOn', 'testsNotDone', 'findings']);
  const { restsOn, testsNotDone, findings } = score;
  const { looks, looksAskedFor, snaps, snapsAskedFor } = restsOn;
  // A sweep looks twice: opening and closing.
  const sweeps = Math.ceil((looksAskedFor - looks) / 2);
  const asked: readonly DeliberateTest[] =
    findings.length > 0 ? ['harness-flexed', 'housing-tapped'] : ['harness-flexed'];
  return [
    ...(sweeps > 0 ? [{ missing: 'sweeps', count: sweeps } as const] : []),
    ...(snaps < snapsAskedFor ? [{ missing: 'snaps', count: snapsAskedFor - snaps } as const] : []),
    ...asked
      .filter((test) => testsNotDone.includes(test))
      .map((test) => ({ missing: 'test', test }) as const),
  ];
}
