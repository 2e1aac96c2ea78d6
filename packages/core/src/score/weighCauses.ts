import { logFactorial } from '../statistics/logFactorial.js';
import type { Fraction, Travel } from '../units.js';
import { calibration } from './calibration.js';
import type {
  CauseWeights,
  Contact,
  ContactEvent,
  ContactEvidence,
  TimeSpent,
} from './contactEvent.js';
import type { CauseFactors } from './score.js';
import { findSpots, type SpotEvidence } from './spots.js';

type Source = 'track' | 'connection' | 'interference';

/** What is so of nearly all departures of a recording, or of hardly any: that so many are, or are not. Common practice, no source. */
const nearlyAll = 0.85;
const hardlyAny = 1 - nearlyAll;
/** How many departures of a broken contact go all the way to the level that it leaves: nearly all where it opens, few where it is dirty. */
const allTheWay = [nearlyAll, hardlyAny] as const;
/** How likely it is a jump, which few connections and hardly any foreign voltage make. */
const jumpChance = { track: 0.15, connection: 0.05, interference: 0.002 } as const;
/** How likely it scatters both ways over a stretch: a rough patch, a foreign burst; a contact that opens does not. */
const scatterChance = { track: 0.06, connection: 0.002, interference: 0.12 } as const;
/** How likely a broken contact's goes anywhere else, or both ways. What is left goes toward the level that it leaves, a foreign voltage's up or down. */
const elsewhere = 0.04;
const toward = (source: 'track' | 'connection'): number =>
  1 - jumpChance[source] - scatterChance[source] - elsewhere;
const eitherWay = (1 - jumpChance.interference - scatterChance.interference) / 2;

/** How likely a departure of each cause lasts longer than 8 ms, nearly always or hardly ever in one recording: foreign pulses are short, but ring. */
const longChances = {
  track: [nearlyAll, hardlyAny],
  connection: [nearlyAll, hardlyAny],
  interference: [0.4, 0.04],
} as const;

/** What makes a recording's departures alike: the contact that breaks, and whether it opens or is dirty. */
interface Manner {
  readonly contact: Contact;
  readonly full: number;
}

/** The contacts that each may break: a track its wiper's alone, a connection any lead's. */
const contacts = {
  track: ['wiper'],
  connection: ['wiper', 'supply', 'ground'],
} as const satisfies Record<'track' | 'connection', readonly Contact[]>;

function mannersOf(source: 'track' | 'connection'): readonly Manner[] {
  return contacts[source].flatMap((contact) => allTheWay.map((full) => ({ contact, full })));
}

/** Logarithm of the chance of the forms of events together. */
function logForms(source: Source, events: readonly ContactEvent[]): number {
  const lasting = logMean(
    longChances[source].map((chance) =>
      events.reduce(
        (sum, { long }) => (long === undefined ? sum : sum + Math.log(long ? chance : 1 - chance)),
        0,
      ),
    ),
  );
  if (source === 'interference')
    return (
      events.reduce((sum, one) => sum + Math.log(foreignForm(one)), lasting) +
      logSizes(events.flatMap(foreignSize))
    );
  const ways = mannersOf(source).map((manner) =>
    events.reduce(
      (sum, one) => sum + Math.log(contactForm(source, manner, one)),
      logSizes(events.flatMap((one) => contactSize(manner, one))),
    ),
  );
  return lasting + logMean(ways);
}

/** A size, and how many spans one of its units is. */
interface Size {
  readonly size: number;
  readonly unit: number;
}

/** A foreign pulse's size is its own, of a lifted contact it is a part of its way. */
function foreignSize({ jump, scatter, depth }: ContactEvent): readonly Size[] {
  return jump || scatter ? [] : [{ size: depth, unit: 1 }];
}

function contactSize(
  { contact }: Manner,
  { jump, scatter, goals, depth }: ContactEvent,
): readonly Size[] {
  const goal = goals[contact];
  return jump || scatter || goal === undefined || goal.isFull
    ? []
    : [{ size: goal.part, unit: depth / goal.part }];
}

/** Sizes of one recording are alike within this part, standard deviation, or any. */
const alike = 0.4;

