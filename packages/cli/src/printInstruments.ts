import { formatQuantity, type QuantityUnit, type Setting } from '@truesweep/core';
import {
  addLoadSentence,
  assumptionSentences,
  instrumentWords,
  settingSentence,
  sightLabels,
  soughtSentence,
  stepByStepSentence,
  triggerWords,
  unprovedSentence,
} from '@truesweep/wording';
import type { InstrumentAdvice } from './adviseInstruments.js';
import { printCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** Which instruments show a worn spot, how to set one, and what a meter alone can do, as text. */
export function printInstruments(advice: InstrumentAdvice): readonly TextPart[] {
  const { title, sought, ranked, setting, meterOnly, digits } = advice;
  const words = instrumentWords;
  const deepest = Math.max(...ranked.map(({ sight }) => sight.peak));
  const assumed = new Set(ranked.flatMap(({ sight }) => sight.assumptions));
  return [
    title,
    paragraph(
      soughtSentence({
        width: text(sought.width, '%'),
        travel: text(sought.travel, '%'),
        lasts: text(sought.width / sought.speed, 's'),
        depth: text(deepest, 'V'),
        passes: sought.passes,
      }),
      '  ',
    ),
    '',
    table(
      [words.instrument, words.onePass, words.allPasses, words.shortest, words.loads, words.sees],
      ranked.map(({ name, sight, loading, reason }) => [
        name,
        text(sight.chance, '%'),
        text(sight.chanceInPasses, '%'),
        lasting(sight.shortest[1]!.inPasses),
        text(loading, 'V'),
        sightLabels[reason],
      ]),
      ['left', 'right', 'right', 'right', 'right', 'left'],
    ),
    paragraph(
      `${words.assumed}: ${[...assumed].map((one) => assumptionSentences[one]).join('; ')}.`,
      '  ',
    ),
    '',
    `${words.digits}:`,
    paragraph(digits.map((shown) => shown || '(blank)').join(' '), '  '),
    '',
    `${words.setting}:`,
    paragraph(
      settingSentence({
        interval: text(setting.interval, 's'),
        timePerDivision: text(setting.timePerDivision, 's'),
        memory: String(setting.memory),
        voltsPerDivision: text(setting.voltsPerDivision, 'V'),
        trigger: triggerText(setting.trigger),
        probe: setting.probe,
      }),
      '  ',
    ),
    '',
    `${words.meterOnly}:`,
    paragraph(
      stepByStepSentence({
        step: text(meterOnly.step, '%'),
        steps: meterOnly.steps,
        wait: text(meterOnly.wait, 's'),
        total: text(meterOnly.total, 's'),
      }),
      '  ',
    ),
    ...(meterOnly.addLoad ? [paragraph(addLoadSentence, '  ')] : []),
    paragraph(unprovedSentence(meterOnly.unproved), '  '),
    '',
    ...printCautions(),
  ];
}

function triggerText(trigger: Setting['trigger']): string {
  return trigger.kind === 'level'
    ? triggerWords.level(trigger.slope, text(trigger.volts, 'V'))
    : triggerWords.pulse(text(trigger.shorterThan, 's'));
}

function lasting(seconds: number): string {
  return Number.isFinite(seconds) ? text(seconds, 's') : '–';
}

function text(value: number, unit: QuantityUnit): string {
  return formatQuantity(value, unit, { digits: 2, trim: true });
}
