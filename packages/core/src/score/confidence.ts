import type { Fraction } from '../units.js';
import { calibration } from './calibration.js';
import { roundedOdds } from './roundedOdds.js';
import type { Score } from './score.js';

/** No more is told than the recordings that the odds were fitted to can support. */
const most: Fraction = 0.99;

/** What of a score its odds rest on. */
export type Grounded = Pick<
  Score,
  'verdict' | 'causes' | 'checks' | 'findings' | 'spots' | 'couldShow' | 'coverage'
> & { readonly quality: Pick<Score['quality'], 'gaps'> };

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
export function confidence(score: Grounded): Fraction | undefined {
  if (score.verdict === 'inconclusive') return undefined;
  const wrong = groundsOf(score).reduce((product, ground) => product * (1 - chanceOf(ground)), 1);
  return roundedOdds(Math.min(most, 1 - wrong));
}

/** Logistic in the numbers. */
export function chanceOf({ kind, numbers }: Ground): Fraction {
  const [base = 0, ...slopes] = calibration.grounds[kind];
  const logOdds = slopes.reduce((sum, slope, i) => sum + slope * numbers[i]!, base);
  return 1 / (1 + Math.exp(-logOdds));
}

/** All that a verdict rests on. */
export function groundsOf(score: Grounded): readonly Ground[] {
  const { verdict, checks } = score;
  if (verdict === 'pass') return [{ kind: 'pass', numbers: ofPass(score) }];
  return checks
    .filter(({ outcome }) => outcome === (verdict === 'fail' ? 'fails' : 'marginal'))
    .map(({ check }): Ground => {
      if (check === 'closed-rest') return { kind: check, numbers: [] };
      if (check !== 'departures') return { kind: 'level', numbers: [] };
      return verdict === 'fail'
        ? { kind: 'fail', numbers: ofFailure(score) }
        : { kind: 'marginal', numbers: [evidenceOf(score)] };
    });
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
    measured / highLimit,
    Math.log1p(Math.min(...looks)),
  ];
}

/** The evidence of the departures, how faithfully one place showed them, whether the recording has gaps, and the odds of interference. */
function ofFailure(score: Grounded): readonly number[] {
  const { spots, quality, causes } = score;
  const [spot] = spots;
  const foreign = causes.find(({ cause }) => cause === 'interference');
  return [
    evidenceOf(score),
    spot ? (spot.seen + 1) / (spot.passes + 2) : 0.5,
    quality.gaps > 0 ? 1 : 0,
    foreign?.weight ?? 0,
  ];
}

/** Logarithm of all that speaks for the departures, 1 nat more. */
function evidenceOf({ findings }: Grounded): number {
  return Math.log1p(findings.reduce((sum, { evidence = 0 }) => sum + Math.max(0, evidence), 0));
}
