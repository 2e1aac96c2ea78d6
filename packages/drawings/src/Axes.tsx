import type { Tick } from './tick.js';
import { Words } from './Words.js';

/** What {@link Axes} draws. */
interface AxesProps {
  readonly plot: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
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
      {acrossTicks.map(({ at, text }) => (
        <g key={text}>
          <path d={`M${at},${plot.bottom}v4`} stroke-width="1" />
          <Words x={at} y={plot.bottom + 18} anchor="middle">
            {text}
          </Words>
        </g>
      ))}
      <path d={`M${plot.left},${plot.top}V${plot.bottom}H${plot.right}`} />
      <Words x={2} y={14} bold>
        {up}
      </Words>
      <Words x={plot.right} y={height - 8} anchor="end" bold>
        {across}
      </Words>
    </g>
  );
}
