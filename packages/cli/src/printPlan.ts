import {
  formatQuantity,
  isDetermined,
  type LimiterChoice,
  type MistakeEffect,
  type NoLimiter,
} from '@truesweep/core';
import {
  appearanceLabels,
  limiterSentences,
  mistakeLabel,
  partOverWords,
  planWords,
} from '@truesweep/wording';
import type { HookUpPlan } from './planHookUp.js';
import { printCautions } from './printCautions.js';
import { paragraph, type TextPart, table } from './textPart.js';

/** A plan as lines of text. */
export function printPlan({
  title,
  limiter,
  choice,
  connections,
}: HookUpPlan): readonly TextPart[] {
  const rows = connections.map(({ mistake, planned }) => [
    mistakeLabel(mistake),
    reading(planned.closed),
    reading(planned.open),
    appearanceLabels[planned.appearance],
    overWords(planned),
  ]);
  const head = [
    planWords.connection,
    planWords.closed,
    planWords.open,
    planWords.looks,
    planWords.over,
  ];
  return [
    title,
    ...advice(choice).map((sentence) => paragraph(sentence, '  ')),
    '',
    paragraph(planWords.table(ohms(limiter))),
    table(head, rows, ['left', 'right', 'right', 'left', 'left']),
    '',
    ...printCautions(),
  ];
}

function advice(choice: LimiterChoice | NoLimiter): readonly string[] {
  if (choice.kind === 'impossible') return [limiterSentences.impossible(choice.binding.part)];
  const { smallest, preferred, powerRating, price, notGiven } = choice;
  const given = {
    smallest: ohms(smallest),
    preferred: ohms(preferred),
    spanLost: formatQuantity(price.spanLost, '%', { digits: 2, trim: true }),
    ...(powerRating !== undefined && {
      power: formatQuantity(powerRating, 'W', { trim: true }),
    }),
  };
  return [
    smallest === 0 ? limiterSentences.noneNeeded : limiterSentences[choice.kind](given),
    ...(notGiven.length > 0 ? [limiterSentences.notGiven(notGiven)] : []),
  ];
}

function overWords({ ratings }: MistakeEffect): string {
  const over = Object.entries(ratings)
    .filter(([, { outcome }]) => outcome === 'over' || outcome === 'over-continuous')
    .map(([part]) => partOverWords[part as keyof typeof partOverWords]);
  return over.length > 0 ? over.join(', ') : '–';
}

function reading(value: MistakeEffect['closed']): string {
  return isDetermined(value) ? formatQuantity(value, 'V', { trim: true }) : '–';
}

function ohms(value: number): string {
  return formatQuantity(value, 'Ω', { trim: true });
}
