import { drawingWords, windowWords } from '@truesweep/wording';
import type { PlacedWindow } from './curveLayout.js';
import { quantityText } from './quantityText.js';
import { Words } from './Words.js';

const halfWidth = 6;

/** A window as a hollow bar at its stop, with a fine line up to its words. */
export function WindowMark(props: PlacedWindow & { readonly labelY: number }) {
  const { stop, window, x, top, bottom, labelY } = props;
  const atLeft = stop === 'closed';
  const wordsX = atLeft ? x - halfWidth : x + halfWidth;
  const anchor = atLeft ? 'start' : 'end';
  return (
    <g class={`window ${stop}`}>
      <path d={`M${x},${labelY + 22}V${top}`} stroke-width="0.8" stroke-dasharray="2 3" />
      <rect
        x={x - halfWidth}
        y={top}
        width={2 * halfWidth}
        height={bottom - top}
        fill="currentColor"
        fill-opacity="0.18"
      />
      <Words x={wordsX} y={labelY} anchor={anchor} bold>
        {drawingWords[stop]}
      </Words>
      <Words x={wordsX} y={labelY + 16} anchor={anchor}>
        {windowWords(quantityText(window.low, 'V'), quantityText(window.high, 'V'))}
      </Words>
    </g>
  );
}
