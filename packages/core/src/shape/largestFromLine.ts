import type { ReferenceLine, ShaftReadings } from './shape.js';

/** The reading farthest from a line and how far it lies from it; nothing where no reading is asked for. */
export function largestFromLine(
  { shaft, ratio }: ShaftReadings,
  { intercept, slope }: ReferenceLine,
  isAsked: (shaft: number) => boolean = () => true,
): { readonly index: number; readonly value: number } | undefined {
  let index = -1;
  let value = -1;
  for (let i = 0; i < shaft.length; i++) {
    const away = Math.abs(ratio[i]! - intercept - slope * shaft[i]!);
    if (away > value && isAsked(shaft[i]!)) [index, value] = [i, away];
  }
  return index < 0 ? undefined : { index, value };
}
