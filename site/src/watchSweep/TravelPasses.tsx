import { looksSentence, watchWords } from '@truesweep/wording';
import type { JudgedSoFar } from './watchProtocol.js';

const size = { width: 340, bar: 30, step: 33, left: 6, foot: 78, high: 66 } as const;

/** How often each tenth of the travel was seen clearly: a bar that fills up to what is asked for, and the number. */
export function TravelPasses({ judged }: { readonly judged: JudgedSoFar | undefined }) {
  const { coverage, looksAskedFor: asked = 6 } = judged ?? {};
  const looks = Array.from(
    { length: 10 },
    (_, tenth) => (coverage?.opening[tenth] ?? 0) + (coverage?.closing[tenth] ?? 0),
  );
  return (
    <svg
      class="travel-passes"
      viewBox={`0 0 ${size.width} 118`}
      role="img"
      aria-label={looksSentence(looks, asked)}
      font-size="14"
      fill="currentColor"
      stroke="currentColor"
    >
      {looks.map((count, tenth) => {
        const x = size.left + tenth * size.step;
        const height = (size.high * Math.min(count, asked)) / asked;
        return (
          <g key={tenth}>
            <rect
              x={x}
              y={size.foot - height}
              width={size.bar}
              height={height}
              fill-opacity="0.55"
              stroke="none"
            />
            <rect x={x} y={size.foot - size.high} width={size.bar} height={size.high} fill="none" />
            <text x={x + size.bar / 2} y={size.foot + 17} text-anchor="middle" stroke="none">
              {count}
            </text>
          </g>
        );
      })}
      <g stroke="none">
        <text x={size.left} y="114">
          {watchWords.closed}
        </text>
        <text x={size.width - 4} y="114" text-anchor="end">
          {watchWords.open}
        </text>
      </g>
    </svg>
  );
}
