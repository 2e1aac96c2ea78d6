import type { Finding, Score } from '@truesweep/core';
import { scaleLinear } from 'd3-scale';
import type { Point } from './circuitLayout.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';

/** One pass over the travel, or what happened at rest: a row of the map. */
interface MapRow {
  readonly direction: 'opening' | 'closing' | 'rest';
  /** Counted from 1 for each direction; 0 for rest. */
  readonly number: number;
  readonly y: number;
  /** The travel that the pass went over. */
  readonly from: number;
  readonly to: number;
}

/** A finding in the map. */
interface MapMark extends Point {
  readonly number: number;
  readonly kind: Finding['kind'];
}

/** Where everything of a travel map lies. */
export interface TravelMapLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Plot;
  readonly ticks: readonly Tick[];
  readonly rows: readonly MapRow[];
  readonly marks: readonly MapMark[];
  /** Places that several passes showed. */
  readonly spots: readonly { readonly x: number; readonly travel: number }[];
}

const width = 760;
const left = 110;
const right = 740;
const top = 30;
const rowHeight = 20;
/** A stroke may end this long before what belongs to it, s. */
const slack = 0.05;

/**
 * Places the findings over the travel, a row for each pass in the order of time and one for the rests: what stands in one column on
 * every pass belongs to the track, what is scattered does not.
 *
 * @param score Strokes, findings and spots of one recording.
 */
export function travelMapLayout({
  strokes,
  findings,
  spots,
}: Pick<Score, 'strokes' | 'findings' | 'spots'>): TravelMapLayout {
  const scale = scaleLinear([0, 1], [left, right]);
  const x = (travel: number) => toHundredths(scale(Math.min(1.02, Math.max(-0.02, travel))));
  const counts = { opening: 0, closing: 0 };
  const passes = strokes.map(({ direction, from, to }, i): MapRow => {
    counts[direction] += 1;
    const y = top + (i + 0.5) * rowHeight;
    return { direction, number: counts[direction], y, from: x(from), to: x(to) };
  });
  const restY = top + (strokes.length + 0.5) * rowHeight;
  const atRest: MapRow = { direction: 'rest', number: 0, y: restY, from: left, to: right };
  const rowOf = ({ during, start }: Finding): MapRow => {
    const index = strokes.findIndex(
      (stroke) =>
        stroke.direction === during && start >= stroke.start - slack && start <= stroke.end + slack,
    );
    return passes[index] ?? atRest;
  };
  const bottom = top + (strokes.length + 1) * rowHeight;
  return {
    width,
    height: bottom + 44,
    plot: { left, right, top, bottom },
    ticks: scale.ticks(10).map((at) => ({ at: x(at), text: String(Math.round(at * 100)) })),
    rows: [...passes, atRest],
    marks: findings.map((finding, i) => ({
      number: i + 1,
      kind: finding.kind,
      x: x(finding.travel),
      y: rowOf(finding).y,
    })),
    spots: spots.filter(({ seen }) => seen > 1).map(({ travel }) => ({ x: x(travel), travel })),
  };
}
