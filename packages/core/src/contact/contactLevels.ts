import type { EndVolts, HookUpLevels } from '../expectation/hookUpLevels.js';
import { onScale, type ThrottleScale } from '../movement/throttleScale.js';
import { tolerance } from './limits.js';

/** Where a signal lies while a contact is broken, on the scale of the span. */
export interface ContactLevels {
  /** The load's rest level, where a lifted wiper leaves it; undefined where nothing pulls it. */
  readonly rest: number | undefined;
  /** With a feed lead broken, by the level of the path; undefined where that can't be told from a lifted wiper. */
  readonly supply: ((level: number) => number) | undefined;
  readonly ground: ((level: number) => number) | undefined;
  /** How far apart the lowest and the highest level lie that the source can make. */
  readonly range: number;
}

export function contactLevels(
  { brokenLead, source }: HookUpLevels,
  scale: ThrottleScale,
): ContactLevels {
  const { rest, span } = scale;
  const apart = (tolerance * source) / Math.abs(span);
  const along = (ends: EndVolts | undefined): ContactLevels['supply'] => {
    if (!ends) return undefined;
    const [closed, open] = [onScale(scale, ends.closed), onScale(scale, ends.open)];
    const isRest = (level: number): boolean =>
      rest !== undefined && Math.abs(level - rest) <= apart;
    if (isRest(closed) && isRest(open)) return undefined;
    return (level) => closed + (open - closed) * Math.min(1, Math.max(0, level));
  };
  const edges = [onScale(scale, 0), onScale(scale, source)];
  const range = Math.max(...edges, 1) - Math.min(...edges, 0);
  return { rest, supply: along(brokenLead.supply), ground: along(brokenLead.ground), range };
}
