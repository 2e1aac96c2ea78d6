import type { Source } from '@truesweep/core';
import { drawingWords, partLabels } from '@truesweep/wording';
import type { Point } from './circuitLayout.js';
import { quantityText } from './quantityText.js';
import { Words } from './Words.js';

/** The source as a circle with its poles, its voltage beside it, and what it has inside. */
export function SourceSymbol({ x, y, source }: Point & { readonly source: Source }) {
  const { volts, ohms, currentLimit } = source;
  const lines = [
    quantityText(volts, 'V'),
    ...(ohms ? [`${drawingWords.inside} ${quantityText(ohms, 'Ω')}`] : []),
    ...(currentLimit ? [`${drawingWords.limitedTo} ${quantityText(currentLimit, 'A')}`] : []),
  ];
  return (
    <g class="part source">
      <circle cx={x} cy={y} r={18} />
      <path d={`M${x - 4},${y - 8}h8m-4,-4v8M${x - 4},${y + 8}h8`} />
      <Words x={x + 24} y={y - 4} bold>
        {partLabels.source}
      </Words>
      {lines.map((text, i) => (
        <Words key={text} x={i === 0 ? x + 24 : x + 8} y={y + 13 + 16 * i}>
          {text}
        </Words>
      ))}
    </g>
  );
}
