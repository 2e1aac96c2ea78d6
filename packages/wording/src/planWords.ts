import type { Appearance, Connection, Mistake, RatingChecks } from '@truesweep/core';

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
  over: 'overloads',
  table: (limiter: string): string =>
    `What the instrument shows with ${limiter} in the supply lead, right and wrong, and which part is over the rating given:`,
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
  'stays-near-common': 'stays near common',
  'stays-near-source': 'stays near source',
  'stays-between': 'stays between',
  floats: 'floats',
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
  if (moved.length === 2) return `${moved.join(' and ')} exchanged`;
  return `all moved, supply at ${connection.supply}`;
}

const leadWords = { supply: 'supply', ground: 'ground', signal: 'signal' } as const;

/**
 * A connection or failure in a few words.
 *
 * @example
 * mistakeLabel({ kind: 'broken-lead', lead: 'ground' }) // => 'ground lead broken'
 */
export function mistakeLabel(mistake: Mistake): string {
  switch (mistake.kind) {
    case 'none':
      return 'right';
    case 'exchanged-leads':
      return exchangedLabel(mistake.connection);
    case 'broken-lead':
      return `${leadWords[mistake.lead]} lead broken`;
    case 'shorted-leads':
      return `${mistake.leads.map((lead) => leadWords[lead]).join(' and ')} leads touch`;
    case 'shorted-terminals':
      return `${mistake.terminals.join(' and ')} terminals touch`;
    case 'shorted-signal':
      return `signal touches ${mistake.to}`;
    case 'broken-track':
      return 'track broken at its middle';
    case 'shorted-track':
      return 'track bridged';
    case 'lifted-wiper':
      return 'wiper lifted';
    case 'no-limiter':
      return 'limiting resistor left out';
    case 'wrong-source':
      return `source of ${mistake.volts} V`;
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
  chosen: ({ smallest, preferred, spanLost, power }: LimiterFacts): string =>
    `Limiting resistor: at least ${smallest}; take ${preferred}${power ? `, rated ${power} or more` : ''}. It costs ${spanLost} of the span.`,
  noneNeeded:
    'No rating that was given asks for a limiting resistor. That is no reason to leave it out: give the ratings of the wiper and the track, or keep the resistor that you planned.',
  'span-too-small': ({ smallest, preferred, spanLost }: LimiterFacts): string =>
    `Limiting resistor: the ratings need ${smallest} (${preferred}), which costs ${spanLost} of the span, more than you want to lose. Lower the source voltage.`,
  impossible: (part: keyof RatingChecks): string =>
    `No limiting resistor keeps the ${partOverWords[part]} within its rating: something else must limit.`,
  notGiven: (parts: readonly (keyof RatingChecks)[]): string =>
    `No rating was given for ${parts.map((part) => partOverWords[part]).join(', ')}, so nothing was judged by it.`,
};
