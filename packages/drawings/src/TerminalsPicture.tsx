import { checkText } from '@truesweep/core';
import { drawingWords, terminalsPictureSentence } from '@truesweep/wording';
import { checkProps } from './checkProps.js';
import { Figure } from './Figure.js';
import { Words } from './Words.js';

/** What `TerminalsPicture` draws. */
export interface TerminalsPictureProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** Where the throttle is held. */
  readonly stop: 'closed' | 'open';
}

const size = { width: 340, height: 200 };
const pins = ['A', 'B', 'C'] as const;
const pinAt = (i: number) => 44 + i * 36;

/**
 * The unplugged sensor with its terminals A, B and C as they lie, an ohmmeter between two of them, and the throttle held at a stop.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * renderToString(h(TerminalsPicture, { id: 'pins', stop: 'closed' })).includes('held closed') // => true
 */
export function TerminalsPicture(props: TerminalsPictureProps) {
  checkProps(props, { id: checkText, stop: ['closed', 'open'] });
  const { id, stop } = props;
  const plate = stop === 'closed' ? 'M210,52h92' : 'M256,14v76';
  return (
    <Figure
      id={id}
      kind="terminals-picture"
      title={drawingWords.terminals}
      description={terminalsPictureSentence(stop)}
      {...size}
    >
      <rect x="20" y="14" width="124" height="62" rx="6" />
      <Words x={82} y={48} anchor="middle" bold>
        {drawingWords.sensor}
      </Words>
      <path d="M144,52h58" />
      <circle cx="256" cy="52" r="50" stroke-width="2" />
      <path class="plate" d={plate} stroke-width="5" />
      <Words x={256} y={122} anchor="middle">
        {drawingWords[stop]}
      </Words>
      {pins.map((pin, i) => (
        <g key={pin}>
          <path d={`M${pinAt(i)},76v24`} stroke-width="4" />
          <Words x={pinAt(i) + 7} y={94} bold>
            {pin}
          </Words>
        </g>
      ))}
      <path
        class="signal"
        d={`M${pinAt(0)},102V140H120V150M${pinAt(1)},102V126H152V150`}
        stroke-width="2"
      />
      <rect x="98" y="150" width="76" height="44" rx="4" stroke-width="2" />
      <Words x={136} y={178} anchor="middle" bold>
        Ω
      </Words>
      <Words x={186} y={166}>
        A–B, A–C, B–C
      </Words>
    </Figure>
  );
}
