import { type Circuit, checkText, type OperatingPoint, positionAt } from '@truesweep/core';
import { circuitSentence, drawingWords, nodeLabels } from '@truesweep/wording';
import { CircuitLegend, legendHeight } from './CircuitLegend.js';
import { CurrentArrow } from './CurrentArrow.js';
import { checkProps } from './checkProps.js';
import type { CircuitDrawingProps } from './circuitDrawingProps.js';
import { circuitLayout } from './circuitLayout.js';
import { circuit as aCircuit, point } from './circuitRules.js';
import { Figure } from './Figure.js';
import { InstrumentSymbol } from './InstrumentSymbol.js';
import { polyline } from './polyline.js';
import { quantityText } from './quantityText.js';
import { ResistorLabel } from './ResistorLabel.js';
import { ResistorSymbol } from './ResistorSymbol.js';
import { resistanceText } from './resistanceText.js';
import { SourceSymbol } from './SourceSymbol.js';
import { WiperSymbol } from './WiperSymbol.js';
import { Words } from './Words.js';

/**
 * A bench circuit as a wiring diagram: source, limiting resistor, leads, the sensor with its track and
 * wiper, load and instrument, each with its value; below it the reading and the currents at both stops.
 * Parts of 0 Ω are drawn as wire, parts of ∞ Ω as broken.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { operatingPoint } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const [closed, open] = [operatingPoint(circuit, 0), operatingPoint(circuit, 1)];
 * const svg = renderToString(h(CircuitDrawing, { id: 'bench', circuit, closed, open }));
 * svg.includes('<title id="bench-title">The sensor on the bench</title>') // => true
 */
export function CircuitDrawing(props: CircuitDrawingProps) {
  checkProps(props, { id: checkText, circuit: aCircuit, closed: point, open: point });
  const { id, circuit, closed, open } = props;
  const layout = circuitLayout(circuit);
  const { sensor } = layout;
  const stop = (travel: 0 | 1, { output }: OperatingPoint) => ({
    position: quantityText(positionAt(circuit.sensor, travel), '%'),
    reading: quantityText(output, 'V'),
  });
  return (
    <Figure
      id={id}
      kind="circuit-drawing"
      title={drawingWords.circuit}
      description={circuitSentence({
        source: quantityText(circuit.source.volts, 'V'),
        limiter: resistanceText(circuit.limiter),
        track: resistanceText(circuit.sensor.track),
        closed: stop(0, closed),
        open: stop(1, open),
      })}
      width={layout.width}
      height={layout.height + legendHeight(layout.arrows.length)}
    >
      <g class="wires">
        {layout.wires.map((wire) => (
          <path key={polyline(wire)} d={polyline(wire)} />
        ))}
      </g>
      <rect class="sensor" {...sensor} stroke-dasharray="8 4 2 4" stroke-width="1" />
      <Words x={sensor.x + 7} y={sensor.y + sensor.height - 8}>
        {drawingWords.sensor}
      </Words>
      <SourceSymbol {...layout.source} source={circuit.source} />
      <InstrumentSymbol {...layout.instrument} />
      {layout.resistors.map((resistor) => (
        <g key={resistor.part}>
          <ResistorSymbol {...resistor} />
          <ResistorLabel {...resistor} />
        </g>
      ))}
      <WiperSymbol wiper={layout.wiper} stops={layout.stops} />
      {layout.arrows.map((arrow, i) => (
        <CurrentArrow key={arrow.part} {...arrow} number={i + 1} />
      ))}
      {layout.joints.map(({ x, y }) => (
        <circle key={`${x},${y}`} cx={x} cy={y} r={2.6} fill="currentColor" />
      ))}
      {layout.terminals.map(({ x, y }) => (
        <circle key={`${x},${y}`} class="terminal" cx={x} cy={y} r={4} />
      ))}
      {layout.pullUpFeed && (
        <g class="part pullUpSource">
          <circle cx={layout.pullUpFeed.x} cy={layout.pullUpFeed.y - 4} r={4} />
          <Words x={layout.pullUpFeed.x + 9} y={layout.pullUpFeed.y}>
            {pullUpFeedText(circuit)}
          </Words>
        </g>
      )}
      <CircuitLegend y={layout.height} arrows={layout.arrows} closed={closed} open={open} />
    </Figure>
  );
}

/** What feeds the pull-up: a voltage of its own, or the place that it is tied to. */
function pullUpFeedText({ load: { pullUp } }: Circuit): string {
  if (!pullUp) return '';
  if ('volts' in pullUp) return quantityText(pullUp.volts, 'V');
  return nodeLabels[pullUp.from === 'source' ? 'sourcePlus' : 'top'];
}
