import type { Advice } from '@truesweep/core';
import { adviceCautions } from '@truesweep/wording';
import type { AnswerWriter } from './answerWriter.js';
import type { JudgedFile } from './judgedFile.js';
import { layOut } from './layOut.js';
import { printTheseCautions } from './printCautions.js';
import { printScore } from './printScore.js';
import { printUnjudged } from './printUnjudged.js';
import type { Terminal } from './terminal.js';
import type { TextPart } from './textPart.js';
import { unjudgedFile } from './unjudgedFile.js';

/** What is printed beside the score itself. */
interface Wishes {
  readonly short: boolean;
  readonly plot?: (one: JudgedFile) => readonly TextPart[];
  /** How the judgement comes about; nothing of it when left out. */
  readonly working?: (one: JudgedFile) => readonly TextPart[];
}

/** Writes answers as text, below them the cautions that concern what they advise; nothing where no recording could be judged. */
export function textAnswers(terminal: Terminal, { short, plot, working }: Wishes): AnswerWriter {
  let waiting: TextPart[] = [];
  let isBegun = false;
  const advised = new Set<Advice>();
  let isFault = false;
  return {
    write(answer) {
      const parts =
        'refusal' in answer ? printUnjudged(unjudgedFile(answer)) : printScore(answer, { short });
      const drawn = plot && !('refusal' in answer) ? ['', ...plot(answer)] : [];
      const worked = working && !('refusal' in answer) ? working(answer) : [];
      waiting.push(...parts, ...drawn, ...worked, '');
      if (!('refusal' in answer)) {
        const { advice, findings, verdict } = answer.score;
        for (const one of advice) advised.add(one);
        isFault ||= findings.length > 0 || verdict === 'fail' || verdict === 'marginal';
        isBegun = true;
      }
      if (!isBegun) return;
      terminal.print(layOut(waiting, terminal));
      waiting = [];
    },
    end() {
      if (!isBegun) return;
      const these = adviceCautions([...advised], isFault);
      terminal.print(layOut(printTheseCautions(these), terminal));
    },
  };
}
