import { checkScore, checkText, type Score } from '@truesweep/core';
import { drawingWords, duringLabels, findingLabels, travelMapSentence } from '@truesweep/wording';
import { AcrossAxis } from './AcrossAxis.js';
import { checkProps, drawingWidth } from './checkProps.js';
import { Figure } from './Figure.js';
import { FindingSymbol } from './FindingSymbol.js';
import type { TravelMapDrawingProps } from './travelMapDrawingProps.js';
import { travelMapLayout } from './travelMapLayout.js';
import { Words } from './Words.js';

/**
 * The findings over the travel, pass by pass: what stands at one travel on every pass is the track's, what is scattered is not. Below, how
 * often each tenth of the travel was seen opening and closing; what was never seen is shaded.
 *
 * @example
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const score = { strokes: [], findings: [], spots: [], coverage: { opening: [1, 0], closing: [0, 0] } };
 * renderToString(h(TravelMapDrawing, { id: 'map', score })).includes('nothing is marked') // => true
 */
export function TravelMapDrawing(props: TravelMapDrawingProps) {
  checkProps(props, {
    id: checkText,
    score: (value, path) =>
      checkScore(value as Score, path, ['strokes', 'findings', 'spots', 'coverage']),
    'width?': drawingWidth,
  });
  const { id, score, width: drawnWidth } = props;
  const { width, height, plot, ticks, rows, marks, rowsEnd, strips, spots, legend } =
    travelMapLayout(score, drawnWidth);
  return (
    <Figure
      id={id}
      kind="travel-map-drawing"
      title={drawingWords.travelMap}
      description={travelMapSentence({
        passes: score.strokes.length,
        findings: score.findings.length,
        seen: { opening: seenOf(score.coverage.opening), closing: seenOf(score.coverage.closing) },
        places: spots.map(({ travel }) => `${Math.round(travel * 100)}\u00a0%`),
      })}
      width={width}
      height={height}
    >
      <g class="legend">
        {legend.map(({ kind, x, y }) => (
          <g key={kind}>
            <FindingSymbol kind={kind} x={x} y={y} />
            <Words x={x + 12} y={y + 4}>
              {findingLabels[kind]}
            </Words>
          </g>
        ))}
      </g>
      {spots.map(({ x }) => (
        <path key={x} class="spot" d={`M${x},${plot.top}V${rowsEnd}`} stroke-dasharray="4 3" />
      ))}
      {rows.map(({ direction, number, y, from, to }) => (
        <g key={`${direction}${number}`} class="pass">
          <Words x={plot.left - 12} y={y + 4} anchor="end">
            {number > 0 ? `${duringLabels[direction]} ${number}` : duringLabels[direction]}
          </Words>
          <path d={`M${from},${y}H${to}`} stroke-width="0.6" />
        </g>
      ))}
      {marks.map(({ number, kind, x, y }) => (
        <FindingSymbol key={number} kind={kind} x={x} y={y} />
      ))}
      {strips.map(({ direction, y, height, cells }) => (
        <g key={direction} class="looks">
          <Words x={plot.left - 12} y={y + height - 4} anchor="end">
            {`${drawingWords.seen} ${duringLabels[direction]}`}
          </Words>
          {cells.map((cell) => (
            <g key={cell.tenth}>
              <rect
                x={cell.x}
                y={y}
                width={cell.width}
                height={height}
                stroke-width="0.6"
                {...(cell.looks === 0 && { fill: 'currentColor', 'fill-opacity': '0.2' })}
              />
              <Words x={cell.x + cell.width / 2} y={y + height - 4} anchor="middle">
                {cell.looks}
              </Words>
            </g>
          ))}
        </g>
      ))}
      <AcrossAxis plot={plot} height={height} ticks={ticks} name={`${drawingWords.travel}, %`} />
    </Figure>
  );
}

/** How many tenths of the travel had a look. */
function seenOf(looks: readonly number[]): number {
  return looks.filter((count) => count > 0).length;
}
