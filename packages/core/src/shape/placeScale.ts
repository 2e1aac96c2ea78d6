import { endReadings } from './endReadings.js';

/** Half a window of 1 % of the range: two neighbours make a window, so that windows overlap by half. */
export const halfWindows = 200;

/** The range of the shaft in half windows. */
export interface PlaceScale {
  readonly lowest: number;
  /** Width of a half window, in the unit of the shaft's place; 0 where the shaft stood still. */
  readonly width: number;
}

export function placeScale(shaft: Float64Array): PlaceScale {
  const [lowest, highest] = endReadings(shaft);
  return { lowest: shaft[lowest]!, width: (shaft[highest]! - shaft[lowest]!) / halfWindows };
}

/** The half window that a place lies in, 0 to 199. */
export function halfWindowOf({ lowest, width }: PlaceScale, shaft: number): number {
  return Math.min(halfWindows - 1, Math.floor((shaft - lowest) / width));
}
