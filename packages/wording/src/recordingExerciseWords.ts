import { say } from './say.js';
import { whole } from './whole.js';

/** Exercises on whether a recorder shows a dropout. */
export const visibilityExerciseWords = {
  sampled: (interval: string, length: string): string =>
    say`A logger takes a reading every ${interval}, each in no time. While a throttle sensor is turned, its wiper lifts once, for ${length}.`,
  averaged: (
    facts: Readonly<Record<'interval' | 'aperture' | 'share' | 'length', string>>,
  ): string =>
    whole(
      facts,
      'facts',
      () =>
        say`A meter takes a reading every ${facts.interval} and averages over ${facts.aperture} for it. A dropout must fill ${facts.share} of that time to be seen. While a throttle sensor is turned, its wiper lifts once on each pass, for ${facts.length}.`,
    ),
  limits: (
    facts: Readonly<
      Record<'source' | 'noise' | 'resolution' | 'span' | 'deviations' | 'steps' | 'part', string>
    >,
  ): string =>
    whole(facts, 'facts', () => {
      const { source, noise, resolution, span, deviations, steps, part } = facts;
      return say`A throttle sensor is fed from ${source}; its readings at the two stops lie ${span} apart. The recorder’s noise has a standard deviation of ${noise}, and its readings come in steps of ${resolution}. A departure counts as visible if it reaches ${deviations} standard deviations, ${steps} steps and ${part} of the span.`;
    }),
  asksChance: 'How probable is it that a reading shows it? Answer in percent or as a fraction.',
  asksOne: 'How probable is it that one pass shows it? Answer in percent or as a fraction.',
  asksAll: (passes: number): string =>
    say`How probable is it that at least one of ${passes} passes shows it? Answer in percent or as a fraction.`,
  asksVisible: 'What is the smallest departure that is visible?',
  asksSetBy: 'What sets it?',
  hintSampled: 'Any moment between two readings is as likely as another for the dropout to begin.',
  hintAveraged:
    'Find for how long the dropout may begin so that it fills enough of one reading’s time. Over several passes it is the chance that all miss it that multiplies.',
  hintLimits: 'Work out all three limits. The departure must reach each of them.',
  titleChance: 'The chance that a reading shows the dropout',
  titleAll: (passes: number): string =>
    say`The chance that at least one of ${passes} passes shows it`,
  titleVisible: 'The smallest visible departure',
  setBy: (limit: string): string => say`It is set by ${limit}.`,
  limitNames: { noise: 'the noise', resolution: 'the steps', span: 'the span' },
  notLargest: (limit: string, visible: string): string =>
    say`That comes to ${limit} only. The largest limit decides, and that is ${visible}.`,
  finds: {
    T: 'From one reading to the next',
    t_d: 'Length of the dropout',
    p: 'Chance that a reading shows it',
    a: 'Time that a reading averages over',
    θ: 'Part of that time that the dropout must fill',
    n: 'Passes',
    p_1: 'Chance that one pass shows it',
    p_n: 'Chance that at least one pass shows it',
    σ: 'Standard deviation of the noise',
    k: 'Standard deviations that are visible',
    q: 'Step of the readings',
    m: 'Steps that are visible',
    S: 'Span between the readings at the stops',
    s: 'Part of the span that is visible',
    D_n: 'Limit by the noise',
    D_q: 'Limit by the steps',
    D_s: 'Limit by the span',
    D: 'Smallest visible departure: the largest limit',
  },
  rules: {
    phase: {
      name: 'Every phase against the readings is as likely',
      source: 'own derivation',
    },
    passes: { name: 'Chances to miss multiply', source: 'definition of independent events' },
    visible: {
      name: 'What is visible must reach every limit',
      source: 'common practice, no source',
    },
  },
  mistakes: {
    missed: 'That is the chance to miss it. The chance to show it is the rest up to 100 %.',
    ofBoth:
      'You compared with interval and dropout together. Only where the dropout begins between two readings counts.',
    always: 'A dropout that is shorter than the interval can fall between two readings.',
    halved: 'You halved it. Either the reading falls into the dropout or it doesn’t.',
    forgotAperture:
      'You left out the time that a reading averages over. It widens what a reading can catch.',
    forgotShare:
      'You let any overlap count. The dropout must fill its part of the reading’s time, at both ends.',
    shareOnce: 'You took the part off once. It is lost at both ends of the reading’s time.',
    onePass: 'That is the chance of one pass. More passes give more chances.',
    addedPasses:
      'You added the chances up. Some passes would show it together: multiply the chances to miss it.',
    everyPass: 'That is the chance that every pass shows it. One pass is enough.',
    smallest: 'You took the smallest limit. The departure must reach each, so the largest decides.',
    addedLimits: 'You added the limits up. The largest alone decides.',
    rootOfSquares: 'You combined the limits like uncertainties. The largest alone decides.',
    noise:
      'One standard deviation is passed by a third of all readings. It must be the given number of them.',
    resolution: 'One step can be rounding. It must be the given number of them.',
    span: 'You took the part of the source’s voltage. It is a part of the span between the stops.',
  },
} as const;

