import {
  type Criteria,
  checkScore,
  defaultCriteria,
  formatQuantity,
  loosenedCriteria,
  type Score,
  troubleCodes,
  wholeCriteria,
} from '@truesweep/core';
import { adviceSentences } from './advice.js';
import { causeLabels, causeMeanings } from './causes.js';
import { checkLabels, visibleSetByLabels } from './checks.js';
import { criterionLabels, criterionUnits, loosenedSentence } from './criteriaWords.js';
import {
  abruptSentence,
  blindSentence,
  coverageSentence,
  missedSentence,
  morePassesSentence,
  movementUnknownSentence,
  narrowestSpotSentence,
  onlyLeapsSentence,
  openTrackSentence,
  shortPassSentence,
  spotSentence,
  surePassSentence,
  sureReasonSentence,
  testsNotDoneSentence,
} from './evidenceSentences.js';
import {
  movementSentence,
  smoothedSentence,
  supplyAssumedSentence,
  uncertaintyAssumedSentence,
  visibilitySentence,
} from './recordingSentences.js';
import { samplingLabels } from './reportWords.js';
import { say } from './say.js';
import { stampsSentence } from './stampsSentence.js';
import { troubleCodesSentence, troubleMeanings } from './troubleCodes.js';
import { unitSentences } from './unitSentences.js';
import { verdictMeanings } from './verdicts.js';
import { whole } from './whole.js';

/** So many places are enough to show where the trouble lies. */
const mostPlaces = 3;

/** A score in sentences, each list in the order to be read. */
export interface ScoreSentences {
  /** What the verdict says of the sensor, and what it lacks. */
  readonly verdict: string;
  /** The limits that are looser than usual, where there are any. */
  readonly loosened: readonly string[];
  /** How probable it is that the verdict is right, where that can be told. */
  readonly sure: readonly string[];
  /** What the trouble comes from, the best supported first. */
  readonly cause: readonly string[];
  /** What to do next, in order. */
  readonly next: readonly string[];
  /** Departures in a recording through a capacitor. */
  readonly abrupt: readonly string[];
  /** Where departures came again. */
  readonly places: readonly string[];
  /** What would part the track from a connection. */
  readonly tests: readonly string[];
  /** The standard trouble codes that such a fault can set. */
  readonly codes: readonly string[];
  /** What the throttle did, as counts. */
  readonly movement: string;
  /** How much of the travel was seen. */
  readonly seen: readonly string[];
  /** What the recording could have shown. */
  readonly couldShow: readonly string[];
  /** What was assumed of the stamps, where they were not taken as they stand. */
  readonly stamps: readonly string[];
  /** What nobody measured or told, and was assumed. */
  readonly assumed: readonly string[];
}

/**
 * What a score says, in sentences.
 *
 * @param limits Those that the score was judged by.
 *
 * @example
 * import { defaultCriteria, expectation, scoreSweep } from '@truesweep/core';
 * const still = { time: Float64Array.of(0, 1, 2), signal: Float64Array.of(0, 0, 0) };
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const score = scoreSweep(still, expectation(circuit, {}));
 * scoreSentences(score, defaultCriteria).movement // => '0 openings and 0 closings.'
 */
export function scoreSentences(score: Score, limits: Partial<Criteria>): ScoreSentences {
  checkScore(score, 'score');
  const criteria = wholeCriteria(limits);
  return whole(score, 'score', () => saidOf(score, criteria));
}

function saidOf(score: Score, criteria: Criteria): ScoreSentences {
  const { spots, morePasses, testsNotDone, causes } = score;
  const again = spots.filter(({ seen }) => seen > 1).slice(0, mostPlaces);
  const inQuestion = causes.some(({ cause }) => cause === 'track' || cause === 'connection');
  const assumed = stampsSentence(score.quality);
  const codes = troubleCodes(score).map(
    ({ code, kind }) => say`${code} (${troubleMeanings[kind]})`,
  );
  return {
    verdict: verdictSentence(score),
    loosened: loosenedSentences(criteria),
    sure: howSure(score),
    cause: causeSentences(score),
    next: nextSteps(score, criteria),
    abrupt: abruptDepartures(score),
    places: again.map(({ travel, seen, passes }) =>
      spotSentence({ travel: percent(travel), seen: String(seen), passes: String(passes) }),
    ),
    tests: [
      ...(morePasses ? [morePassesSentence(String(morePasses))] : []),
      ...(inQuestion && testsNotDone.length > 0 ? [testsNotDoneSentence(testsNotDone)] : []),
    ],
    codes: codes.length > 0 ? [troubleCodesSentence(codes)] : [],
    movement: score.abrupt ? movementUnknownSentence : movement(score),
    seen: score.abrupt ? [] : [coverageOf(score, criteria)],
    couldShow: score.abrupt ? [onlyLeapsSentence] : visibility(score),
    stamps: assumed === undefined ? [] : [assumed],
    assumed: [
      ...(score.supplyAssumed ? [supplyAssumedSentence] : []),
      ...(score.uncertaintyAssumed ? [uncertaintyAssumedSentence] : []),
    ],
  };
}

function verdictSentence({ verdict, advice, restsOn }: Score): string {
  return advice.includes('complete-recording')
    ? shortPassSentence(restsOn)
    : verdictMeanings[verdict];
}

