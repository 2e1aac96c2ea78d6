import { formatQuantity } from '@truesweep/core';
import { findingMark, hintLabels, watchWords } from '@truesweep/wording';
import { columnSeconds } from './liveColumns.js';
import { signPaths } from './signPaths.js';
import { shownColumns, shownSeconds, type TraceModel, type TraceNow } from './traceModel.js';

/** How a trace looks: its place's width and height, px, and the page's colours and letters. */
export interface TraceLook {
  readonly width: number;
  readonly height: number;
  readonly ink: string;
  readonly accent: string;
  readonly paper: string;
  readonly font: string;
}

const labelHeight = 18;
const labelRows = 3;
const margin = { left: 58, right: 8, bottom: 44 } as const;
const top = labelHeight * labelRows + 8;
/** A pause of so many columns parts the trace. */
const parts = 30;
/** A finding is seen as wide as this at least, px. */
const narrowest = 4;

/** Draws the last seconds of a running recording: readings over time, findings by sign and words above them, hints below them. */
export function drawLiveTrace(
  context: CanvasRenderingContext2D,
  model: TraceModel,
  look: TraceLook,
): void {
  const { width, height, ink, paper, font } = look;
  const now = model.now();
  const right = width - margin.right;
  const foot = height - margin.bottom;
  // The first seconds fill the place from its left.
  const end = Math.max(now.latest, shownSeconds);
  const from = end - shownSeconds;
  const x = (time: number) => margin.left + ((time - from) / shownSeconds) * (right - margin.left);
  const y = (volts: number) =>
    foot - ((volts - now.lowest) / (now.highest - now.lowest)) * (foot - top);

  context.fillStyle = paper;
  context.fillRect(0, 0, width, height);
  context.font = font;
  context.lineWidth = 1;
  context.strokeStyle = ink;
  context.fillStyle = ink;
  context.textBaseline = 'middle';
  drawAxes(context, now, { from, end, left: margin.left, right, foot, x, y });
  drawTrace(context, model, from, x, y);
  drawFindings(context, now, look, x, foot);
  drawHints(context, now, look, x, foot);
}

interface Plot {
  readonly from: number;
  readonly end: number;
  readonly left: number;
  readonly right: number;
  readonly foot: number;
  readonly x: (time: number) => number;
  readonly y: (volts: number) => number;
}

function drawAxes(context: CanvasRenderingContext2D, now: TraceNow, plot: Plot): void {
  const { from, end, left, right, foot, x, y } = plot;
  context.beginPath();
  context.moveTo(left - 0.5, top);
  context.lineTo(left - 0.5, foot + 0.5);
  context.lineTo(right, foot + 0.5);
  context.stroke();
  context.textAlign = 'center';
  for (let second = Math.ceil(from); second <= end; second += 2) {
    context.fillRect(x(second), foot, 1, 4);
    if (x(second) > left + 8 && x(second) < right - 12)
      context.fillText(`${second}\u00a0s`, x(second), foot + 34);
  }
  context.textAlign = 'right';
  context.setLineDash([2, 3]);
  context.beginPath();
  for (const [name, volts] of [
    [watchWords.closed, now.closed],
    [watchWords.open, now.open],
  ] as const) {
    if (volts === undefined) continue;
    context.moveTo(left, Math.round(y(volts)) + 0.5);
    context.lineTo(right, Math.round(y(volts)) + 0.5);
    context.fillText(formatQuantity(volts, 'V', { digits: 2 }), left - 4, y(volts) - 7);
    context.fillText(name, left - 4, y(volts) + 7);
  }
  context.stroke();
  context.setLineDash([]);
  if (now.open !== undefined) return;
  for (const volts of [now.lowest, now.highest])
    context.fillText(formatQuantity(volts, 'V', { digits: 2 }), left - 4, y(volts));
}

function drawTrace(
  context: CanvasRenderingContext2D,
  model: TraceModel,
  from: number,
  x: (time: number) => number,
  y: (volts: number) => number,
): void {
  const first = Math.floor(from / columnSeconds);
  context.beginPath();
  let before = Number.NEGATIVE_INFINITY;
  for (let column = first; column <= first + shownColumns; column++) {
    const readings = model.columnAt(column);
    if (!readings) continue;
    const at = x(column * columnSeconds);
    const [low, high] = readings;
    if (column - before > parts) context.moveTo(at, y(low));
    else context.lineTo(at, y(low));
    context.lineTo(at, y(high));
    before = column;
  }
  context.stroke();
}

/** Words are set where they cover no others, in rows above the trace; where there is no room for them the sign stands alone. */
function drawFindings(
  context: CanvasRenderingContext2D,
  { findings }: TraceNow,
  { accent, ink, width }: TraceLook,
  x: (time: number) => number,
  foot: number,
): void {
  const taken: number[] = Array.from({ length: labelRows }, () => Number.NEGATIVE_INFINITY);
  context.textAlign = 'left';
  for (const { number, finding } of findings) {
    const left = Math.max(margin.left, x(finding.start));
    const wide = Math.max(narrowest, x(finding.end) - left);
    context.globalAlpha = 0.35;
    context.fillStyle = accent;
    context.fillRect(left - narrowest / 2, top - 4, wide, foot - top + 4);
    context.globalAlpha = 1;
    context.fillStyle = ink;
    const row = taken.findIndex((end) => end < left - 10);
    const line = Math.max(0, row) * labelHeight + labelHeight / 2 + 2;
    drawSign(context, 'kind' in finding ? finding.kind : 'abrupt', left, line);
    if (row < 0) continue;
    const words = findingMark(number, finding);
    const needed = context.measureText(words).width;
    // At the right edge they stand before their sign.
    const isLast = left + 12 + needed > width;
    const place = isLast ? left - 12 - needed : left + 12;
    if (isLast && place < (taken[row] ?? 0) + 6) continue;
    context.fillText(words, place, line);
    taken[row] = place + needed;
  }
}

function drawSign(
  context: CanvasRenderingContext2D,
  sign: keyof typeof signPaths,
  x: number,
  y: number,
): void {
  const { path, isOpen } = signPaths[sign];
  context.save();
  context.translate(x, y);
  context.lineWidth = 1.6;
  const drawn = new Path2D(path);
  if (!isOpen) context.fill(drawn);
  context.stroke(drawn);
  context.restore();
}

function drawHints(
  context: CanvasRenderingContext2D,
  { hints }: TraceNow,
  { ink, width }: TraceLook,
  x: (time: number) => number,
  foot: number,
): void {
  context.fillStyle = ink;
  context.textAlign = 'left';
  let end = margin.left;
  for (const hint of hints) {
    const left = Math.max(margin.left, x(hint.start));
    const right = Math.max(left + 6, x(hint.end));
    context.fillRect(left, foot + 5, right - left, 3);
    const words = hintLabels[hint.hint];
    const needed = context.measureText(words).width + 18;
    const place = Math.min(Math.max(left, end), width - needed);
    if (place < end) continue;
    drawSign(context, 'hint', place + 6, foot + 17);
    context.fillText(words, place + 16, foot + 17);
    end = place + needed + 6;
  }
}
