import type { PinFinding } from '@truesweep/core';
import { pinFindingSentences } from '@truesweep/wording';
import { printTheseCautions } from './printCautions.js';
import { paragraph, type TextPart } from './textPart.js';

/** What ohmmeter readings say of a sensor's terminals, as lines of text. */
export function printPins(found: PinFinding): readonly TextPart[] {
  return [
    ...pinFindingSentences(found).map((sentence) => paragraph(sentence)),
    '',
    ...printTheseCautions(['unplugged', 'limiter']),
  ];
}
