import { workingText } from '@truesweep/explain/written';
import { reportWords, workingWords } from '@truesweep/wording';
import { block, plain } from './markdown.js';
import type { Worked } from './WorkingsPart.js';

/** How the numbers come about, as text that Markdown leaves as it is. */
export function workingParts(of: readonly Worked[]): readonly string[] {
  const worked = of.filter(({ workings = [] }) => workings.length > 0);
  if (worked.length === 0) return [];
  return [
    `## ${reportWords.workings}`,
    workingWords.part,
    ...worked.flatMap(({ name, workings = [] }) => [
      `### ${plain(name)}`,
      ...workings.map((working) => block(workingText(working))),
    ]),
  ];
}
