import { dateText } from '@truesweep/wording';
import { dateTicks } from './dateTicks.js';
import type { TrendPlot } from './trendPlot.js';
import { valueTicks } from './valueTicks.js';

/** A place in a drawing. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** A tick with its text. */
interface Tick {
  readonly at: number;
  readonly text: string;
}

const width = 340;
const height = 206;
const frame = { left: 50, right: 330, top: 24, bottom: 164 } as const;

/** A limit that lies so many times as far away as all else takes room would press that flat: it is told, not drawn. */
const farthest = 4;

/** What lies nearer together than this, as a part of the span, is drawn as if it lay so far apart: a tenth of a percent of the span is no change that is looked for. */
const least = 1e-3;

/** Half of what a single moment is widened by, s: two weeks. */
const around = 14 * 86_400;

/** Where everything of a drawing lies; a limit without a place is too far away to be drawn. */
export function trendLayout({ points, from: first, to: last, line, ahead, limits }: TrendPlot): {
  readonly width: number;
  readonly height: number;
  readonly frame: typeof frame;
  readonly x: (at: number) => number;
  readonly y: (value: number) => number;
  readonly values: readonly Tick[];
  readonly dates: readonly (Tick & { readonly anchor: 'start' | 'middle' | 'end' })[];
  readonly limits: readonly {
    readonly side: 'low' | 'high';
    readonly value: number;
    readonly at?: number;
  }[];
} {
  const [from, to] = widened(first, ahead.at(-1)?.at ?? last, 2 * around);
  const x = scale(from, to, frame.left + 8, frame.right - 8);
  const shown = extent([
    ...points.flatMap(({ value, uncertainty = 0 }) => [
      value - 2 * uncertainty,
      value + 2 * uncertainty,
    ]),
    ...[...line, ...ahead].flatMap(({ low, high }) => [low, high]),
  ]);
  const [low, high] = widened(...shown, least);
  const near = (['low', 'high'] as const).flatMap((side) => {
    const value = limits?.[side];
    const away = value === undefined ? Infinity : Math.max(low - value, value - high);
    return value !== undefined && away <= farthest * (high - low) ? [value] : [];
  });
  const [bottom, top] = extent([low, high, ...near]);
  const room = (top - bottom) * 0.06;
  const y = scale(bottom - room, top + room, frame.bottom, frame.top);
  const { ticks, decimals } = valueTicks(100 * (bottom - room), 100 * (top + room));
  return {
    width,
    height,
    frame,
    x,
    y,
    values: ticks.map((percent) => ({ at: y(percent / 100), text: signed(percent, decimals) })),
    dates: datesBetween(from, to, x),
    limits: (['low', 'high'] as const).flatMap((side) => {
      const value = limits?.[side];
      if (value === undefined) return [];
      return [{ side, value, ...(near.includes(value) && { at: y(value) }) }];
    }),
  };
}

function datesBetween(from: number, to: number, x: (at: number) => number) {
  const round = dateTicks(from, to, 5);
  if (round.length > 0)
    return round.map(({ at, text }) => ({ at: x(at), text, anchor: 'middle' as const }));
  return [
    { at: x(from), text: dateText(from), anchor: 'start' as const },
    { at: x(to), text: dateText(to), anchor: 'end' as const },
  ];
}

function extent(values: readonly number[]): [number, number] {
  let [low, high] = [Infinity, -Infinity];
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return [low, high];
}

function widened(low: number, high: number, wanted: number): [number, number] {
  const more = Math.max(0, wanted - (high - low)) / 2;
  return [low - more, high + more];
}

/** To a tenth: finer than a screen's pixel. */
function scale(low: number, high: number, first: number, last: number) {
  return (value: number) =>
    Math.round(10 * (first + ((last - first) * (value - low)) / (high - low))) / 10;
}

function signed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) > 0 ? `\u2212${text}` : text;
}
