import type { ClosedSetting } from '@truesweep/core';
import { settingSentences } from '@truesweep/wording';
import { printCautions } from './printCautions.js';
import { wrapText } from './wrapText.js';

/** A closed setting as lines of text. */
export function printSetting(setting: ClosedSetting): readonly string[] {
  const sentence =
    setting.kind === 'turn'
      ? settingSentences.turn({
          degrees: Math.abs(setting.degrees).toFixed(1),
          ...(setting.uncertainty > 0 && { uncertainty: (2 * setting.uncertainty).toFixed(1) }),
          onward: setting.degrees > 0,
        })
      : settingSentences.noChange;
  return [
    ...wrapText(sentence, ''),
    ...wrapText(settingSentences.again, ''),
    '',
    ...printCautions(),
  ];
}
