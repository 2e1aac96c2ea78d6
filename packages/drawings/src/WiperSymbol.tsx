import { drawingWords } from '@truesweep/wording';
import type { CircuitLayout } from './circuitLayout.js';
import { quantityText } from './quantityText.js';
import { Words } from './Words.js';

/** The wiper's arrow at half travel, and how far along the track it stands at each stop. */
export function WiperSymbol({ wiper, stops }: Pick<CircuitLayout, 'wiper' | 'stops'>) {
  const { x, y } = wiper;
  return (
    <g class="part wiper">
      <path d={`M${x},${y}l10,-5v10z`} fill="currentColor" />
      {stops.map(({ stop, position, y: at, labelY }) => (
        <g key={stop} class={`stop ${stop}`}>
          <path d={`M${x},${at}h5L${x + 10},${labelY}h4`} stroke-dasharray="3 2" />
          <Words x={x + 17} y={labelY + 4}>
            {`${drawingWords[stop]} ${quantityText(position, '%')}`}
          </Words>
        </g>
      ))}
    </g>
  );
}
