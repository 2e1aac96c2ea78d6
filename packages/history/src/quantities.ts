import type { TrendPoint } from '@truesweep/core';
import { dateSeconds } from './dates.js';
import type { EndRecord, HistoryRecord } from './historyRecord.js';

/** What is followed of a sensor, each as a fraction of the span that its hook-up should give. */
export type HistoryQuantity = 'closed' | 'open' | 'hysteresis' | 'noise' | 'roughness' | 'worst';

/** All of them, in the order in which they are told. */
export const historyQuantities: readonly HistoryQuantity[] = [
  'closed',
  'open',
  'hysteresis',
  'noise',
  'roughness',
  'worst',
];

/** A value of a quantity, with the record that it is of. */
export interface HistoryPoint extends TrendPoint {
  /** Which of the records: a count, from 0. */
  readonly record: number;
}

/** Noise of recorders that sample or resolve otherwise than so near alike is no change of the sensor's. */
const alike = 1.1;

/** A quantity's values, over time. */
export function pointsOf(
  quantity: HistoryQuantity,
  records: readonly HistoryRecord[],
): { readonly points: readonly HistoryPoint[]; readonly otherRecorder: number } {
  const points: HistoryPoint[] = [];
  const last = records.findLast(({ date }) => date !== undefined);
  let otherRecorder = 0;
  for (const [record, one] of records.entries()) {
    const at = one.date === undefined ? undefined : dateSeconds(one.date);
    const value = quantityOf(quantity, one);
    if (at === undefined || !value) continue;
    if (quantity === 'noise' && !isAlike(one, last!)) otherRecorder++;
    else points.push({ record, at, ...value });
  }
  return { points, otherRecorder };
}

interface Value {
  readonly value: number;
  readonly uncertainty?: number;
}

/**
 * A quantity of one record, as a fraction of the span: of the stops how far from the middle of what the hook-up should have given, so that other supplies
 * and limiters do not count as changes; nothing where it was not read, or the span is not known.
 */
export function quantityOf(quantity: HistoryQuantity, record: HistoryRecord): Value | undefined {
  const span = spanOf(record);
  if (span === undefined) return undefined;
  const { closed, open, hysteresis, noise, roughness, visible, worst } = record;
  // Less than this shows nowhere, and may lie anywhere from 0 up to it.
  const unseen = visible / Math.abs(span) / Math.sqrt(12);
  switch (quantity) {
    case 'closed':
      return closed && placeOf(closed, span);
    case 'open':
      return open && placeOf(open, span);
    case 'hysteresis':
      return hysteresis === undefined ? undefined : { value: hysteresis / span };
    case 'noise':
      return { value: noise / Math.abs(span) };
    case 'roughness':
      return { value: roughness, uncertainty: unseen };
    case 'worst':
      return { value: worst?.depthOfSpan ?? 0, uncertainty: unseen };
  }
}

/** What the reading at open should be more than that at closed, V: negative of a sensor that falls. */
export function spanOf({ closed, open }: HistoryRecord): number | undefined {
  if (!closed || !open) return undefined;
  const span = middle(open) - middle(closed);
  return Math.abs(span) > 1e-6 ? span : undefined;
}

function placeOf(end: EndRecord, span: number): Value | undefined {
  const { volts, uncertainty } = end;
  if (volts === undefined) return undefined;
  return {
    value: (volts - middle(end)) / span,
    ...(uncertainty !== undefined && { uncertainty: uncertainty / Math.abs(span) }),
  };
}

function middle({ low, high }: EndRecord): number {
  return (low + high) / 2;
}

function isAlike(one: HistoryRecord, other: HistoryRecord): boolean {
  return (['interval', 'resolution'] as const).every((field) => {
    const [a, b] = [one.recorder[field], other.recorder[field]];
    return a <= alike * b && b <= alike * a;
  });
}

/** The limits of a quantity on the scale of its values, as the last record has them; none where it has none. */
export function limitsOf(
  quantity: HistoryQuantity,
  record: HistoryRecord,
): { readonly low: number; readonly high: number } | undefined {
  const span = spanOf(record);
  const end = quantity === 'closed' ? record.closed : quantity === 'open' ? record.open : undefined;
  if (!end || span === undefined) return undefined;
  const half = (end.high - end.low) / 2 / Math.abs(span);
  return { low: -half, high: half };
}
