import type { RecordingResult } from '@truesweep/jobs/node';

/** What became of a recording, in a word. */
export type Outcome = 'fail' | 'inconclusive' | 'not-judged' | 'marginal' | 'pass';

/** What needs attention first. */
export const outcomes: readonly Outcome[] = [
  'fail',
  'inconclusive',
  'not-judged',
  'marginal',
  'pass',
];

export function outcomeOf(result: RecordingResult): Outcome {
  return 'verdict' in result ? result.verdict : 'not-judged';
}

/** What needs attention more comes first: by what became of it, then by how little it keeps from its limits, then by its file. */
export function attentionOrder(one: RecordingResult, other: RecordingResult): number {
  const rank = (result: RecordingResult) => outcomes.indexOf(outcomeOf(result));
  return (
    rank(one) - rank(other) ||
    marginOf(one) - marginOf(other) ||
    (one.file < other.file ? -1 : one.file > other.file ? 1 : 0)
  );
}

function marginOf(result: RecordingResult): number {
  return ('verdict' in result ? result.nearest?.margin : undefined) ?? Number.MAX_VALUE;
}
