import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { Words } from './Words.js';

/** The axis along the foot of a diagram: its ticks, and its name with the unit. */
export function AcrossAxis(props: {
  readonly plot: Plot;
  readonly height: number;
  readonly ticks: readonly Tick[];
  readonly name: string;
}) {
  const { plot, height, ticks, name } = props;
  return (
    <g class="across">
      {ticks.map(({ at, text }) => (
        <g key={text}>
          <path d={`M${at},${plot.bottom}v4`} stroke-width="1" />
          <Words x={at} y={plot.bottom + 18} anchor="middle">
            {text}
          </Words>
        </g>
      ))}
      <path d={`M${plot.left},${plot.bottom}H${plot.right}`} />
      <Words x={plot.right} y={height - 8} anchor="end" bold>
        {name}
      </Words>
    </g>
  );
}
