import { drawingWords } from '@truesweep/wording';
import type { CurveLayout } from './curveLayout.js';
import { Words } from './Words.js';

/** Frame, ticks and grid of a curve; the units stand with the names of the axes. */
export function CurveAxes({ plot, travelTicks, voltTicks, voltUnit, height }: CurveLayout) {
  return (
    <g class="axes">
      {voltTicks.map(({ at, text }) => (
        <g key={text} class="volt-tick">
          <path d={`M${plot.left},${at}H${plot.right}`} stroke-width="0.5" stroke-dasharray="1 3" />
          <path d={`M${plot.left},${at}h-4`} stroke-width="1" />
          <Words x={plot.left - 7} y={at + 4} anchor="end">
            {text}
          </Words>
        </g>
      ))}
      {travelTicks.map(({ at, text }) => (
        <g key={text} class="travel-tick">
          <path d={`M${at},${plot.bottom}v4`} stroke-width="1" />
          <Words x={at} y={plot.bottom + 18} anchor="middle">
            {text}
          </Words>
        </g>
      ))}
      <path d={`M${plot.left},${plot.top}V${plot.bottom}H${plot.right}`} />
      <Words x={2} y={14} bold>
        {`${drawingWords.reading}, ${voltUnit}`}
      </Words>
      <Words x={plot.right} y={height - 8} anchor="end" bold>
        {`${drawingWords.travel}, %`}
      </Words>
    </g>
  );
}
