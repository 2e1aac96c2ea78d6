import type { Finding, Score, Spot } from '../score/score.js';
import type { Fraction, Seconds, Travel } from '../units.js';

/** What a spot looks like, as far as two recordings can be compared by it. */
export interface SpotTraits {
  readonly spot: number;
  readonly travel: Travel;
  readonly passes: number;
  readonly seen: number;
  readonly kind: Finding['kind'];
  /** Depth of each of its findings, fraction of the span. */
  readonly depths: readonly Fraction[];
  readonly depth: Fraction;
  /** Middle length of its findings. */
  readonly seconds: Seconds;
}

/** The traits of each spot of a score. */
export function spotTraits({ spots, findings }: Score): readonly SpotTraits[] {
  return spots.map((one, i) => traits(one, i, findings));
}

function traits(
  { travel, passes, seen, findings: numbers }: Spot,
  spot: number,
  all: readonly Finding[],
): SpotTraits {
  const findings = numbers.map((number) => all[number]!);
  const depths = findings.map(({ depthOfSpan }) => depthOfSpan);
  const lengths = findings.map(({ start, end }) => end - start).sort((a, b) => a - b);
  return {
    spot,
    travel,
    passes,
    seen,
    kind: usualKind(findings),
    depths,
    depth: depths.reduce((sum, depth) => sum + depth, 0) / depths.length,
    seconds: lengths[lengths.length >> 1]!,
  };
}

/** The kind of most findings; of several so frequent ones the first found. */
function usualKind(findings: readonly Finding[]): Finding['kind'] {
  const count = (kind: Finding['kind']) => findings.filter((one) => one.kind === kind).length;
  return findings.map(({ kind }) => kind).reduce((a, b) => (count(b) > count(a) ? b : a));
}
