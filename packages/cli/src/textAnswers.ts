import type { AnswerWriter } from './answerWriter.js';
import type { JudgedFile } from './judgedFile.js';
import { layOut } from './layOut.js';
import { printCautions } from './printCautions.js';
import { printScore } from './printScore.js';
import { printUnjudged } from './printUnjudged.js';
import type { Terminal } from './terminal.js';
import type { TextPart } from './textPart.js';
import { unjudgedFile } from './unjudgedFile.js';

/** What is printed beside the score itself. */
interface Wishes {
  readonly short: boolean;
  readonly plot?: (one: JudgedFile) => readonly TextPart[];
}

/** Writes answers as text, the cautions below them; nothing where no recording could be judged. */
export function textAnswers(terminal: Terminal, { short, plot }: Wishes): AnswerWriter {
  let waiting: TextPart[] = [];
  let isBegun = false;
  return {
    write(answer) {
      const parts =
        'refusal' in answer ? printUnjudged(unjudgedFile(answer)) : printScore(answer, { short });
      const drawn = plot && !('refusal' in answer) ? ['', ...plot(answer)] : [];
      waiting.push(...parts, ...drawn, '');
      isBegun ||= !('refusal' in answer);
      if (!isBegun) return;
      terminal.print(layOut(waiting, terminal));
      waiting = [];
    },
    end() {
      if (isBegun) terminal.print(layOut(printCautions(), terminal));
    },
  };
}
