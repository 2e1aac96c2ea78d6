import type { Seconds, Volts } from '@truesweep/core';
import type { TimeStretch } from './protocol.js';

/** A range of readings, V. */
export interface VoltRange {
  readonly low: Volts;
  readonly high: Volts;
}

/** What of a trace is seen: a stretch of its time, and of its readings those between two, or all of them. */
export interface View {
  readonly stretch: TimeStretch;
  readonly volts?: VoltRange | undefined;
}

/** What can be seen of a trace. */
export interface ViewBounds {
  readonly whole: TimeStretch;
  /** Nothing shorter is worth a look, s. */
  readonly shortest: Seconds;
  /** The readings from foot to top where all are seen, V. */
  readonly volts: VoltRange;
}

/** No smaller part of the readings is worth a look. */
const smallestPart = 1 / 200;

/** A view with its time stretched about a place in it; a factor below 1 comes closer. */
export function zoomTime(view: View, factor: number, part: number, bounds: ViewBounds): View {
  const { whole, shortest } = bounds;
  const { start, end } = view.stretch;
  const most = whole.end - whole.start;
  const length = Math.min(most, Math.max(shortest, (end - start) * factor));
  const fixed = start + (end - start) * part;
  const stretch = { start: fixed - length * part, end: fixed + length * (1 - part) };
  return { ...view, stretch: heldTime(stretch, whole) };
}

/** A view with its readings stretched about a place in it, 0 at the foot; all of them are seen again where they would be more. */
export function zoomVolts(view: View, factor: number, part: number, { volts }: ViewBounds): View {
  const { low, high } = view.volts ?? volts;
  const all = volts.high - volts.low;
  const span = Math.max(all * smallestPart, (high - low) * factor);
  if (span >= all) return { stretch: view.stretch };
  const fixed = low + (high - low) * part;
  return { ...view, volts: heldVolts(fixed - span * part, span, volts) };
}

/** A view moved by parts of what it shows: later, and up. */
export function moveView(view: View, later: number, up: number, bounds: ViewBounds): View {
  const { whole, volts: all } = bounds;
  const { start, end } = view.stretch;
  const by = (end - start) * later;
  const moved = heldTime({ start: start + by, end: end + by }, whole);
  if (!view.volts) return { stretch: moved };
  const { low, high } = view.volts;
  const span = high - low;
  return { stretch: moved, volts: heldVolts(low + span * up, span, all) };
}

/** A view of a stretch with some of what is around it, all readings. */
export function viewOf({ start, end }: TimeStretch, around: number, bounds: ViewBounds): View {
  const { whole, shortest } = bounds;
  const wanted = Math.max(shortest, (end - start) * around, (whole.end - whole.start) / 200);
  const length = Math.min(whole.end - whole.start, wanted);
  const middle = (start + end) / 2;
  return { stretch: heldTime({ start: middle - length / 2, end: middle + length / 2 }, whole) };
}

/** A stretch moved back into the whole. */
function heldTime({ start, end }: TimeStretch, whole: TimeStretch): TimeStretch {
  const by = Math.max(0, whole.start - start) - Math.max(0, end - whole.end);
  return { start: Math.max(whole.start, start + by), end: Math.min(whole.end, end + by) };
}

function heldVolts(low: Volts, span: Volts, all: VoltRange): VoltRange {
  const from = Math.min(Math.max(low, all.low), all.high - span);
  return { low: from, high: from + span };
}
