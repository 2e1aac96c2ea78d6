import { CurrentMark } from './CurrentMark.js';
import type { PlacedArrow } from './circuitLayout.js';
import { Words } from './Words.js';

/** An arrowhead on a wire with the current's number beside it. */
export function CurrentArrow({ x, y, toward, label, number }: PlacedArrow & { number: number }) {
  const d = toward === 'right' ? `M${x},${y}l-9,-4v8z` : `M${x},${y}l-4,-9h8z`;
  return (
    <>
      <path class="current" d={d} fill="currentColor" stroke="none" />
      <Words x={label.x} y={label.y}>
        <CurrentMark number={number} />
      </Words>
    </>
  );
}
