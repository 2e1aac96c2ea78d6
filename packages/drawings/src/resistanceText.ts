import type { Ohms } from '@truesweep/core';
import { quantityText } from './quantityText.js';

/** A resistance as it is written in a drawing; ∞ Ω for a broken part. */
export function resistanceText(ohms: Ohms): string {
  return ohms === Number.POSITIVE_INFINITY ? '∞\u00a0Ω' : quantityText(ohms, 'Ω');
}