/** The hook-up of a drawn sweep, and whether the throttle was let go at its end. */
interface GivenSweep extends Readonly<Record<'source' | 'limiter' | 'track' | 'load', string>> {
  readonly snaps: boolean;
}

/** Exercises on a drawn sweep. */
export const traceExerciseWords = {
  question: (facts: GivenSweep): string =>
    whole(facts, 'facts', () => {
      const { source, limiter, track, load, snaps } = facts;
      const last = snaps
        ? ' At the end it was opened a little and let go; the rebounds on the stop are normal.'
        : '';
      return say`The drawing shows a throttle sensor from an outboard, fed from ${source} through ${limiter}, track ${track}, with ${load} from the signal to common. The throttle was opened and closed by hand several times, with a rest at each stop.${last}`;
    }),
  hint: 'Look whether the departures lie at one height of the trace on every pass, whether any lies in a rest, and which way the signal leaves its path.',
  asksFault: 'What is wrong?',
  asksTravel: 'At which travel does it lie, in percent from closed to open?',
  asksPasses: 'On how many passes does it show? Each opening and each closing is a pass.',
  asksCount: 'How many departures are there?',
  titleTravel: 'Where it lies',
  titleSpread: 'How far apart the departures lie',
  faults: {
    'worn-spot': 'A worn or dirty spot on the track',
    'loose-connection': 'A loose connection in the signal lead',
    interference: 'Interference from outside',
    'shifted-track': 'A cracked track: from one place on it reads another line',
    'dead-spot': 'A dead spot: a stretch without change, then a jump',
    'rough-track': 'A rough stretch of track',
  },
  looks: {
    'worn-spot': 'A worn spot drops the signal at one travel, pass after pass',
    'loose-connection': 'A loose connection drops the signal at any travel, also at rest',
    interference: 'Interference pushes the signal either way, whatever the throttle does',
    'shifted-track':
      'A crack moves the signal to another line, and it stays there until the way back',
    'dead-spot':
      'A dead spot holds the signal still while the throttle moves on, and then it jumps',
    'rough-track': 'A rough stretch scatters the signal while the wiper moves over it',
  },
  seen: {
    'worn-spot':
      'The signal drops toward 0 V at the same travel each time: that is the track, worn or dirty there.',
    'loose-connection':
      'The signal drops to 0 V at travels far apart, once even at rest: that is a connection, not the track.',
    interference:
      'The signal leaves its path both up and down, at travels far apart, once even at rest: that comes from outside.',
    'shifted-track':
      'The signal jumps at the same travel each time and stays on another line beyond it: that is a crack in the track.',
    'dead-spot':
      'The signal stands still over the same travel each time and then jumps: that is a dead spot, not a pause of the hand.',
    'rough-track':
      'The signal scatters over the same travel each time, and only there: that is a rough stretch of track.',
  },
  notThat: (looks: string): string =>
    say`${looks}. Look again where on the travel the departures lie, and whether any comes while the throttle rests.`,
  finds: {
    V_c: 'Reading at the closed stop',
    V_o: 'Reading at the open stop',
    V: 'Reading of the path where it leaves it',
    V_1: 'Reading of the path at the lowest departure',
    V_2: 'Reading of the path at the highest departure',
    t: 'Travel there, from closed to open',
    t_1: 'Travel of the lowest departure',
    t_2: 'Travel of the highest departure',
    Δt: 'How far apart they lie',
  },
  mistakes: {
    fromOpen: 'You counted from the open stop. Travel counts from closed to open.',
    ofSource:
      'You divided the reading by the source’s voltage. Travel runs between the readings at the two stops.',
    ofOpen:
      'You divided by the open reading. The closed reading is not 0 V: take it off both first.',
    allPasses: 'That is all passes. On some of them it doesn’t show.',
    rounds: 'You counted there and back as one pass. Each opening and each closing is one.',
    bothEdges: 'You counted both edges. The signal leaves its path and comes back: that is one.',
    movingOnly: 'You left out what happens at rest. That counts too, and says most.',
    countedPasses: 'That is the number of passes. Count the departures.',
  },
} as const;
