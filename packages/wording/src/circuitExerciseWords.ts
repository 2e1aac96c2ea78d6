import { say } from './say.js';
import { whole } from './whole.js';

/** A hook-up as it stands in a question; a limiter only where there is one. */
interface GivenBench {
  readonly source: string;
  readonly limiter?: string;
  readonly track: string;
  readonly position: string;
}

/** The same with what loads its signal; a pull-up only where there is one. */
interface GivenLoad extends GivenBench {
  readonly load: string;
  readonly pullUp?: { readonly ohms: string; readonly volts: string };
}

function hookedUp({ source, limiter, track, position }: GivenBench): string {
  const fed =
    limiter === undefined
      ? say`On the boat the control unit feeds the throttle sensor of an outboard with ${source}.`
      : say`On the workshop’s bench a throttle sensor from an outboard is fed from ${source} through a limiting resistor of ${limiter}.`;
  return say`${fed} Its track has ${track}; the wiper stands at ${position} of it, from the grounded end.`;
}

const forgotLimiter =
  'You took the whole source voltage at the track’s top. The limiting resistor takes its share first.';
const wholeTrack =
  'You took the whole track for what lies before the load. The two sides of the wiper lie side by side, so it is far less.';

/** Exercises on the reading with a load. */
export const loadingExerciseWords = {
  question: (facts: GivenLoad): string =>
    whole(facts, 'facts', () => {
      const { load, pullUp } = facts;
      const up =
        pullUp === undefined
          ? ''
          : say` A pull-up of ${pullUp.ohms} leads from the signal to ${pullUp.volts}.`;
      return say`${hookedUp(facts)} A load of ${load} lies from the signal to common.${up}`;
    }),
  asks: 'What does the signal read, in volts?',
  hint: 'Find the reading without the load first, and what the parts on both sides of the wiper come to side by side. That resistance and the load divide the reading once more.',
  hintWithPullUp:
    'Take the sensor as one source behind one resistance, and load and pull-up together as another. The reading lies between the two.',
  mistakes: {
    forgotLimiter,
    wholeTrack,
    forgotLoad:
      'That is the reading without the load. The load pulls the signal toward the voltage that it leads to.',
    forgotPullUp: 'You left the pull-up out. It lifts the signal toward its own voltage.',
    forgotPullDown: 'You left the load to common out. It pulls the signal down.',
    pullUpToCommon:
      'You let the pull-up lead to common. It leads to its own voltage and lifts the signal.',
    added:
      'You added the load to the part of the track below the wiper. The two lie side by side: their conductances add up.',
    loadAlone:
      'You took the load in place of the part of the track below the wiper. Both are there, side by side.',
  },
} as const;

/** Exercises on what a meter's input takes away. */
export const meterExerciseWords = {
  question: (facts: GivenBench, meter: string): string =>
    whole(facts, 'facts', () => say`${hookedUp(facts)} ${meter}`),
  input: (ohms: string): string =>
    say`A needle meter with an input of ${ohms} is put from the signal to common.`,
  needle: (range: string, current: string): string =>
    say`A needle meter is put from the signal to common, on its range of ${range}; at the end of that range it draws ${current}.`,
  wanted: (part: string): string =>
    say`A meter is wanted whose input takes away no more than ${part} of the reading that the signal has without it.`,
  asksVolts: 'By how many volts does the meter lower the reading?',
  asksPart: 'Which part of the reading without the meter does it take away, in percent?',
  asksInput: 'Which input resistance must it have at least?',
  hint: 'The meter sees the two sides of the wiper side by side. That resistance and the input divide the reading without the meter.',
  hintNeedle:
    'The range over its current is the meter’s input resistance. Then see what lies before it: the two sides of the wiper, side by side.',
  hintInput:
    'Find the resistance that the meter sees. It takes the part that may be lost; the input keeps the rest of the reading.',
  titleVolts: 'What the meter takes away',
  titlePart: 'Which part of the reading the meter takes away',
  titleInput: 'The least input resistance',
  finds: {
    R_m: 'Input resistance of the meter',
    U_r: 'Range of the meter',
    I_r: 'Current of the meter at the end of its range',
    R_w: 'Resistance that the meter sees: both sides of the wiper, side by side',
    ΔV: 'What the meter takes away',
    p: 'What the meter takes away, as a part of the reading without it',
  },
  mistakes: {
    forgotLimiter:
      'You left the limiting resistor out. It is part of the way from the wiper up to the source.',
    wholeTrack,
    shown:
      'That is what the meter shows. What it takes away is the rest up to the reading without it.',
    added:
      'You added the two sides of the wiper. To the meter they lie side by side: their conductances add up.',
    belowOnly:
      'You took only the part of the track below the wiper. The way up to the source lies beside it.',
    inputAlone:
      'You compared with the input alone. The resistance before the meter and its input divide the reading together.',
    ofSource:
      'That is a part of the source’s voltage. A part of the reading without the meter is asked.',
    ofShown:
      'That is a part of what the meter shows. A part of the reading without the meter is asked.',
    readingForRange:
      'You divided the reading by the current. A meter’s current belongs to the end of its range, so the range over the current is its input.',
    timesPart:
      'You multiplied by the part. The smaller the part that may be taken, the larger the input must be.',
  },
} as const;

/** What a hook-up's parts bear, for good and for a moment; each only where it is told. */
interface GivenRatings {
  readonly source: string;
  readonly inside?: string;
  readonly track: string;
  readonly wiper?: readonly [continuous: string, short: string];
  readonly rated?: readonly [continuous: string, short: string];
}

