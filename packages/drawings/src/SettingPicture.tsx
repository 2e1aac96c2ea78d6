import { checkFields, checkText, type FieldRule, type Setting } from '@truesweep/core';
import { drawingWords, settingPictureSentence } from '@truesweep/wording';
import { checkProps, number } from './checkProps.js';
import { Figure } from './Figure.js';
import { quantityText } from './quantityText.js';
import { Words } from './Words.js';

/** What `SettingPicture` draws. */
export interface SettingPictureProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** How the recorder is set, as `chooseSetting` says. */
  readonly setting: Setting;
}

const size = { width: 340, height: 250 };
const screen = { left: 12, top: 12, right: 222, bottom: 180 } as const;
/** The screen's squares: ten of time, eight of volts. */
const [across, up] = [10, 8];

const setting: FieldRule = (value, path) =>
  checkFields(value, path, {
    dropout: number,
    interval: number,
    timePerDivision: number,
    memory: number,
    voltsPerDivision: number,
    trigger: (given, at) =>
      checkFields(given, at, {
        kind: ['level', 'pulse'],
        'volts?': number,
        'slope?': ['falling', 'rising'],
        'shorterThan?': number,
      }),
    probe: number,
  });

/**
 * A recorder's front as it is to be set: its screen with one stroke as it will stand there, and beside it time and volts of a square, the
 * trigger and the probe.
 *
 * It is SVG with presentation attributes only, in the colour of the text around it, and renders in
 * Node as in a page.
 *
 * @example
 * import { chooseSetting } from '@truesweep/core';
 * import { h } from 'preact';
 * import { renderToString } from 'preact-render-to-string';
 *
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 1e6 } };
 * const setting = chooseSetting(circuit, { width: 0.01, travelTime: 2 });
 * renderToString(h(SettingPicture, { id: 'set', setting })).includes('a square') // => true
 */
export function SettingPicture(props: SettingPictureProps) {
  checkProps(props, { id: checkText, setting });
  const { id } = props;
  const { timePerDivision, voltsPerDivision, trigger, probe, interval } = props.setting;
  const [time, volts] = [quantityText(timePerDivision, 's'), quantityText(voltsPerDivision, 'V')];
  const [width, height] = [screen.right - screen.left, screen.bottom - screen.top];
  const x = (square: number) => screen.left + (width * square) / across;
  const y = (square: number) => screen.bottom - (height * square) / up;
  const triggerText =
    trigger.kind === 'level'
      ? `${trigger.slope === 'falling' ? '↓' : '↑'} ${quantityText(trigger.volts, 'V')}`
      : `< ${quantityText(trigger.shorterThan, 's')}`;
  const rate = quantityText(1 / interval, 'Hz');
  return (
    <Figure
      id={id}
      kind="setting-picture"
      title={drawingWords.setting}
      description={settingPictureSentence({
        time,
        volts,
        trigger: triggerText,
        probe: `×${probe}`,
      })}
      {...size}
    >
      <rect x="2" y="2" width="336" height="246" rx="8" stroke-width="2" />
      <rect x={screen.left} y={screen.top} width={width} height={height} />
      {Array.from({ length: across - 1 }, (_, i) => (
        <path
          key={`x${i + 1}`}
          d={`M${x(i + 1)},${screen.top}V${screen.bottom}`}
          stroke-width="0.4"
          stroke-dasharray="1 3"
        />
      ))}
      {Array.from({ length: up - 1 }, (_, i) => (
        <path
          key={`y${i + 1}`}
          d={`M${screen.left},${y(i + 1)}H${screen.right}`}
          stroke-width="0.4"
          stroke-dasharray="1 3"
        />
      ))}
      <path
        class="signal"
        d={`M${x(0)},${y(1)}H${x(1)}C${x(3)},${y(1)} ${x(3)},${y(6.5)} ${x(5)},${y(6.5)}H${x(6)}C${x(8)},${y(6.5)} ${x(8)},${y(1)} ${x(9.5)},${y(1)}H${x(10)}M${x(2.35)},${y(2)}V${y(0.4)}`}
        stroke-width="2"
      />
      <Knob y={40} name={drawingWords.time} value={time} />
      <Knob y={98} name={drawingWords.volts} value={volts} />
      <Knob y={156} name={drawingWords.trigger} value={triggerText} />
      <Words
        x={screen.left}
        y={204}
      >{`${drawingWords.time}: ${time} ${drawingWords.square}`}</Words>
      <Words
        x={screen.left}
        y={224}
      >{`${drawingWords.volts}: ${volts} ${drawingWords.square}`}</Words>
      <Words
        x={screen.left}
        y={242}
      >{`${rate}, ${drawingWords.direct}, ${drawingWords.probe} ×${probe}`}</Words>
    </Figure>
  );
}

/** A knob with its name and what it is turned to. */
function Knob(props: { readonly y: number; readonly name: string; readonly value: string }) {
  const { y, name, value } = props;
  return (
    <g>
      <circle cx="248" cy={y} r="16" />
      <path d={`M248,${y}L258,${y - 12}`} stroke-width="3" />
      <Words x={270} y={y - 2}>
        {name}
      </Words>
      <Words x={270} y={y + 15} bold>
        {value}
      </Words>
    </g>
  );
}
