import { formatQuantity } from '@truesweep/core';
import { shelfWords } from '@truesweep/wording';
import { endsOf } from './endsOf.js';
import type { ShelfResult } from './shelf.js';

const size = { width: 340, height: 170, left: 52, right: 330, top: 16, bottom: 138 } as const;

/** The readings at the stops over the results, in their order of time: a dot each, joined. */
export function SeasonsDrawing({ results }: { readonly results: readonly ShelfResult[] }) {
  const ends = results.map(endsOf);
  const readings = ends.flatMap(({ closed, open }) =>
    [closed, open].filter((one) => one !== undefined),
  );
  if (readings.length === 0) return null;
  const [low, high] = [Math.min(0, ...readings), Math.max(...readings) * 1.05 || 1];
  const x = (i: number) =>
    size.left + 12 + ((size.right - size.left - 24) * i) / Math.max(1, results.length - 1);
  const y = (volts: number) =>
    size.bottom - ((size.bottom - size.top) * (volts - low)) / (high - low);
  const lines = (['closed', 'open'] as const).map((stop) => ({
    stop,
    points: ends.flatMap((end, i) => {
      const volts = end[stop];
      return volts === undefined ? [] : [{ x: x(i), y: y(volts), i }];
    }),
  }));
  const first = results[0]?.at.slice(0, 7) ?? '';
  const last = results.at(-1)?.at.slice(0, 7) ?? '';
  return (
    <figure class="seasons">
      <svg
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`${shelfWords.seasons}: ${first} – ${last}`}
        width="100%"
        fill="none"
        stroke="currentColor"
        font-size="13"
      >
        <path d={`M${size.left},${size.top}V${size.bottom}H${size.right}`} />
        {[low, high / 1.05].map((volts) => (
          <text
            key={volts}
            x={size.left - 5}
            y={y(volts) + 4}
            text-anchor="end"
            fill="currentColor"
            stroke="none"
          >
            {formatQuantity(volts, 'V', { digits: 3, trim: true })}
          </text>
        ))}
        <text x={size.left} y={size.bottom + 20} fill="currentColor" stroke="none">
          {first}
        </text>
        <text
          x={size.right}
          y={size.bottom + 20}
          text-anchor="end"
          fill="currentColor"
          stroke="none"
        >
          {last}
        </text>
        {lines.map(({ stop, points }) => (
          <g key={stop}>
            <path d={points.map((at, i) => `${i === 0 ? 'M' : 'L'}${at.x},${at.y}`).join('')} />
            {points.map((at) => (
              <circle key={at.i} cx={at.x} cy={at.y} r="3.5" fill="currentColor" />
            ))}
          </g>
        ))}
      </svg>
      <figcaption>{shelfWords.seasons}</figcaption>
    </figure>
  );
}
