import type { Fraction } from '../units.js';
import { calibration } from './calibration.js';
import { roundedOdds } from './roundedOdds.js';
import type { Check, Score, Verdict } from './score.js';

/** No more and no less is told than the recordings that the odds were fitted to can support: of the least sure verdicts half are right. */
const most: Fraction = 0.99;
const least: Fraction = 0.5;

/** What the odds rest on. */
export type Grounded = Pick<Score, 'checks' | 'findings' | 'spots' | 'couldShow' | 'coverage'> & {
  readonly quality: Pick<Score['quality'], 'gaps'>;
  /** The weight of interference among the causes of the departures. */
  readonly interference: Fraction;
};

/** A reason for a verdict, with the numbers that its odds of being right grow or fall with. */
export interface Ground {
  readonly kind: keyof typeof calibration.grounds;
  readonly numbers: readonly number[];
}

/**
 * How probable it is that the verdict is one that the sensor deserves: of a pass that no fault was missed, of a failing or a marginal one
 * that at least one of its reasons is real, each reason by itself (noisy or).
 *
 * @returns Nothing for an inconclusive verdict.
 */
export function confidence(verdict: Verdict, judged: Grounded): Fraction | undefined {
  if (verdict === 'inconclusive') return undefined;
  const wrong = groundsOf(verdict, judged).reduce(
    (product, ground) => product * (1 - chanceOf(ground)),
    1,
  );
  return roundedOdds(Math.max(least, Math.min(most, 1 - wrong)));
}

/** How probable it is that the departures are real. */
export function chanceOfDepartures(judged: Grounded): Fraction {
  const check = judged.checks.find((one) => one.check === 'departures')!;
  return Math.min(most, chanceOf(groundOf(check, judged)));
}

/** All that a verdict rests on. */
export function groundsOf(verdict: Verdict, judged: Grounded): readonly Ground[] {
  if (verdict === 'pass') return [{ kind: 'pass', numbers: ofPass(judged) }];
  const wanted = verdict === 'fail' ? 'fails' : 'marginal';
  return judged.checks
    .filter(({ outcome }) => outcome === wanted)
    .map((check) => groundOf(check, judged));
}

function groundOf({ check, outcome }: Check, judged: Grounded): Ground {
  if (check === 'closed-rest') return { kind: check, numbers: [] };
  if (check !== 'departures') return { kind: 'level', numbers: [] };
  return outcome === 'fails'
    ? { kind: 'fail', numbers: ofFailure(judged) }
    : { kind: 'marginal', numbers: [evidenceOf(judged)] };
}

/** Logistic in the numbers. */
function chanceOf({ kind, numbers }: Ground): Fraction {
  const [base = 0, ...slopes] = calibration.grounds[kind];
  const logOdds = slopes.reduce((sum, slope, i) => sum + slope * numbers[i]!, base);
  return 1 / (1 + Math.exp(-logOdds));
}

/** How wide a spot may hide, how near the closed readings came to scattering too much, and how often each tenth of the travel was seen. */
function ofPass({
  couldShow,
  checks,
  coverage: { opening, closing },
}: Grounded): readonly number[] {
  const { measured = 0, highLimit = 1 } = checks.find(({ check }) => check === 'closed-rest') ?? {};
  const looks = opening.map((count, tenth) => count + closing[tenth]!);
  return [
    Math.log(couldShow.narrowestSpot ?? 1),
    measured / (highLimit || 1),
    Math.log1p(Math.min(...looks)),
  ];
}

/** The evidence of the departures, how faithfully one place showed them, whether the recording has gaps, and how likely it is interference. */
function ofFailure(judged: Grounded): readonly number[] {
  const [spot] = judged.spots;
  return [
    evidenceOf(judged),
    spot ? (spot.seen + 1) / (spot.passes + 2) : 0.5,
    judged.quality.gaps > 0 ? 1 : 0,
    judged.interference,
  ];
}

/** Logarithm of all that speaks for the departures, 1 nat more. */
function evidenceOf({ findings }: Grounded): number {
  return Math.log1p(findings.reduce((sum, { evidence = 0 }) => sum + Math.max(0, evidence), 0));
}
