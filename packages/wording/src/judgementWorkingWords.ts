import { say } from './say.js';
import { whole } from './whole.js';

/** What the working of the smallest visible departure says. */
export const visibleWorkingWords = {
  title: 'The smallest departure that counts as visible in this recording',
  given: {
    σ: 'noise of the recording, standard deviation',
    n: 'samples of the recording',
    p_f: 'chance of one false departure in a whole recording that is allowed',
    k: 'standard deviations that a normal variable exceeds with that chance, from the normal distribution',
    q: 'smallest step of the readings',
    n_q: 'steps that a departure must exceed',
    U_sp: 'span between the expected closed and open reading',
    f_sp: 'part of the span that a departure must exceed',
    U_r: 'amplitude of the mains ripple',
    n_r: 'amplitudes that a departure must exceed',
  },
  tail: 'Chance per sample and side',
  byNoise: 'Limit by the noise',
  bySteps: 'Limit by the recorder’s steps',
  bySpan: 'Limit by the span',
  byRipple: 'Limit by the mains ripple',
  visible: 'Smallest visible departure: the largest of them',
} as const;

/** What the working of a finding says. */
export const findingWorkingWords = {
  title: (kind: string, travel: string, time: string): string =>
    say`A ${kind} at ${travel} of the travel, after ${time}`,
  given: {
    d: 'how far the signal left its path',
    d_v: 'smallest departure that counts as visible',
    t_1: 'when it begins',
    t_2: 'when it ends',
    T: 'from one sample to the next',
    e: 'logarithm of the odds for it against the best explanation by movement alone, as the judge found them; at most 1000 is told',
  },
  visible: 'Whether it can be seen',
  isVisible: 'It can: noise, steps and ripple seldom do that.',
  isNotVisible: 'By itself it can’t; it counts with all passes over its place.',
  seconds: 'How long it lasts',
  samples: 'How many samples that is',
  leap: 'How long the leap takes',
  odds: 'Power of ten that the odds for it are',
  kinds: {
    dropout:
      'The signal goes to, or toward, the level of a lifted wiper and comes back: a dropout.',
    spike: 'The signal leaps to elsewhere than a lifted wiper’s level and comes back: a spike.',
    step: 'The signal leaps and stays: a step.',
    'dead-spot':
      'The signal stands still while the throttle moves, then leaps to where it should be: a dead spot.',
    rough: 'The signal scatters while the throttle moves: a rough patch.',
  },
  spoken: {
    dropout: 'dropout',
    spike: 'spike',
    step: 'step',
    'dead-spot': 'dead spot',
    rough: 'rough patch',
  },
} as const;

/** What the working of a value held against its limits says. */
export const endWorkingWords = {
  title: (what: string): string => say`${what}, beside its limits`,
  measured: 'what was measured',
  uncertainty: 'its standard uncertainty',
  low: 'lower limit',
  high: 'upper limit',
  expanded: 'Expanded uncertainty, for about 95 %',
  span: 'span between the expected closed and open reading',
  part: 'part of it that is tolerated outside',
  tolerated: 'How far outside is still no failure',
  outside: 'How far outside it lies',
  isTolerated: 'Whether that is tolerated',
  isWithin: 'It is.',
  isBeyond: 'It isn’t.',
  width: 'How far the limits are apart',
  fromNothing: 'How far the limit is from 0, which a single limit counts as wide as',
  needed: 'How far apart they must be, for the uncertainty to tell inside from outside',
  isFine: 'Whether they are',
  fine: 'They are.',
  narrow:
    'The limits are too near to each other for this uncertainty: only what is far from both can be told.',
  fromLow: 'From the value to the lower limit, in standard uncertainties',
  fromHigh: 'From the value to the upper limit, in standard uncertainties',
  conformance: 'Probability that the true value lies within the limits, its error being normal',
  margin: 'Distance to the nearer limit, negative outside',
  inside: 'Whether it lies inside',
  nothing: 'the margin of a value that lies on a limit',
  isInside: 'It does.',
  isOutside: 'It doesn’t.',
  outcomes: {
    conforms: 'The check says: conforms.',
    marginal: 'The check says: marginal. A better or a second reading must settle it.',
    fails: 'The check says: fails.',
    'cannot-tell':
      'The check says: it can’t be told from this recording or reading; the advice says what would tell.',
    'not-judged': 'It was not judged.',
  },
} as const;

/** What the working of departures at one place says. */
export const placeWorkingWords = {
  title: (travel: string): string => say`Departures at one place, ${travel} of the travel`,
  departure: (number: number): string => say`travel of departure ${number}`,
  same: 'departures this close in travel count as one place',
  seen: 'passes that showed it',
  passes: 'passes over it',
  first: 'From the first of them to the last',
  most: 'How far they may reach in all: twice as far as what counts as one place',
  isSpot: 'Whether they reach no farther',
  reaches: 'They reach no farther.',
  placed: 'where the judge puts it: the mean of all departures there',
  apart: 'Largest gap between one departure and the next along the travel',
  near: 'Whether all of them are one place',
  isNear: 'They are.',
  isWide:
    'Farther than that: departures that themselves reach over travel, or others between them of the same pass, join them.',
  share: 'How faithfully the place shows it',
  one: 'One departure alone is a place by itself.',
} as const;

const causes = { track: 'track', connection: 'connection', interference: 'interference' } as const;
type Cause = keyof typeof causes;
const joined = (sources: readonly Cause[]): string =>
  sources.map((one) => say`${causes[one]}`).join(' and ');

/** What the working of the causes' odds says. */
export const causesWorkingWords = {
  title: 'What speaks for track, connection and interference',
  before: (sources: readonly Cause[]): string =>
    whole(
      sources,
      'sources',
      () =>
        say`how common ${joined(sources)} is taken to be beforehand (common practice, no source)`,
    ),
  form: (sources: readonly Cause[]): string =>
    whole(
      sources,
      'sources',
      () =>
        say`logarithm of how well the departures’ forms, lengths and sizes fit ${joined(sources)}`,
    ),
  place: (sources: readonly Cause[]): string =>
    whole(
      sources,
      'sources',
      () => say`logarithm of how well their times and places fit ${joined(sources)}`,
    ),
  weight: (sources: readonly Cause[]): string =>
    whole(
      sources,
      'sources',
      () => say`Weight of ${joined(sources)}, before all are brought to 100 %`,
    ),
  most: 'largest sum of the two logarithms, taken off from all, which changes no odds',
  all: 'All weights together',
  share: (cause: Cause): string =>
    whole(
      cause,
      'cause',
      () => say`Weight of ${causes[cause]}; of two causes together half to each`,
    ),
  table: 'Factor by factor',
  columns: ['Explanation', 'Beforehand', 'Form', 'Time and place', 'Weight'],
  name: (sources: readonly Cause[]): string => whole(sources, 'sources', () => joined(sources)),
} as const;
