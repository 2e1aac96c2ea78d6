import {
  type Appearance,
  type Connection,
  listOf,
  type Mistake,
  type RatingChecks,
} from '@truesweep/core';
import { codeOf } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Headings of a planned hook-up.
 *
 * @example
 * planWords.closed // => 'closed'
 */
export const planWords = {
  connection: 'Connection',
  closed: 'closed',
  open: 'open',
  looks: 'looks like',
  over: 'harms',
  table: (limiter: string): string =>
    say`What the instrument shows with ${limiter} in the supply lead, right and wrong, and which part is over the rating given:`,
} as const;

/**
 * How a connection shows on the instrument.
 *
 * @example
 * appearanceLabels.reversed // => 'falls, not rises'
 */
export const appearanceLabels: Readonly<Record<Appearance, string>> = {
  'as-right': 'the right one',
  'other-readings': 'other readings',
  reversed: 'falls, not rises',
  'stays-near-common': 'stays near ground',
  'stays-near-source': 'stays near supply',
  'stays-between': 'stays between',
  floats: 'drifts',
  'no-solution': 'no single reading',
};

/**
 * Parts that are over their ratings.
 *
 * @example
 * partOverWords.wiper // => 'wiper'
 */
export const partOverWords: Readonly<Record<keyof RatingChecks, string>> = {
  track: 'track',
  wiper: 'wiper',
  limiter: 'limiting resistor',
  source: 'source',
};

const rightly: Connection = { supply: 'top', ground: 'bottom', signal: 'wiper' };

/** Two leads changed places, or all three moved on. */
function exchangedLabel(connection: Connection): string {
  const moved = (['supply', 'ground', 'signal'] as const).filter(
    (lead) => connection[lead] !== rightly[lead],
  );
  if (moved.length === 2) return say`${moved.join(' and ')} exchanged`;
  return say`all moved, supply at ${connection.supply}`;
}

const leadWords = { supply: 'supply', ground: 'ground', signal: 'signal' } as const;

/**
 * A connection or failure in a few words.
 *
 * @example
 * mistakeLabel({ kind: 'broken-lead', lead: 'ground' }) // => 'ground lead broken'
 */
export function mistakeLabel(mistake: Mistake): string {
  return whole(mistake, 'mistake', () => labelOf(mistake));
}

function labelOf(mistake: Mistake): string {
  switch (mistake.kind) {
    case 'none':
      return 'right';
    case 'exchanged-leads':
      return exchangedLabel(mistake.connection);
    case 'broken-lead':
      return say`${leadWords[mistake.lead]} lead broken`;
    case 'shorted-leads':
      return say`${mistake.leads.map((lead) => say`${leadWords[lead]}`).join(' and ')} leads touch`;
    case 'shorted-terminals':
      return say`${mistake.terminals.map((one) => say`${one}`).join(' and ')} terminals touch`;
    case 'shorted-signal':
      return say`signal touches ${mistake.to}`;
    case 'broken-track':
      return 'track broken at its middle';
    case 'shorted-track':
      return 'track bridged';
    case 'lifted-wiper':
      return 'wiper lifted';
    case 'no-limiter':
      return 'limiting resistor left out';
    case 'wrong-source':
      return say`source of ${mistake.volts} V`;
    case 'reversed-source':
      return 'source reversed';
  }
}

/** What a limiter's choice gives; every quantity written with its unit. */
interface LimiterFacts {
  readonly smallest: string;
  readonly preferred: string;
  readonly spanLost: string;
  readonly power?: string;
}

/**
 * What to take as limiting resistor.
 *
 * @example
 * limiterSentences.impossible('wiper') // => 'No limiting resistor keeps the wiper within its rating: something else must limit.'
 */
export const limiterSentences = {
  chosen: (facts: LimiterFacts): string =>
    whole(facts, 'facts', () => {
      const { smallest, preferred, spanLost, power } = facts;
      return say`Limiting resistor: at least ${smallest}; take ${preferred}${power ? say`, rated ${power} or more` : ''}. It costs ${spanLost} of the span.`;
    }),
  enough: (own: string, smallest: string): string =>
    say`Your ${own} is enough: at least ${smallest} is needed.`,
  asNamed:
    'That holds for the values as named, with the wiper between its stops; parts that may be off by a tolerance need a larger one.',
  noneNeeded:
    'No rating that was given asks for a limiting resistor. That is no reason to leave it out: give the ratings of the wiper and the track, or keep the resistor that you planned.',
  'span-too-small': (facts: LimiterFacts): string =>
    whole(facts, 'facts', () => {
      const { smallest, preferred, spanLost } = facts;
      return say`Limiting resistor: the ratings need ${smallest} (${preferred}), which costs ${spanLost} of the span, more than you want to lose. Lower the source voltage.`;
    }),
  impossible: (part: keyof RatingChecks): string =>
    say`No limiting resistor keeps the ${named([part])} within its rating: something else must limit.`,
  notGiven: (parts: readonly (keyof RatingChecks)[]): string =>
    say`No rating was given for ${named(parts)}, so nothing was judged by it.`,
};

function named(parts: readonly (keyof RatingChecks)[]): string {
  listOf(codeOf(partOverWords))(parts, 'parts');
  return parts.map((part) => partOverWords[part]).join(', ');
}