/** Exercises on the smallest limiting resistor. */
export const limiterExerciseWords = {
  question: (facts: GivenRatings): string =>
    whole(facts, 'facts', () => {
      const { source, inside, track, wiper, rated } = facts;
      const behind = inside === undefined ? '' : say` with ${inside} inside`;
      const ofWiper =
        wiper === undefined
          ? ''
          : say` Its wiper bears ${wiper[0]} for good and ${wiper[1]} for a moment.`;
      const ofTrack =
        rated === undefined
          ? ''
          : say` Its track bears ${rated[0]} for good and ${rated[1]} for a moment, each as though the whole track carried the current.`;
      return say`An unmarked throttle sensor is to be fed from a bench source of ${source}${behind}. Its track has ${track}.${ofWiper}${ofTrack} If the ground lead sits on the wiper by mistake and the wiper stands at the fed end, only the limiting resistor is left to hold the current down. A mistake lasts a moment only.`;
    }),
  asks: 'How many ohms must the limiting resistor have at least?',
  asksPreferred: 'Which value of the E24 series do you take?',
  hint: 'Begin with the current that may flow for a moment in the worst place of the wiper. Ohm’s law gives the resistance.',
  title: 'The smallest limiting resistor',
  conclusion: (preferred: string): string =>
    say`Of the E24 series that takes ${preferred}, the next value up. The maker’s ratings come before any sum.`,
  finds: {
    I_wip: 'Current that the wiper bears for a moment',
    P_t: 'Heat that the whole track bears for a moment',
    I_trk: 'Current that the track bears for a moment',
    R_wip: 'Resistance that keeps the wiper’s rating',
    R_trk: 'Resistance that keeps the track’s rating',
    R_s: 'Limiting resistor: the larger one, without what is inside the source',
  },
  mistakes: {
    continuous:
      'You took the rating for good. For a mistake, which lasts a moment, the short rating holds.',
    countedTrack:
      'You counted on the track. With the wiper at the fed end the current takes none of it: the limiting resistor stands alone.',
    trackForLimiter:
      'That is the track’s resistance. The limiting resistor is found from the source and the current that may flow.',
    powerOfLimiter:
      'You let the limiting resistor make the track’s heat. The heat is made in the track: find the current there first.',
    forgotInside: 'You left out what is inside the source. It lies in series and takes its share.',
    addedInside:
      'You added what is inside the source. It is there already, so the limiting resistor may be smaller by it.',
    smaller: 'You took the smaller of the two. The larger one keeps both ratings.',
    tooSmall: 'That is below the smallest resistance: a rating would be passed. Round up.',
    needlesslyLarge:
      'That protects, but takes more of the span than it must. The next value up is enough.',
  },
} as const;

/** A hook-up with its tolerances; limiter and load only where there are any. */
interface GivenWindow {
  readonly source: string;
  readonly limiter?: string;
  readonly track: string;
  readonly load?: string;
  readonly stop: string;
  readonly place: string;
  readonly reach: string;
}

/** Exercises on the windows for the closed and the open reading. */
export const windowExerciseWords = {
  question: (facts: GivenWindow): string =>
    whole(facts, 'facts', () => {
      const { source, limiter, track, load, stop, place, reach } = facts;
      const fed =
        limiter === undefined
          ? say`The control unit of a tiller outboard feeds its throttle sensor with ${source}.`
          : say`A throttle sensor from a tiller outboard is fed from ${source} through a limiting resistor of ${limiter}.`;
      const loaded =
        load === undefined ? '' : say` A bench load of ${load} lies from the signal to common.`;
      return say`${fed} Its track has ${track}.${loaded} At the ${stop} stop the wiper of a sound sensor stands at ${place} of the track, give or take ${reach} of the track.`;
    }),
  around: (value: string, tolerance: string): string => say`${value} ± ${tolerance}`,
  stops: { closed: 'closed', open: 'open' },
  ends: { low: 'lowest', high: 'highest' },
  asks: (end: string, stop: string): string =>
    say`What is the ${end} reading at the ${stop} stop that a sound sensor can show?`,
  hint: 'Put each part at the end of its tolerance that moves the reading the same way.',
  hintWithLimiter:
    'Put each part at the end of its tolerance that moves the reading the same way. A larger limiting resistor lowers it.',
  title: (end: string, stop: string): string => say`The ${end} reading at the ${stop} stop`,
  toleranceOf: (part: string): string => say`tolerance: ${part}`,
  endOf: (part: string): string => say`at the end of its tolerance: ${part}`,
  finds: {
    x: 'Where the wiper stands at that stop, as a part of the track from its bottom end',
    d_x: 'How far the wiper may be from there, as a part of the track',
    x_e: 'Where the wiper stands at the end of its tolerance',
  },
  rules: {
    corner: {
      name: 'Extremes lie where each part is at an end of its tolerance',
      source: 'own derivation: the reading is a quotient of straight lines in each resistance',
    },
  },
  mistakes: {
    nominal: 'That is the reading of nominal parts. Put each part at the end of its tolerance.',
    otherEnd: 'That is the other end of the window. Look which way each part moves the reading.',
    forgotSource: 'You left out the source’s tolerance. The reading follows the source.',
    forgotPlace: 'You left out how far the wiper may be from its place at the stop.',
    forgotLimiter,
    forgotLoad: 'You left out the load. It pulls the reading down.',
    forgotResistances:
      'You left out the tolerances of the resistances. They shift how the source’s voltage is shared.',
    wrongWay:
      'You turned the limiting resistor’s tolerance the wrong way. A larger limiting resistor lowers the reading.',
    ofPlace:
      'You took the wiper’s tolerance as percent of its place. It is given as percent of the track.',
    addedUp:
      'You added the tolerances up as percentages of the reading. Only the source’s goes in whole; those of the resistances shift how it is shared.',
  },
} as const;
