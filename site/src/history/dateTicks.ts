import type { Seconds } from '@truesweep/core';

/** A date on an axis. */
export interface DateTick {
  readonly at: Seconds;
  readonly text: string;
}

/** Months from one tick to the next. */
const steps = [1, 2, 3, 6, 12, 24, 60, 120, 240, 600, 1200, 6000, 24_000];

/** Round dates between two moments, no more than fit: months or years; none where the time is shorter than two months. */
export function dateTicks(from: Seconds, to: Seconds, most: number): readonly DateTick[] {
  for (const step of steps) {
    const ticks = everyMonths(step, from, to, most);
    if (ticks.length <= most) return ticks.length < 2 ? [] : ticks;
  }
  return [];
}

function everyMonths(step: number, from: Seconds, to: Seconds, most: number): readonly DateTick[] {
  const first = new Date(from * 1000);
  const months = first.getUTCFullYear() * 12 + first.getUTCMonth();
  const ticks: DateTick[] = [];
  for (let month = Math.floor(months / step) * step; ticks.length <= most; month += step) {
    const date = new Date(Date.UTC(Math.floor(month / 12), month % 12, 1));
    const at = date.getTime() / 1000;
    if (!(at <= to)) break;
    if (at < from) continue;
    ticks.push({ at, text: date.toISOString().slice(0, step % 12 === 0 ? 4 : 7) });
  }
  return ticks;
}
