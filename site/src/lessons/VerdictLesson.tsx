import { sweepColumns } from '@truesweep/core';
import { TraceDrawing, traceColumns } from '@truesweep/drawings';
import { lessonSentences } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import { textOf } from './textOf.js';
import { traceWidth } from './traceWidth.js';
import { verdictAt, verdictExpected, verdictFacts, verdictSliders } from './verdict.js';

const figure: LessonFigure = {
  id: 'verdict',
  sliders: verdictSliders,
  shown,
  steps: () => import('../workings/verdictLesson.js'),
};
const { windows } = verdictExpected;

/** Six passes with dropouts; what is judged of them stands with the steps, whose code knows how. */
export function VerdictLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const { sweep } = verdictAt(places);
  const { seen, spread } = verdictFacts(places);
  return {
    values: [String(seen), textOf(spread, '%')],
    drawing: (
      <TraceDrawing
        id="verdict-trace"
        columns={sweepColumns(sweep, traceColumns(traceWidth))}
        findings={[]}
        windows={windows}
        width={traceWidth}
        volts={{ low: 0, high: 4 }}
      />
    ),
    says: [seen > 0 ? lessonSentences.seen(String(seen)) : lessonSentences.sound],
  };
}
