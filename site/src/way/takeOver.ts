import { InputError } from '@truesweep/core';
import { findTerminals, hasNoReading, ownTerminalsForm } from '../calculators/findTerminals.js';
import { initialTexts, readForm } from '../forms/form.js';
import { quantityText } from '../forms/quantityText.js';
import type { Way } from './way.js';

/** Entries of the later steps that the terminals' readings tell. */
export type TrackFound = Readonly<Record<'track' | 'closedPosition' | 'openPosition', string>>;

/** What the terminals' readings tell of the track, as entries of the later steps; nothing where they tell of no single track. */
export function trackFound(texts: Way['texts']): TrackFound | undefined {
  const read = readForm(ownTerminalsForm, { ...initialTexts(ownTerminalsForm), ...texts });
  if ('refusals' in read || hasNoReading(read.values)) return undefined;
  try {
    const found = findTerminals(read.values);
    if (found.kind !== 'potentiometer' || found.tracks.length !== 1) return undefined;
    const [{ track, closedPosition, openPosition }] = found.tracks as [(typeof found.tracks)[0]];
    if (!track || !closedPosition || !openPosition) return undefined;
    return {
      track: quantityText(track.value, 'Ω'),
      closedPosition: quantityText(closedPosition.value, '%'),
      openPosition: quantityText(openPosition.value, '%'),
    };
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/**
 * Lets what is measured go on to the later steps, whenever it changes: what stands there of an earlier measurement, or as an example,
 * makes room for it. What someone wrote there since stays until something else is measured.
 *
 * @param before What was entered before the change, and `after` it.
 */
export function carryMeasured(before: Way['texts'], after: Way['texts']): Way['texts'] {
  const [found, was] = [trackFound(after), trackFound(before)];
  if (JSON.stringify(found) === JSON.stringify(was)) return after;
  const stale = Object.entries(was ?? {}).filter(([name, text]) => after[name] === text);
  const kept = Object.entries(after).filter((entry) => !stale.some(([name]) => name === entry[0]));
  return { ...Object.fromEntries(kept), ...found };
}
