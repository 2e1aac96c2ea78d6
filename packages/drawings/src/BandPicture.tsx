import { Axes } from './Axes.js';
import type { Point } from './circuitLayout.js';
import { Figure } from './Figure.js';
import type { LegendEntry } from './legendEntries.js';
import { OutcomeLegend } from './OutcomeLegend.js';
import type { PlacedReading } from './placeReadings.js';
import type { Plot } from './plot.js';
import { polyline } from './polyline.js';
import { ReadingMark } from './ReadingMark.js';
import type { Tick } from './tick.js';

/** What {@link BandPicture} draws. */
interface BandPictureProps {
  readonly id: string;
  readonly kind: string;
  readonly title: string;
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly plot: Plot;
  readonly upTicks: readonly Tick[];
  readonly acrossTicks: readonly Tick[];
  readonly up: string;
  readonly across: string;
  readonly legend: readonly LegendEntry[];
  readonly low: readonly Point[];
  readonly nominal: readonly Point[];
  readonly high: readonly Point[];
  readonly readings: readonly PlacedReading[];
}

/** A band of limits with its nominal line on two axes, and the readings in it. */
export function BandPicture(props: BandPictureProps) {
  const { id, kind, title, description, width, height, plot, legend, low, nominal, high } = props;
  return (
    <Figure {...{ id, kind, title, description, width, height }}>
      <Axes
        plot={plot}
        height={height}
        upTicks={props.upTicks}
        acrossTicks={props.acrossTicks}
        up={props.up}
        across={props.across}
      />
      <OutcomeLegend entries={legend} />
      <path
        class="band"
        d={`${polyline([...low, ...[...high].reverse()])}z`}
        fill="currentColor"
        fill-opacity="0.18"
        stroke-width="0.6"
      />
      {nominal.length > 0 && <path class="curve" d={polyline(nominal)} stroke-width="2" />}
      {props.readings.map((reading) => (
        <ReadingMark key={reading.number} {...reading} />
      ))}
    </Figure>
  );
}
