import type { ClosedSetting } from '@truesweep/core';
import { closedSettingSentences } from '@truesweep/wording';
import { printTheseCautions } from './printCautions.js';
import { paragraph, type TextPart } from './textPart.js';

/** A closed setting as lines of text. */
export function printSetting(setting: ClosedSetting): readonly TextPart[] {
  return [
    ...closedSettingSentences(setting).map((sentence) => paragraph(sentence)),
    '',
    ...printTheseCautions(['fingers', 'snaps-shut']),
  ];
}
