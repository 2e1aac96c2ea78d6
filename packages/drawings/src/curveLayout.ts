import type { Curve, ExpectedWindows, ReadingWindow } from '@truesweep/core';
import { ticks } from 'd3-array';
import type { Point } from './circuitLayout.js';
import { type DifferenceLayout, differenceLayout } from './differenceLayout.js';
import { linearScale } from './linearScale.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';
import { voltAxis } from './voltAxis.js';

/** A window of readings: the bar at its stop. */
export interface PlacedWindow {
  readonly stop: 'closed' | 'open';
  readonly window: ReadingWindow;
  readonly x: number;
  readonly top: number;
  readonly bottom: number;
}

/** A place in the diagram that is pointed out. */
export interface CurveMarker {
  /** Fraction of travel, 0 to 1. */
  readonly travel: number;
  /** The reading there, V; any that the drawing is to hold. */
  readonly volts: number;
  /** The words beside it. */
  readonly label: string;
}

/** Where everything of a curve's drawing lies. */
export interface CurveLayout {
  readonly width: number;
  readonly height: number;
  readonly plot: Plot;
  readonly travelTicks: readonly Tick[];
  readonly voltTicks: readonly Tick[];
  readonly voltUnit: string;
  readonly line: readonly Point[];
  readonly windows: readonly PlacedWindow[];
  readonly markers: readonly (Point & { readonly label: string; readonly onLeft: boolean })[];
  /** The curve that is compared with, and the strip below; left out where none is. */
  readonly compared?: { readonly line: readonly Point[]; readonly difference: DifferenceLayout };
}

const size = { width: 384, height: 340 };
const plot = { left: 44, right: 372, top: 68, bottom: 296 };
/** Room beside the stops, so that the bars of the windows stand inside the frame. */
const besideStops = 12;

/**
 * Places an expected curve on axes of travel and reading, with the windows at the stops.
 *
 * @param curve The output over travel.
 * @param windows The windows at both stops; left out where none are drawn.
 * @param markers Places pointed out.
 * @param compared A curve at the same travels to compare with; left out where none is drawn.
 */
export function curveLayout(
  curve: Curve,
  windows?: ExpectedWindows,
  markers: readonly CurveMarker[] = [],
  compared?: Curve,
): CurveLayout {
  const both = windows ? [windows.closed, windows.open] : [];
  const volts = [
    ...curve.volts,
    ...(compared?.volts ?? []),
    ...both.flatMap(({ low, high }) => [low, high]),
    ...markers.map((marker) => marker.volts),
  ];
  const largest = volts.reduce((most, value) => Math.max(most, value), 0);
  const travelScale = linearScale([0, 1], [plot.left + besideStops, plot.right - besideStops]);
  const { y, voltTicks, voltUnit } = voltAxis(0, largest, 5, plot);
  const x = (at: number) => toHundredths(travelScale(at));
  const lineOf = ({ travel, volts: at }: Curve): readonly Point[] =>
    Array.from(travel, (place, i) => ({ x: x(place), y: y(at[i] ?? 0) }));
  const line = lineOf(curve);
  return {
    ...size,
    plot,
    travelTicks: ticks(0, 1, 5).map((at) => ({ at: x(at), text: String(Math.round(at * 100)) })),
    voltTicks,
    voltUnit,
    line,
    ...(compared && {
      compared: {
        line: lineOf(compared),
        difference: differenceLayout(curve, compared, line, plot),
      },
    }),
    windows: windows ? (['closed', 'open'] as const).map((stop) => place(stop)) : [],
    markers: markers.map(({ travel, volts: at, label }) => ({
      x: x(travel),
      y: y(at),
      label,
      // Beside the dashed line, which lies above, there is room below on the right, but for the edge.
      onLeft: travel > (compared ? 0.8 : 0.5),
    })),
  };

  function place(stop: 'closed' | 'open'): PlacedWindow {
    const window = (windows as ExpectedWindows)[stop];
    return {
      stop,
      window,
      x: x(stop === 'closed' ? 0 : 1),
      top: y(window.high),
      bottom: y(window.low),
    };
  }
}
