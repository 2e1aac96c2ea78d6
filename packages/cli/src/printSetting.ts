import type { ClosedSetting } from '@truesweep/core';
import { settingSentences } from '@truesweep/wording';
import { printCautions } from './printCautions.js';
import { paragraph, type TextPart } from './textPart.js';

/** A closed setting as lines of text. */
export function printSetting(setting: ClosedSetting): readonly TextPart[] {
  const sentence =
    setting.kind === 'turn'
      ? settingSentences.turn({
          degrees: Math.abs(setting.degrees).toFixed(1),
          ...(setting.uncertainty > 0 && { uncertainty: (2 * setting.uncertainty).toFixed(1) }),
          onward: setting.degrees > 0,
        })
      : settingSentences.noChange;
  return [paragraph(sentence), paragraph(settingSentences.again), '', ...printCautions()];
}
