import type { OperatingPoint } from '@truesweep/core';
import { drawingWords, partLabels } from '@truesweep/wording';
import { CurrentMark } from './CurrentMark.js';
import type { PlacedArrow } from './circuitLayout.js';
import { quantityText } from './quantityText.js';
import { Words } from './Words.js';

const rowHeight = 20;
const columns = { mark: 12, name: 34, closed: 276, open: 378 };

/** How high the legend below a circuit with so many arrows is. */
export function legendHeight(arrows: number): number {
  return rowHeight * (arrows + 2) + 10;
}

/** The reading and the numbered currents at both stops, below the circuit. */
export function CircuitLegend(props: {
  readonly y: number;
  readonly arrows: readonly PlacedArrow[];
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}) {
  const { y, arrows, closed, open } = props;
  const rowY = (row: number) => y + rowHeight * (row + 1);
  return (
    <g class="legend">
      <Words x={columns.closed} y={rowY(0)} anchor="end">
        {drawingWords.closed}
      </Words>
      <Words x={columns.open} y={rowY(0)} anchor="end">
        {drawingWords.open}
      </Words>
      <path d={`M${columns.mark},${rowY(0) + 5}H${columns.open}`} stroke-width="0.7" />
      <Words x={columns.mark} y={rowY(1)} bold>
        {drawingWords.reading}
      </Words>
      <Words x={columns.closed} y={rowY(1)} anchor="end" bold>
        {quantityText(closed.output, 'V')}
      </Words>
      <Words x={columns.open} y={rowY(1)} anchor="end" bold>
        {quantityText(open.output, 'V')}
      </Words>
      {arrows.map(({ part }, i) => (
        <g key={part} class={`row ${part}`}>
          <Words x={columns.mark} y={rowY(i + 2)}>
            <CurrentMark number={i + 1} />
          </Words>
          <Words x={columns.name} y={rowY(i + 2)}>
            {part === 'pullDown' ? drawingWords.load : partLabels[part]}
          </Words>
          <Words x={columns.closed} y={rowY(i + 2)} anchor="end">
            {quantityText(closed.parts[part]?.amps, 'A')}
          </Words>
          <Words x={columns.open} y={rowY(i + 2)} anchor="end">
            {quantityText(open.parts[part]?.amps, 'A')}
          </Words>
        </g>
      ))}
    </g>
  );
}
