import type { Finding, Score } from '@truesweep/core';
import { ticks } from 'd3-array';
import type { Point } from './circuitLayout.js';
import { linearScale } from './linearScale.js';
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

/** How many clean looks a tenth of the travel had in one direction. */
interface LookCell {
  readonly tenth: number;
  readonly looks: number;
  readonly x: number;
  readonly width: number;
}

/** The looks of one direction over the travel. */
interface LookStrip {
  readonly direction: 'opening' | 'closing';
  readonly y: number;
  readonly height: number;
  readonly cells: readonly LookCell[];
}

/** Where everything of a travel map lies. */
export interface TravelMapLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Plot;
  readonly ticks: readonly Tick[];
  readonly rows: readonly MapRow[];
  readonly marks: readonly MapMark[];
  /** Below the rows, where the marks end. */
  readonly rowsEnd: number;
  readonly strips: readonly LookStrip[];
  /** Places that several passes showed. */
  readonly spots: readonly { readonly x: number; readonly travel: number }[];
  /** The signs of the kinds that occur, where each stands. */
  readonly legend: readonly (Point & { readonly kind: Finding['kind'] })[];
}

const usualWidth = 760;
const left = 110;
const besideRight = 20;
const legendHeight = 18;
/** Room for one entry of the legend. */
const legendStep = 96;
const rowHeight = 20;
const stripHeight = 16;
/** A stroke may end this long before what belongs to it, s. */
const slack = 0.05;

/**
 * Places the findings over the travel, a row for each pass in the order of time and one for the rests: what stands in one column on
 * every pass belongs to the track, what is scattered does not. Below them a strip for each direction tells how often each tenth was seen.
 *
 * @param score Strokes, findings, spots and coverage of one recording, and the drawing's `width`.
 */
export function travelMapLayout(
  {
    strokes,
    findings,
    spots,
    coverage,
  }: Pick<Score, 'strokes' | 'findings' | 'spots' | 'coverage'>,
  width = usualWidth,
): TravelMapLayout {
  const right = width - besideRight;
  const kinds = [...new Set(findings.map(({ kind }) => kind))];
  const inRow = Math.max(1, Math.floor(width / legendStep));
  const top = 12 + Math.max(1, Math.ceil(kinds.length / inRow)) * legendHeight;
  const scale = linearScale([0, 1], [left, right]);
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
  const rowsEnd = top + (strokes.length + 1) * rowHeight;
  const strips = (['opening', 'closing'] as const).map((direction, i): LookStrip => {
    const looks = coverage[direction];
    const cells = looks.map((count, tenth): LookCell => {
      const [from, to] = [x(tenth / looks.length), x((tenth + 1) / looks.length)];
      return { tenth, looks: count, x: from, width: toHundredths(to - from) };
    });
    return { direction, y: rowsEnd + i * (stripHeight + 2), height: stripHeight, cells };
  });
  const bottom = rowsEnd + strips.length * (stripHeight + 2) + 4;
  return {
    width,
    height: bottom + 44,
    plot: { left, right, top, bottom },
    ticks: ticks(0, 1, width < usualWidth ? 5 : 10).map((at) => ({
      at: x(at),
      text: String(Math.round(at * 100)),
    })),
    rows: [...passes, atRest],
    marks: findings.flatMap((finding, i) =>
      finding.unplaced
        ? []
        : [{ number: i + 1, kind: finding.kind, x: x(finding.travel), y: rowOf(finding).y }],
    ),
    rowsEnd,
    strips,
    legend: kinds.map((kind, i) => ({
      kind,
      x: 6 + (i % inRow) * legendStep,
      y: 10 + Math.floor(i / inRow) * legendHeight,
    })),
    spots: spots.filter(({ seen }) => seen > 1).map(({ travel }) => ({ x: x(travel), travel })),
  };
}
