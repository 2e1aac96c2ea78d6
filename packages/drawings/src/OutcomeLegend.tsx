import type { LegendEntry } from './legendEntries.js';
import { OutcomeSymbol } from './OutcomeSymbol.js';
import { Words } from './Words.js';

/** What the signs of a drawing mean. */
export function OutcomeLegend({ entries }: { readonly entries: readonly LegendEntry[] }) {
  return (
    <g class="legend">
      {entries.map(({ sign, words, x, y }) => (
        <g key={sign}>
          {sign === 'limits' && (
            <rect
              x={x}
              y={y - 9}
              width="18"
              height="10"
              fill="currentColor"
              fill-opacity="0.18"
              stroke-width="0.6"
            />
          )}
          {sign === 'nominal' && <path d={`M${x},${y - 4}h18`} stroke-width="2" />}
          {sign !== 'limits' && sign !== 'nominal' && (
            <OutcomeSymbol outcome={sign} x={x + 10} y={y - 4} />
          )}
          <Words x={x + 23} y={y}>
            {words}
          </Words>
        </g>
      ))}
    </g>
  );
}
