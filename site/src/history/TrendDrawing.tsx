import { forecast, type Trend } from '@truesweep/core';
import type { QuantityHistory } from '@truesweep/history';
import { dateText, historyScaleText } from '@truesweep/wording';

const size = { width: 340, height: 180, left: 66, right: 330, top: 12, bottom: 146 } as const;

/** A quantity over time: its values with twice their stated uncertainty, the line through them, and what a told change makes expect, dashed in its band. */
export function TrendDrawing({
  told,
  label,
}: {
  readonly told: QuantityHistory;
  readonly label: string;
}) {
  const { quantity, points, trend, ahead, limit } = told;
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return null;
  const [from, to] = [first.at, ahead?.at ?? last.at];
  const bars = points.map(({ at, value, uncertainty = 0, record }) => ({
    at,
    value,
    record,
    low: value - 2 * uncertainty,
    high: value + 2 * uncertainty,
  }));
  const shown = [
    ...bars.flatMap((bar) => [bar.low, bar.high]),
    ...(trend ? [lineAt(trend, from), lineAt(trend, to)] : []),
    ...(ahead ? [ahead.low, ahead.high] : []),
    ...(limit?.soonest === undefined ? [] : [limit.at]),
  ];
  const [low, high] = [Math.min(...shown), Math.max(...shown)];
  const room = high > low ? 0.06 * (high - low) : Math.max(0.001, Math.abs(high) * 0.1);
  const x = (at: number) =>
    size.left + 10 + ((size.right - size.left - 20) * (at - from)) / Math.max(1, to - from);
  const y = (value: number) =>
    size.bottom - ((size.bottom - size.top) * (value - low + room)) / (high - low + 2 * room);
  const ends = [low, high] as const;
  return (
    <figure class="seasons">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={label}
        width="100%"
        fill="none"
        stroke="currentColor"
        font-size="13"
      >
        <path d={`M${size.left},${size.top}V${size.bottom}H${size.right}`} />
        {(low === high ? [low] : ends).map((value) => (
          <text
            key={value}
            x={size.left - 5}
            y={y(value) + 4}
            text-anchor="end"
            fill="currentColor"
            stroke="none"
          >
            {percent(value, high - low)}
          </text>
        ))}
        {[from, to].map((at, i) => (
          <text
            key={at}
            x={i === 0 ? size.left : size.right}
            y={size.bottom + 18}
            text-anchor={i === 0 ? 'start' : 'end'}
            fill="currentColor"
            stroke="none"
          >
            {i === 0 || to > from ? dateText(at) : ''}
          </text>
        ))}
        {limit?.soonest !== undefined && (
          <path
            d={`M${size.left},${y(limit.at)}H${size.right}`}
            stroke-width="1"
            stroke-dasharray="8 3 2 3"
          />
        )}
        {trend && ahead && <path class="band" d={bandPath(trend, x, y)} stroke="none" />}
        {trend && (
          <path
            d={`M${x(trend.from)},${y(lineAt(trend, trend.from))}L${x(trend.to)},${y(lineAt(trend, trend.to))}`}
          />
        )}
        {trend && ahead && (
          <path
            stroke-dasharray="5 4"
            d={`M${x(trend.to)},${y(lineAt(trend, trend.to))}L${x(ahead.at)},${y(ahead.value)}`}
          />
        )}
        {bars.map(({ at, value, record, ...bar }) => (
          <g key={record}>
            <path d={`M${x(at)},${y(bar.low)}V${y(bar.high)}`} stroke-width="1" />
            <circle cx={x(at)} cy={y(value)} r="3.5" fill="currentColor" stroke="none" />
          </g>
        ))}
      </svg>
      <figcaption>{historyScaleText(quantity)}</figcaption>
    </figure>
  );
}

function lineAt({ mean, meanAt, slope }: Trend, at: number): number {
  return mean + slope * (at - meanAt);
}

/** The band from the last value on, which widens. */
function bandPath(trend: Trend, x: (at: number) => number, y: (value: number) => number): string {
  const steps = 12;
  const times = Array.from(
    { length: steps + 1 },
    (_, i) => trend.to + ((trend.to - trend.from) * i) / steps,
  );
  const bands = times.flatMap((at) => {
    const band = forecast(trend, at);
    return band ? [{ at, ...band }] : [];
  });
  const above = bands.map(({ at, high }) => `${x(at)},${y(high)}`);
  const below = bands.toReversed().map(({ at, low }) => `${x(at)},${y(low)}`);
  return `M${[...above, ...below].join('L')}Z`;
}

/** A part of the span as percent, with as many decimals as the scale has use for. */
function percent(value: number, across: number): string {
  const decimals = Math.min(
    3,
    Math.max(0, 1 - Math.floor(Math.log10(Math.max(1e-6, 100 * across)))),
  );
  return `${(100 * value).toFixed(decimals).replace('-', '\u2212')} %`;
}
