import { AcrossAxis } from './AcrossAxis.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { Words } from './Words.js';

/** What {@link Axes} draws. */
interface AxesProps {
  readonly plot: Plot;
  readonly height: number;
  /** Of the level axis, with a fine line across each. */
  readonly upTicks: readonly Tick[];
  /** Of the axis along the foot. */
  readonly acrossTicks: readonly Tick[];
  /** Names of the axes with their units. */
  readonly up: string;
  readonly across: string;
}

/** Frame, ticks and grid of a diagram; the units stand with the names of the axes. */
export function Axes({ plot, height, upTicks, acrossTicks, up, across }: AxesProps) {
  return (
    <g class="axes">
      {upTicks.map(({ at, text }) => (
        <g key={text}>
          <path d={`M${plot.left},${at}H${plot.right}`} stroke-width="0.5" stroke-dasharray="1 3" />
          <path d={`M${plot.left},${at}h-4`} stroke-width="1" />
          <Words x={plot.left - 7} y={at + 4} anchor="end">
            {text}
          </Words>
        </g>
      ))}
      <AcrossAxis plot={plot} height={height} ticks={acrossTicks} name={across} />
      <path d={`M${plot.left},${plot.top}V${plot.bottom}`} />
      <Words x={2} y={14} bold>
        {up}
      </Words>
    </g>
  );
}