/** Logarithm of the chance density of sizes, each foretold by those before it where they are alike. */
function logSizes(sizes: readonly Size[]): number {
  const units = sizes.reduce((log, { unit }) => log - Math.log(unit), 0);
  return units + logMean([0, logAlike(sizes)]);
}

function logAlike(sizes: readonly Size[]): number {
  let [sum, log] = [0, 0];
  for (const [i, one] of sizes.entries()) {
    const size = Math.log(one.size);
    const variance = alike ** 2 * (1 + 1 / i);
    if (i > 0)
      log -= (size - sum / i) ** 2 / (2 * variance) + Math.log(2 * Math.PI * variance) / 2 + size;
    sum += size;
  }
  return log;
}

/** Logarithm of the mean of what these are the logarithms of. */
function logMean(logs: readonly number[]): number {
  const most = Math.max(...logs);
  return most + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - most), 0) / logs.length);
}

function contactForm(
  source: 'track' | 'connection',
  { contact, full }: Manner,
  { jump, scatter, lead = 0, goals }: ContactEvent,
): number {
  if (jump) return jumpChance[source] * (source === 'connection' ? Math.exp(lead) : 1);
  if (scatter) return scatterChance[source];
  const reached = goals[contact];
  if (reached === undefined) return elsewhere;
  // All of it within the slack, as a density like those of sizes.
  return toward(source) * (reached.isFull ? full / reached.slack : 1 - full);
}

function foreignForm({ jump, scatter }: ContactEvent): number {
  if (jump) return jumpChance.interference;
  return scatter ? scatterChance.interference : eitherWay;
}

/** How common a contact of either kind, and one of them together with foreign voltages, is taken to be beforehand; common practice, no source. */
const contactAlone = 0.36;
const withForeign = 0.03;
const prior: readonly (readonly [readonly Source[], number])[] = [
  [['track'], contactAlone],
  [['connection'], contactAlone],
  [['interference'], 1 - 2 * (contactAlone + withForeign)],
  [['track', 'interference'], withForeign],
  [['connection', 'interference'], withForeign],
];

/** A worn spot under a wiper at rest rarely opens; of its events this part is taken to fall into rests, but for those at a spot that passes show. */
const spotAtRest = 0.02;

/** Departures explained by some causes together, with how probable that is and what makes it so. */
export interface Explanation extends CauseFactors {
  readonly weight: Fraction;
  /** The findings that it takes for foreign voltages. */
  readonly foreign: ReadonlySet<number>;
}

/**
 * Weighs what departures come from. A connection's, and foreign voltages, come at random times (Poisson, of unknown
 * rate); a worn spot's come at one travel, on each pass with an unknown chance. The chances are integrated over
 * (exponential and uniform priors), so that few events decide little. Departures of one recording resemble each other for more reasons
 * than are modelled, so the likelihoods are tempered: raised to a power that makes the weights hold.
 *
 * Method: Bayes factors of a Poisson process in time against a beta-binomial one in travel (R. E. Kass and
 * A. E. Raftery, J. Am. Stat. Assoc. 90 (1995); from memory); a tempered, or power, posterior (from memory).
 *
 * @returns The explanations with their weights, which add up to 1, the likeliest first; tempering makes some later ones heavier.
 */
export function weighCauses(evidence: ContactEvidence): readonly Explanation[] {
  const { spent } = evidence;
  const found = prior.flatMap(([sources, before]) => {
    const split = assign(evidence, sources);
    if (sources.length > 1 && sources.some((source) => split[source].length === 0)) return [];
    let [form, place] = [0, 0];
    for (const source of sources) {
      form += logForms(source, split[source]);
      place +=
        source === 'track'
          ? logTrack({ ...evidence, events: split.track })
          : logRandom(split[source], source, spent);
    }
    const foreign = new Set(split.interference.map(({ finding }) => finding));
    return [{ sources, before, form, place, foreign }];
  });
  const tempered = found.map(({ form, place, ...one }) => ({
    ...one,
    form: roundedLog(calibration.causes.power * form),
    place: roundedLog(calibration.causes.power * place),
  }));
  const most = Math.max(...tempered.map(({ form, place }) => form + place));
  const weights = tempered.map(({ before, form, place }) => before * Math.exp(form + place - most));
  const sum = weights.reduce((total, one) => total + one, 0);
  return tempered
    .map((one, i) => ({
      explanation: { ...one, weight: weights[i]! / sum },
      logWeight: Math.log(one.before) + found[i]!.form + found[i]!.place,
    }))
    .sort((a, b) => b.logWeight - a.logWeight)
    .map(({ explanation }) => explanation);
}

