import { workingHtml } from '@truesweep/explain';
import { sheetWords as words } from '@truesweep/wording/working';
import { useMemo } from 'preact/hooks';
import { answerText } from './answerText.js';
import { DrawnSweepPicture } from './DrawnSweepPicture.js';
import type { SheetChoice } from './sheetAddress.js';
import { sheetExercises } from './sheetExercises.js';

/** How wide a sweep is drawn on a sheet, px: half of the paper. */
const drawnWidth = 360;

/** Twenty exercises, and on a second sheet of paper their answers with the lines that lead there. */
export function Sheet({ seed, level, topics }: SheetChoice) {
  const exercises = useMemo(() => sheetExercises({ seed, level, topics }), [seed, level, topics]);
  const numbered = [String(seed), words.levels[level]] as const;
  return (
    <>
      <section class="sheet-exercises" aria-labelledby="sheet-exercises">
        <h2 id="sheet-exercises">{words.title(...numbered)}</h2>
        <p class="sheet-name">{words.name}</p>
        <ol>
          {exercises.map(({ question, parts, sweep }, i) => (
            <li key={i}>
              <p>{question}</p>
              {sweep && <DrawnSweepPicture id={`sheet-${i}`} sweep={sweep} width={drawnWidth} />}
              {parts.map((part) => (
                <div key={part.id} class="sheet-asked">
                  <p>{part.asks}</p>
                  {part.kind === 'choice' && (
                    <ul>
                      {part.options.map(({ id, text }) => (
                        <li key={id}>{text}</li>
                      ))}
                    </ul>
                  )}
                </div>
              ))}
            </li>
          ))}
        </ol>
      </section>
      <section class="sheet-answers" aria-labelledby="sheet-answers">
        <h2 id="sheet-answers">{words.answersTitle(...numbered)}</h2>
        <ol>
          {exercises.map(({ parts, working }, i) => (
            <li key={i}>
              <p>
                <strong>{parts.map(answerText).join('; ')}</strong>
              </p>
              {/* Written by the package of workings, which escapes every text. Of it the lines are shown. */}
              <div dangerouslySetInnerHTML={{ __html: workingHtml(working) }} />
            </li>
          ))}
        </ol>
      </section>
    </>
  );
}
