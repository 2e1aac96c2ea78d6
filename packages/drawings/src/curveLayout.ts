import type { Curve, ExpectedWindows, ReadingWindow } from '@truesweep/core';
import { nice, ticks } from 'd3-array';
import { axisUnit } from './axisUnit.js';
import type { Point } from './circuitLayout.js';
import { linearScale } from './linearScale.js';
import { plainNumber } from './plainNumber.js';
import type { Plot } from './plot.js';
import type { Tick } from './tick.js';
import { toHundredths } from './toHundredths.js';

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
 */
export function curveLayout(
  curve: Curve,
  windows?: ExpectedWindows,
  markers: readonly CurveMarker[] = [],
): CurveLayout {
  const both = windows ? [windows.closed, windows.open] : [];
  const volts = [
    ...curve.volts,
    ...both.flatMap(({ low, high }) => [low, high]),
    ...markers.map((marker) => marker.volts),
  ];
  const largest = volts.reduce((most, value) => Math.max(most, value), 0);
  const travelScale = linearScale([0, 1], [plot.left + besideStops, plot.right - besideStops]);
  const axis = nice(0, largest || 1, 5);
  const voltScale = linearScale(axis, [plot.bottom, plot.top]);
  const x = (at: number) => toHundredths(travelScale(at));
  const y = (at: number) => toHundredths(voltScale(at));
  const unit = axisUnit(axis[1], 'V');
  return {
    ...size,
    plot,
    travelTicks: ticks(0, 1, 5).map((at) => ({ at: x(at), text: String(Math.round(at * 100)) })),
    voltTicks: ticks(...axis, 5).map((at) => ({ at: y(at), text: plainNumber(at / unit.divisor) })),
    voltUnit: unit.name,
    line: Array.from(curve.travel, (at, i) => ({ x: x(at), y: y(curve.volts[i] ?? 0) })),
    windows: windows ? (['closed', 'open'] as const).map((stop) => place(stop)) : [],
    markers: markers.map(({ travel, volts: at, label }) => ({
      x: x(travel),
      y: y(at),
      label,
      onLeft: travel > 0.5,
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
