import { formatQuantity } from '@truesweep/core';
import type { JudgedRecording } from '@truesweep/jobs/node';
import { traceSentence } from '@truesweep/wording';

const [width, height, edge] = [180, 48, 3];

/** A recording in small: its trace, the windows of both stops as bands, and a mark where it is worst. */
export function smallTraceSvg({ trace, checks, worst, findings }: JudgedRecording): string {
  const { start, end, columns, column } = trace;
  const [least, most] = [Math.min(...trace.low), Math.max(...trace.high)];
  const bands = checks.flatMap(({ check, lowLimit, highLimit }) =>
    (check === 'closed-end' || check === 'open-end') &&
    lowLimit !== undefined &&
    highLimit !== undefined
      ? [{ low: lowLimit, high: highLimit }]
      : [],
  );
  const low = Math.min(least, ...bands.map((band) => band.low));
  const high = Math.max(most, ...bands.map((band) => band.high));
  const x = (part: number) => hundredths(part * width);
  const y = (volts: number) =>
    hundredths(height - edge - ((volts - low) / (high - low || 1)) * (height - 2 * edge));
  const points = column.flatMap((place, i) => {
    const at = x((place + 0.5) / columns);
    return [`${at},${y(trace.high[i]!)}`, `${at},${y(trace.low[i]!)}`];
  });
  const drawnBands = bands.map(
    (band) =>
      `<rect class="window" x="0" y="${y(band.high)}" width="${width}" height="${hundredths(y(band.low) - y(band.high))}"/>`,
  );
  const mark = worst
    ? `<path class="worst" d="M${x((worst.start - start) / (end - start))},0v${height}"/>`
    : '';
  const said = traceSentence({
    seconds: formatQuantity(end - start, 's'),
    low: formatQuantity(least, 'V'),
    high: formatQuantity(most, 'V'),
    findings,
  });
  return `<svg class="trace" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${said}">${drawnBands.join('')}${mark}<polyline points="${points.join(' ')}"/></svg>`;
}

function hundredths(value: number): number {
  return Math.round(value * 100) / 100;
}
