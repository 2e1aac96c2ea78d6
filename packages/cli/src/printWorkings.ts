import { type Working, workingText } from '@truesweep/explain/written';
import { workingWords } from '@truesweep/wording';
import { paragraph, type TextPart } from './textPart.js';

/** Workings as text, each under its title: sentences are broken between words, lines of a formula stay whole. */
export function printWorkings(workings: readonly Working[]): readonly TextPart[] {
  if (workings.length === 0) return ['', paragraph(workingWords.none)];
  const written = workings.flatMap((working) => [
    '',
    ...workingText(working).map((line): TextPart => {
      const [first = ''] = /^(\d+\. |\s*)/.exec(line) ?? [];
      return line.includes(' = ') || line === ''
        ? line
        : paragraph(line.slice(first.length), first);
    }),
  ]);
  return [...written, '', paragraph(workingWords.part)];
}
