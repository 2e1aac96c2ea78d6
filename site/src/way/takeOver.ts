import { InputError } from '@truesweep/core';
import { findTerminals, findTerminalsForm } from '../calculators/findTerminals.js';
import { initialTexts, readForm } from '../forms/form.js';
import { quantityText } from '../forms/quantityText.js';
import type { Way } from './way.js';

/** What the terminals' readings tell of the track, as entries of the later steps; nothing where they tell of no single track. */
export function trackFound(
  texts: Way['texts'],
): Readonly<Record<'track' | 'closedPosition' | 'openPosition', string>> | undefined {
  const read = readForm(findTerminalsForm, { ...initialTexts(findTerminalsForm), ...texts });
  if ('refusals' in read) return undefined;
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
