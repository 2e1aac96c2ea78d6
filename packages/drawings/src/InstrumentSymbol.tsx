import type { Point } from './circuitLayout.js';
import { Words } from './Words.js';

/** A voltmeter's circle; what it loads the signal with is drawn beside it as the pull-down. */
export function InstrumentSymbol({ x, y }: Point) {
  return (
    <g class="part instrument">
      <circle cx={x} cy={y} r={16} />
      <Words x={x} y={y + 5} anchor="middle" bold>
        V
      </Words>
    </g>
  );
}