/** Engines differ in the last digits of a logarithm. */
const roundedLog = (nats: number): number => Math.round(1e6 * nats) / 1e6;

/** The weight of each cause: of two causes together, half to each. */
export function sharesOf(explanations: readonly Explanation[]): CauseWeights {
  const shares = { track: 0, connection: 0, interference: 0 };
  for (const { sources, weight } of explanations) {
    for (const source of sources) shares[source] += weight / sources.length;
  }
  return shares;
}

/** Gives each event to one of the sources: its own where there is one, else to the one that its place or its form makes likelier. */
function assign(
  evidence: ContactEvidence,
  sources: readonly Source[],
): Readonly<Record<Source, readonly ContactEvent[]>> {
  const split: Record<Source, ContactEvent[]> = { track: [], connection: [], interference: [] };
  const repeated = new Set(
    findSpots(evidence)
      .filter(({ seen }) => seen >= 2)
      .flatMap((spot) => spot.events.map(({ finding }) => finding)),
  );
  for (const event of evidence.events) {
    const [first, second] = sources as readonly [Source, Source?];
    const isTracks = repeated.has(event.finding) || event.jump;
    if (!second || (first === 'track' && isTracks)) split[first].push(event);
    else split[logForms(first, [event]) < logForms(second, [event]) ? second : first].push(event);
  }
  return split;
}

/** Logarithm of the chance density of the times of events that come at random. */
function logRandom(
  events: readonly ContactEvent[],
  source: 'connection' | 'interference',
  { whole, flexed }: TimeSpent,
): number {
  const count = events.length;
  let sum = logFactorial(count) - (count + 1) * Math.LN2;
  for (const event of events) {
    const { stretch } = event;
    const evenly = 1 / whole;
    const isFlexed = source === 'connection' && flexed > 0;
    const density = isFlexed
      ? evenly / 2 + (stretch === 'harness-flexed' ? 1 / (2 * flexed) : 0)
      : evenly;
    sum += Math.log(density);
  }
  return sum;
}

/** Logarithm of the chance density of the places of events at worn spots. */
function logTrack(evidence: ContactEvidence): number {
  const { whole, resting, tapped } = evidence.spent;
  const spots = findSpots(evidence);
  let sum = 0;
  for (const { pass, stretch, travel } of evidence.events) {
    if (pass !== undefined) continue;
    const isTapped = stretch === 'housing-tapped' && tapped > 0;
    // There it speaks neither for the spot nor against it.
    const isAtSpot = spots.some((spot) => Math.abs(spot.travel - travel) <= evidence.sameTravel);
    const atRest = isAtSpot ? 1 / whole : spotAtRest / Math.max(resting, 1e-3);
    sum += Math.log(isTapped ? 1 / (2 * tapped) : atRest);
  }
  for (const spot of spots) sum += logSpot(spot, evidence.sameTravel);
  return sum;
}

/** A spot somewhere on the travel, seen on some of its passes, missed on the others. */
function logSpot({ events, seen, passes }: SpotEvidence, sameTravel: Travel): number {
  const count = events.length;
  const mean = events.reduce((sum, { travel }) => sum + travel, 0) / count;
  const squares = events.reduce((sum, { travel }) => sum + (travel - mean) ** 2, 0);
  // A departure that goes over much travel was anywhere on it.
  const wide = events.reduce((sum, { extent }) => sum + extent ** 2, 0) / count / 12;
  // Nearly all that come at one place lie within two standard deviations.
  const variance = (sameTravel / 2) ** 2 + wide;
  const places =
    (-(count - 1) / 2) * Math.log(2 * Math.PI * variance) -
    Math.log(count) / 2 -
    squares / (2 * variance);
  const speeds = events.reduce((sum, { speed }) => sum + Math.log(Math.max(speed, 0.02)), 0);
  const chance = logFactorial(seen) + logFactorial(passes - seen) - logFactorial(passes + 1);
  return places + speeds + chance - Math.LN2;
}
