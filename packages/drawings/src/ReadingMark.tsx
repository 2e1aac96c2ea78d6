import { OutcomeSymbol } from './OutcomeSymbol.js';
import type { PlacedReading } from './placeReadings.js';
import { Words } from './Words.js';

/** A reading with its bars and, where it lies beyond the edge, an arrow; its number where it stands free. */
export function ReadingMark(props: PlacedReading) {
  const { number, outcome, x, y, across, up, beyond, isNumbered, onLeft } = props;
  const inner = beyond === 'top' ? 18 : beyond === 'bottom' ? -18 : 0;
  return (
    <g class="reading">
      {across[1] > across[0] && (
        <path d={`M${across[0]},${y - 3}v6m0,-3H${across[1]}m0,-3v6`} stroke-width="1.2" />
      )}
      {up[0] > up[1] && !beyond && (
        <path d={`M${x - 3},${up[0]}h6m-3,0V${up[1]}m-3,0h6`} stroke-width="1.2" />
      )}
      {beyond && (
        <path
          d={
            beyond === 'top'
              ? `M${x},${y + 12}V${y}l-4,6m4,-6l4,6`
              : `M${x},${y - 12}V${y}l-4,-6m4,6l4,-6`
          }
        />
      )}
      <OutcomeSymbol outcome={outcome} x={x} y={y + inner} />
      {isNumbered && (
        <Words x={onLeft ? x - 9 : x + 9} y={y + inner - 7} anchor={onLeft ? 'end' : 'start'} bold>
          {String(number)}
        </Words>
      )}
    </g>
  );
}