function loosenedSentences(criteria: Criteria): readonly string[] {
  const loosened = loosenedCriteria(criteria);
  if (loosened.length === 0) return [];
  const named = loosened.map(({ name, value }) => {
    const unit = criterionUnits[name];
    const told = (one: number) => (unit ? formatQuantity(one, unit, { trim: true }) : String(one));
    return say`${criterionLabels[name]} ${told(value)} (usually ${told(defaultCriteria[name])})`;
  });
  return [loosenedSentence(named)];
}

function howSure({ verdict, confidence, checks, restsOn }: Score): readonly string[] {
  if (confidence === undefined) return [];
  const told = formatQuantity(confidence, '%', { digits: 2 });
  if (verdict === 'pass')
    return [
      surePassSentence(told),
      missedSentence(formatQuantity(restsOn.missedChance, '%', { digits: 2 })),
    ];
  const reasons = checks.filter(
    ({ outcome }) => outcome === (verdict === 'fail' ? 'fails' : 'marginal'),
  );
  return [
    sureReasonSentence(
      told,
      reasons.map(({ check }) => checkLabels[check].toLowerCase()),
    ),
  ];
}

function abruptDepartures({ abrupt = [] }: Score): readonly string[] {
  if (abrupt.length === 0) return [];
  const listed = abrupt.slice(0, mostPlaces).map(({ start, end, depth }) => {
    const lasts = formatQuantity(end - start, 's', { digits: 2 });
    return say`${formatQuantity(start, 's')} for ${lasts} by ${formatQuantity(depth, 'V')}`;
  });
  return [abruptSentence(listed, abrupt.length - listed.length)];
}

function causeSentences({ causes, findings, unitsThatFit = [] }: Score): readonly string[] {
  if (unitsThatFit.length > 0) return unitSentences(unitsThatFit);
  const named = causes.map(({ cause, weight }) => {
    const share = weight < 1 ? say` (${formatQuantity(weight, '%', { digits: 2 })})` : '';
    return say`${causeLabels[cause]}${share}. ${causeMeanings[cause]}`;
  });
  return findings.some(({ unplaced }) => unplaced) ? [...named, openTrackSentence] : named;
}

function nextSteps({ advice, checks }: Score, criteria: Criteria): readonly string[] {
  const interval = checks.find(({ check }) => check === 'sample-interval');
  const slowest = interval?.highLimit ?? criteria.dropout / criteria.samplesInDropout;
  const numbers = {
    interval: formatQuantity(slowest, 's', { trim: true }),
    returns: String(criteria.returns),
    visible: formatQuantity(criteria.coarsestVisible, '%', { trim: true }),
    uncertainty: formatQuantity(narrowestWindow(checks) / 4, 'V', { digits: 2 }),
  };
  return advice.map((one, i) => {
    const number = advice.length > 1 ? say`${i + 1}. ` : '';
    return number + adviceSentences[one](numbers);
  });
}

/** How wide the narrower window of an end reading is, V. */
function narrowestWindow(checks: Score['checks']): number {
  const ends = checks.filter(({ check }) => check === 'closed-end' || check === 'open-end');
  const widths = ends.map(({ lowLimit = 0, highLimit = 0 }) => highLimit - lowLimit);
  return Math.min(...widths.filter((width) => width > 0), Number.MAX_VALUE);
}

function movement({ strokes, snaps }: Score): string {
  return movementSentence({
    openings: strokes.filter(({ direction }) => direction === 'opening').length,
    closings: strokes.filter(({ direction }) => direction === 'closing').length,
    snaps: snaps.length,
    rebounds: snaps.reduce((sum, { rebounds }) => sum + rebounds.length, 0),
  });
}

function coverageOf({ coverage: { opening, closing } }: Score, { looks }: Criteria): string {
  const count = (direction: readonly number[]): number => direction.filter((one) => one > 0).length;
  const lacking: [from: number, to: number][] = [];
  for (const [tenth, one] of opening.entries()) {
    if (one + closing[tenth]! >= looks) continue;
    const last = lacking[lacking.length - 1];
    if (last?.[1] === tenth) last[1] = tenth + 1;
    else lacking.push([tenth, tenth + 1]);
  }
  return coverageSentence({
    opening: count(opening),
    closing: count(closing),
    looks,
    lacking: lacking.map(([from, to]) => [percent(from / 10), percent(to / 10)]),
  });
}

function visibility({ quality, checks, couldShow }: Score): readonly string[] {
  const ofSpan = checks.find(({ check }) => check === 'visible-departure')?.measured;
  const { blind, narrowestSpot } = couldShow;
  const sentence = visibilitySentence({
    dropout: formatQuantity(quality.shortestDropout, 's', { digits: 2, trim: true }),
    departure: formatQuantity(quality.visible, 'V', { digits: 2 }),
    ...(ofSpan !== undefined && {
      departureOfSpan: formatQuantity(ofSpan, '%', { digits: 2 }),
    }),
    setBy: visibleSetByLabels[quality.visibleSetBy],
  });
  return [
    sentence,
    ...(quality.sampling === 'picked'
      ? []
      : [say`Each sample is ${samplingLabels[quality.sampling]}.`]),
    ...(quality.smoothedOver > 0
      ? [smoothedSentence(formatQuantity(quality.smoothedOver, 's', { digits: 2, trim: true }))]
      : []),
    ...(narrowestSpot === undefined ? [] : [narrowestSpotSentence(percent(narrowestSpot))]),
    ...blind.map(([from, to]) => blindSentence(percent(from), percent(to))),
  ];
}

function percent(fraction: number): string {
  return formatQuantity(fraction, '%', { digits: 2, trim: true });
}
