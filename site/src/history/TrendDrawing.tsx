import { formatQuantity } from '@truesweep/core';
import {
  dateText,
  farLimitLabel,
  historyPageWords,
  historyWords,
  trendDrawingSentence,
} from '@truesweep/wording';
import { type Place, trendLayout } from './trendLayout.js';
import type { TrendPlot } from './trendPlot.js';

/**
 * A quantity over time: what was recorded with bars of twice its standard uncertainty, the fitted line and the forecast with their bands, and the limits. All
 * points are one path, so that many of them are no more work than few.
 */
export function TrendDrawing(props: {
  readonly id: string;
  readonly title: string;
  readonly plot: TrendPlot;
}) {
  const { id, title, plot } = props;
  const { width, height, frame, x, y, dates, values, limits } = trendLayout(plot);
  const on = ({ at, value }: { readonly at: number; readonly value: number }) => ({
    x: x(at),
    y: y(value),
  });
  const band = (places: TrendPlot['line']) =>
    `${path([
      ...places.map(({ at, low }) => on({ at, value: low })),
      ...places.toReversed().map(({ at, high }) => on({ at, value: high })),
    ])}z`;
  return (
    <svg
      class="drawing trend-drawing"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-labelledby={`${id}-title`}
      aria-describedby={`${id}-description`}
      width="100%"
      fill="none"
      stroke="currentColor"
      font-size="13"
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-description`}>{described(plot)}</desc>
      <g class="axes">
        {values.map(({ at, text }) => (
          <g key={text}>
            <path d={`M${frame.left},${at}H${frame.right}`} class="grid" />
            <Word x={frame.left - 6} y={at + 4} anchor="end" text={text} />
          </g>
        ))}
        {dates.map(({ at, text, anchor }) => (
          <g key={text}>
            <path d={`M${at},${frame.bottom}v5`} />
            <Word x={at} y={frame.bottom + 19} anchor={anchor} text={text} />
          </g>
        ))}
        <path d={`M${frame.left},${frame.top}V${frame.bottom}H${frame.right}`} />
        <Word x={2} y={13} anchor="start" text={historyPageWords.ofTheSpan} isBold />
        <Word x={frame.right} y={height - 4} anchor="end" text={historyWords.date} isBold />
      </g>
      {plot.line.length > 0 && <path class="band" d={band(plot.line)} />}
      {plot.ahead.length > 0 && <path class="band ahead" d={band(plot.ahead)} />}
      {limits.map(({ side, at, value }) =>
        at === undefined ? (
          <Word
            key={side}
            x={side === 'high' ? frame.right : 2}
            y={side === 'high' ? 13 : height - 4}
            anchor={side === 'high' ? 'end' : 'start'}
            text={farLimitLabel(side, signedPercent(value))}
          />
        ) : (
          <g key={side} class="limit">
            <path d={`M${frame.left},${at}H${frame.right}`} />
            <Word x={frame.right} y={at - 4} anchor="end" text={historyPageWords.limit} />
          </g>
        ),
      )}
      <path class="fitted" d={path(plot.line.map(on))} />
      {plot.ahead.length > 0 && <path class="fitted ahead" d={path(plot.ahead.map(on))} />}
      <path
        class="bars"
        d={plot.points
          .filter(({ uncertainty = 0 }) => uncertainty > 0)
          .map(({ at, value, uncertainty = 0 }) => {
            const [top, bottom] = [y(value + 2 * uncertainty), y(value - 2 * uncertainty)];
            return `M${x(at) - 3},${top}h6m-3,0V${bottom}m-3,0h6`;
          })
          .join('')}
      />
      <path
        class="dots"
        d={plot.points.map((point) => `M${on(point).x},${on(point).y}h0`).join('')}
      />
    </svg>
  );
}

function Word(props: {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly text: string;
  readonly isBold?: boolean;
}) {
  const { x, y, anchor, text, isBold = false } = props;
  return (
    <text
      x={x}
      y={y}
      text-anchor={anchor}
      fill="currentColor"
      stroke="none"
      {...(isBold && { 'font-weight': 'bold' })}
    >
      {text}
    </text>
  );
}

function path(places: readonly Place[]): string {
  return places.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x},${y}`).join('');
}

function described({ points, from, to, values, line, ahead, limits }: TrendPlot): string {
  const sorted = points.map(({ value }) => value).sort((one, other) => one - other);
  const [first, last, end] = [line[0], line.at(-1), ahead.at(-1)];
  return trendDrawingSentence({
    values,
    from: dateText(from),
    to: dateText(to),
    low: signedPercent(sorted[0] ?? 0),
    high: signedPercent(sorted.at(-1) ?? 0),
    ...(first &&
      last && { line: { first: signedPercent(first.value), last: signedPercent(last.value) } }),
    ...(end && {
      ahead: {
        at: dateText(end.at),
        value: signedPercent(end.value),
        low: signedPercent(end.low),
        high: signedPercent(end.high),
      },
    }),
    ...(limits && {
      limits: { low: signedPercent(limits.low), high: signedPercent(limits.high) },
    }),
  });
}

function signedPercent(part: number): string {
  const text = formatQuantity(part, '%', { digits: 3, trim: true });
  return part > 0 ? `+${text}` : text;
}
