import { samplesOver } from '../capture/sampling.js';
import type { Criteria } from '../criteria.js';
import { shortestTenth, tenths } from '../score/coverage.js';
import { fallOf } from '../score/fallOf.js';
import type { CheckCode, Score, Stroke } from '../score/score.js';
import type { Seconds } from '../units.js';

/** What spoils a recording while it runs, and can be mended at once. */
export type HintCode =
  | 'stroke-too-fast'
  | 'short-of-open'
  | 'clipped'
  | 'recorder-too-slow'
  | 'smoothed'
  | 'noisy'
  | 'hum'
  | 'too-coarse'
  | 'supply-sags';

/** One thing to do better in the running recording. */
export interface Hint {
  /** What is wrong. */
  readonly hint: HintCode;
  /** When it was seen, s, on the recording's clock; any. */
  readonly at: Seconds;
  /** What was measured, in `unit`, any. */
  readonly measured: number;
  /** What it would have to be at most (`most`) or at least (`least`), in `unit`. */
  readonly limit: { readonly most: number } | { readonly least: number };
  /** The unit of both; `1` is a fraction of the span, of the supply for a sagging supply, of the travel for an opening that ended early. */
  readonly unit: 's' | '1' | 'count';
}

/** A stroke that came so near to the open stop has reached it, one that came less far was no attempt: travel. */
const [reached, attempted] = [0.97, 0.75];

/** A hand's fastest tenth takes this part of a mean one: least jerk (T. Flash and N. Hogan, Journal of Neuroscience 5, 1985; from memory). */
const fastestTenth = 8 / 15;

/**
 * The hints that judged stretches give: what spoils the recording now; where nothing does, what was wrong with the latest whole stroke. Where
 * nobody told the recorder's range no short stretch tells it: a rest on a stop looks like its end; see {@link clippedIn}.
 *
 * @param score Of the recent stretch, long enough for strokes.
 * @param now Of its very end, so that what spoils it is told soon after it begins.
 * @param clipped What the whole recording says of its range; undefined where the range was told.
 * @param end Where both end, s.
 */
export function hintsOf(
  score: Score,
  now: Score,
  criteria: Pick<Criteria, 'samplesInDropout'>,
  clipped: readonly Hint[] | undefined,
  end: Seconds,
): readonly Hint[] {
  const seen = captureHints(now, end);
  const spoilt = clipped ? [...seen.filter(({ hint }) => hint !== 'clipped'), ...clipped] : seen;
  return spoilt.length > 0 ? spoilt : strokeHints(score, criteria);
}

/** What a whole recording says of its range, as a hint. */
export function clippedIn(score: Score, end: Seconds): readonly Hint[] {
  return captureHints(score, end).filter(({ hint }) => hint === 'clipped');
}

function captureHints({ checks, quality }: Score, at: Seconds): readonly Hint[] {
  const setBy = quality.visibleSetBy;
  return checks.flatMap(({ check, outcome, measured, highLimit = 0, unit }): Hint[] => {
    const isHum = check === 'visible-departure' && setBy === 'ripple';
    const hint = isHum ? 'hum' : hintOf(check, setBy);
    if (!hint || measured === undefined || unit === 'V') return [];
    // Pick-up hides departures long before it hides too many.
    if (!isHum && (outcome === 'conforms' || outcome === 'not-judged')) return [];
    return [{ hint, at, measured, limit: { most: highLimit }, unit }];
  });
}

function hintOf(check: CheckCode, setBy: Score['quality']['visibleSetBy']): HintCode | undefined {
  switch (check) {
    case 'sample-interval':
      return 'recorder-too-slow';
    case 'smoothing':
      return 'smoothed';
    case 'visible-departure':
      return setBy === 'resolution' ? 'too-coarse' : 'noisy';
    case 'clipping':
      return 'clipped';
    case 'supply':
      return 'supply-sags';
    default:
      return undefined;
  }
}

/** What was wrong with the latest stroke that has ended. */
function strokeHints(
  { strokes, rests, snaps, quality }: Score,
  { samplesInDropout }: Pick<Criteria, 'samplesInDropout'>,
): readonly Hint[] {
  const hints: Hint[] = [];
  const last = strokes.at(-1);
  const restAt = (at: Seconds) => rests.find(({ start, end }) => start <= at && at <= end);
  const ended = last && restAt(last.end) ? last : strokes.at(-2);
  if (!ended) return [];
  // A stroke reaches into the rests before and after it.
  const left = restAt(ended.start)?.end ?? ended.start;
  const arrived = restAt(ended.end)?.start ?? ended.end;
  const perTenth = (fastestTenth * (arrived - left)) / (tenths * Math.abs(ended.to - ended.from));
  const wanted = Math.max(1, samplesOver(samplesInDropout, quality.sampling));
  const least = Math.max(shortestTenth, wanted * quality.sampledEvery);
  const isByHand = !fallOf(ended, snaps);
  if (isByHand && isLong(ended) && perTenth < least) {
    hints.push({
      hint: 'stroke-too-fast',
      at: ended.end,
      measured: perTenth,
      limit: { least },
      unit: 's',
    });
  }
  const { direction, to, end } = ended;
  if (direction === 'opening' && to >= attempted && to < reached) {
    hints.push({
      hint: 'short-of-open',
      at: end,
      measured: to,
      limit: { least: reached },
      unit: '1',
    });
  }
  return hints;
}

/** Shorter movements than this part of the travel are no sweeps. */
const sweep = 0.5;

const isLong = ({ from, to }: Stroke): boolean => Math.abs(to - from) >= sweep;
