import type { Criteria } from '../criteria.js';
import { goesOver } from './coverage.js';
import type { Check, Coverage, Stroke } from './score.js';

/** Whether each tenth of the travel had as many clean looks as it needs, either way: what one pass missed another may have seen. */
export function judgeCoverage(coverage: Coverage, { looks }: Pick<Criteria, 'looks'>): Check {
  const measured = unseenTenths(coverage, looks).length;
  return {
    check: 'coverage',
    outcome: measured > 0 ? 'cannot-tell' : 'conforms',
    unit: 'count',
    measured,
    highLimit: 0,
    margin: 0 - measured,
    limitFrom: 'criteria',
  };
}

/** Whether strokes enough went over every tenth that was seen too seldom: then more strokes would see no more. */
export function isPassedUnseen(
  coverage: Coverage,
  strokes: readonly Stroke[],
  { looks }: Pick<Criteria, 'looks'>,
): boolean {
  return unseenTenths(coverage, looks).every(
    (tenth) => strokes.filter((stroke) => goesOver(stroke, tenth)).length >= looks,
  );
}

/** The tenths, from 0 on, with fewer clean looks than needed. */
function unseenTenths({ opening, closing }: Coverage, looks: number): readonly number[] {
  return opening.flatMap((count, tenth) => (count + closing[tenth]! < looks ? [tenth] : []));
}
