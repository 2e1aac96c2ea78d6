import type { Seconds } from '../units.js';
import type { Levels } from './levels.js';
import { lineThrough } from './lineThrough.js';
import { unseenHand } from './mechanics.js';

/** A stretch without sudden edges, with its level and speed at either end. */
export interface Piece {
  /** First and last bin. */
  readonly from: number;
  readonly to: number;
  readonly start: LineEnd;
  readonly end: LineEnd;
  /** Mean level of the whole. */
  readonly level: number;
}

/** Level and speed at an end; the speed is missing where the piece is too short to have one. */
export interface LineEnd {
  readonly level: number;
  readonly speed: number | undefined;
  /** Standard uncertainty of both, from the noise of the bins. */
  readonly levelScatter: number;
  readonly speedScatter: number;
}

/**
 * The level at an end is the end of a straight line through this much of the piece, four bins at the least. The
 * outermost bin, in which the edge itself may fall, is left out where there are enough.
 */
const lineOver: Seconds = 5e-3;
const fewestBins = 4;
/**
 * Noise leaves less in a longer line: through this part of the time in which a hand can't leave it, in which its acceleration
 * moves the end by a sixteenth of the visible departure (a·t²/12).
 */
const ofUnseen = 0.6;

/** The pieces between cuts. */
export function piecesBetween(levels: Levels, cuts: Uint8Array): readonly Piece[] {
  const pieces: Piece[] = [];
  let from = 0;
  for (let i = 1; i <= levels.mean.length; i++) {
    if (i < levels.mean.length && !cuts[i]) continue;
    pieces.push(piece(levels, from, i - 1));
    from = i;
  }
  return pieces;
}

function piece(levels: Levels, from: number, to: number): Piece {
  const inset = to - from >= fewestBins + 1 ? 1 : 0;
  const start = (bins: number): LineEnd =>
    lineEnd(levels, from + inset, Math.min(to - inset, from + inset + bins - 1), from);
  const end = (bins: number): LineEnd =>
    lineEnd(levels, Math.max(from + inset, to - inset - bins + 1), to - inset, to);
  let sum = 0;
  for (let i = from; i <= to; i++) sum += levels.mean[i]!;
  return {
    from,
    to,
    start: longest(levels, start),
    end: longest(levels, end),
    level: sum / (to - from + 1),
  };
}

/** The end of the longer line, unless it lies so far from the shorter one's that a spring or a stop bent it. */
function longest({ interval, visible }: Levels, lineOf: (bins: number) => LineEnd): LineEnd {
  const short = lineOf(Math.max(fewestBins, Math.round(lineOver / interval)));
  const bins = Math.round((ofUnseen * unseenHand(visible)) / interval);
  if (bins * interval <= lineOver) return short;
  const long = lineOf(bins);
  return Math.abs(long.level - short.level) <= visible ? long : short;
}

/** The least-squares line through some bins, read at one of them; the mean where two are all there is. */
function lineEnd(levels: Levels, from: number, to: number, at: number): LineEnd {
  const line = lineThrough(levels, from, to);
  const scatter = levels.noise / Math.sqrt(line.bins);
  if (line.bins < 3) {
    return { level: line.level, speed: undefined, levelScatter: scatter, speedScatter: 0 };
  }
  return {
    level: line.level + line.speed * (levels.time[at]! - line.time),
    speed: line.speed,
    levelScatter: 2 * scatter,
    speedScatter: line.leverage > 0 ? levels.noise / line.leverage : 0,
  };
}
