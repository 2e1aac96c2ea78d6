import {
  type Amps,
  type CurrentRating,
  chooseLimiter,
  formatQuantity,
  isDetermined,
  type LimiterChoice,
  type MistakeEffect,
  type NoLimiter,
  type PowerRating,
  parseQuantity,
  type Ratings,
  type Watts,
  type WrongConnection,
  wrongConnections,
} from '@truesweep/core';
import { type Job, jobCircuit } from '@truesweep/jobs';
import {
  appearanceLabels,
  limiterSentences,
  mistakeLabel,
  partOverWords,
  planWords,
} from '@truesweep/wording';
import { alignColumns } from './alignColumns.js';
import { printCautions } from './printCautions.js';
import { wrapText } from './wrapText.js';

/** A planned hook-up: the limiter's choice and what wrong connections do with the job's own limiter. */
export interface HookUpPlan {
  readonly title: string;
  readonly limiter: number;
  readonly choice: LimiterChoice | NoLimiter;
  readonly connections: readonly WrongConnection[];
}

/** Ratings and wishes as they were typed. */
export interface PlanWishes {
  readonly wiperCurrent?: string;
  readonly trackPower?: string;
  readonly sourceCurrent?: string;
  readonly span?: string;
  readonly otherSource?: string;
}

/**
 * Plans the hook-up of a job.
 *
 * @throws InputError for a wish that is no such quantity.
 */
export function planHookUp(job: Job, wishes: PlanWishes): HookUpPlan {
  const { wiperCurrent, trackPower, sourceCurrent, span, otherSource } = wishes;
  const ratings: Ratings = {
    ...(wiperCurrent && { wiper: current(parseQuantity(wiperCurrent, 'A', '--wiper-current')) }),
    ...(trackPower && { track: power(parseQuantity(trackPower, 'W', '--track-power')) }),
    ...(sourceCurrent && {
      source: current(parseQuantity(sourceCurrent, 'A', '--source-current')),
    }),
  };
  const other = otherSource && parseQuantity(otherSource, 'V', '--other-source');
  const circuit = jobCircuit(job);
  const choice = chooseLimiter(circuit, ratings, {
    ...(span && { span: parseQuantity(span, '%', '--span') }),
    ...(other && { otherSource: other }),
  });
  const connections = wrongConnections(circuit, ratings, ...(other ? [other] : []));
  return { title: job.title, limiter: circuit.limiter, choice, connections };
}

/** A continuous rating alone is kept by every mistake too: what the part stands for a moment isn't known. */
function current(amps: Amps): CurrentRating {
  return { amps, shortTerm: amps };
}

function power(watts: Watts): PowerRating {
  return { watts, shortTerm: watts };
}

/** A plan as lines of text. */
export function printPlan({ title, limiter, choice, connections }: HookUpPlan): readonly string[] {
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
    ...advice(choice).flatMap((sentence) => wrapText(sentence, '  ')),
    '',
    ...wrapText(planWords.table(formatQuantity(limiter, 'Ω', { trim: true })), ''),
    ...alignColumns([head, ...rows], ['left', 'right', 'right', 'left', 'left']).map(
      (line) => `  ${line}`,
    ),
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
