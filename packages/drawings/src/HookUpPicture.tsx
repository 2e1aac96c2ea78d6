import { checkText } from '@truesweep/core';
import { drawingWords, hookUpPictureSentence } from '@truesweep/wording';
import { checkProps, number } from './checkProps.js';
import { Figure } from './Figure.js';
import type { HookUpPictureProps } from './hookUpPictureProps.js';
import { quantityText } from './quantityText.js';
import { Words } from './Words.js';

const size = { width: 340, height: 390 };
/** Where the plug's pins stand: feed, ground and signal, in the order in which no lead crosses another. */
const pins = { supply: 132, ground: 154, signal: 176, y: 132 } as const;
/** Rings of a wire-ended resistor, along its body. */
const rings = [6, 14, 22, 32];

/**
 * The hook-up as it lies on the bench: throttle body with the sensor, its plug and the clips on it, limiting resistor, supply and the instrument
 * at the wiper. What belongs to the signal has the class `signal`, the throttle's plate the class `plate`.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const svg = renderToString(h(HookUpPicture, { id: 'bench', source: 5, limiter: 1000, track: 5000 }));
 * svg.includes('1\u00a0kΩ') // => true
 */
export function HookUpPicture(props: HookUpPictureProps) {
  checkProps(props, {
    id: checkText,
    source: number,
    limiter: number,
    track: number,
    'instrument?': ['trace', 'digits'],
    'reading?': number,
    'terminals?': { supply: checkText, ground: checkText, signal: checkText },
  });
  const { id, source, limiter, track, instrument = 'trace', reading = 0, terminals } = props;
  const [volts, ohms, whole] = [
    quantityText(source, 'V'),
    quantityText(limiter, 'Ω'),
    quantityText(track, 'Ω'),
  ];
  return (
    <Figure
      id={id}
      kind="hook-up-picture"
      title={drawingWords.hookUp}
      description={hookUpPictureSentence({
        source: volts,
        limiter: ohms,
        track: whole,
        instrument,
      })}
      {...size}
    >
      <ThrottleBody />
      <g class="sensor">
        <rect x="116" y="48" width="76" height="58" rx="7" />
        <circle cx="192" cy="77" r="9" />
        <Words x={154} y={73} anchor="middle" bold>
          {drawingWords.sensor}
        </Words>
        <Words x={154} y={92} anchor="middle">
          {whole}
        </Words>
        <rect x="122" y="106" width="64" height="14" />
        {(['supply', 'ground', 'signal'] as const).map((pin) => (
          <path key={pin} d={`M${pins[pin]},120V${pins.y}`} stroke-width="3" />
        ))}
      </g>
      <Supply volts={volts} />
      <g class="feed">
        <path d={`M36,262V236M36,188V156H${pins.supply}V${pins.y + 8}`} />
        <Clip x={pins.supply} />
        <rect x="26" y="188" width="20" height="48" rx="7" />
        {rings.map((at) => (
          <path key={at} d={`M26,${194 + at}h20`} stroke-width="3" />
        ))}
        <Words x={54} y={208}>
          {ohms}
        </Words>
        <Words x={54} y={225}>
          {drawingWords.limiter}
        </Words>
      </g>
      <g class="ground">
        <path d={`M104,262V246H${pins.ground}V${pins.y + 8}M${pins.ground},222H252V254`} />
        <circle cx={pins.ground} cy="222" r="3.5" fill="currentColor" />
        <Clip x={pins.ground} />
      </g>
      <g class="signal">
        <path d={`M${pins.signal},${pins.y + 8}V190H306V254`} stroke-width="2.4" />
        <Clip x={pins.signal} />
      </g>
      <Instrument shows={instrument} reading={quantityText(reading, 'V')} />
      <Pins terminals={terminals ?? drawingWords} />
    </Figure>
  );
}

/** The bore with its plate, seen along the air's way, and the shaft that turns both plate and sensor. */
function ThrottleBody() {
  return (
    <g class="throttle-body">
      <circle cx="268" cy="77" r="66" stroke-width="2" />
      <circle cx="268" cy="77" r="54" />
      <path d="M201,70H215M201,84H215M321,70H338M321,84H338" />
      <g class="plate">
        <ellipse cx="268" cy="77" rx="51" ry="20" />
        <path d="M217,77H319" stroke-width="5" />
      </g>
      <path d="M338,77c-4,26 -10,38 -22,48" stroke-dasharray="4 3" />
      <path d="M316,125l9,-2l-5,-7z" fill="currentColor" stroke-width="1" />
    </g>
  );
}

/** The bench supply with its two posts. */
function Supply({ volts }: { readonly volts: string }) {
  return (
    <g class="supply">
      <rect x="12" y="270" width="116" height="86" rx="4" stroke-width="2" />
      <rect x="24" y="292" width="92" height="26" />
      <Words x={70} y={310} anchor="middle" bold>
        {volts}
      </Words>
      <Words x={70} y={342} anchor="middle">
        {drawingWords.supply}
      </Words>
      <circle cx="36" cy="266" r="5" fill="currentColor" />
      <circle cx="104" cy="266" r="5" />
      <Words x={46} y={285}>
        +
      </Words>
      <Words x={88} y={285}>
        −
      </Words>
    </g>
  );
}

/** A recorder with a trace on its screen, or a meter with digits. */
function Instrument(props: { readonly shows: 'trace' | 'digits'; readonly reading: string }) {
  const { shows, reading } = props;
  return (
    <g class="instrument">
      <rect x="222" y="262" width="112" height="104" rx="6" stroke-width="2" />
      <circle cx="252" cy="258" r="5" />
      <circle cx="306" cy="258" r="5" fill="currentColor" />
      <rect x="232" y="276" width="92" height="58" />
      {shows === 'trace' ? (
        <g>
          <path
            d="M232,290.5h92M232,305h92M232,319.5h92"
            stroke-width="0.4"
            stroke-dasharray="1 3"
          />
          <path
            class="signal"
            d="M234,326h10c12,0 10,-42 22,-42h8c8,0 7,22 10,27v15v-17c4,8 4,17 12,17h4l2,-4l2,4h18"
            stroke-width="1.8"
          />
        </g>
      ) : (
        <Words x={278} y={310} anchor="middle" bold>
          {reading}
        </Words>
      )}
      <Words x={278} y={354} anchor="middle">
        {shows === 'trace' ? drawingWords.recorder : drawingWords.meter}
      </Words>
    </g>
  );
}

/** A clip on a pin. */
function Clip({ x }: { readonly x: number }) {
  return <path d={`M${x - 5},${pins.y - 4}L${x},${pins.y + 10}L${x + 5},${pins.y - 4}`} />;
}

/** What each pin is called, beside its lead. */
function Pins(props: {
  readonly terminals: { readonly supply: string; readonly ground: string; readonly signal: string };
}) {
  const { supply, ground, signal } = props.terminals;
  return (
    <g class="pins">
      <Words x={pins.supply - 10} y={148} anchor="end">
        {supply}
      </Words>
      <Words x={196} y={150}>
        {signal}
      </Words>
      <Words x={162} y={240}>
        {ground}
      </Words>
    </g>
  );
}
