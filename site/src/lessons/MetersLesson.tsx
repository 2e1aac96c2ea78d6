import { operatingPoint, sightOf, sweepColumns } from '@truesweep/core';
import { TraceDrawing, traceColumns } from '@truesweep/drawings';
import { lessonSentences } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { openStop } from './bench.js';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import { meterDisplay } from './meterDisplay.js';
import { meterSliders, metersAt } from './meters.js';
import { textOf } from './textOf.js';
import { traceWidth } from './traceWidth.js';

const figure: LessonFigure = {
  id: 'meters',
  sliders: meterSliders,
  shown,
  steps: () => import('../workings/metersLesson.js'),
};

/** What a meter's display says during one opening, before what the signal does. */
export function MetersLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const { circuit, meter, dropout } = metersAt(places);
  const { sweep, display } = meterDisplay(circuit, meter, dropout.seconds);
  const [input, length] = [textOf(meter.inputOhms, 'Ω'), textOf(dropout.seconds, 's')];
  const openWith = (load: typeof circuit.load) =>
    textOf(operatingPoint({ ...circuit, load }, openStop).output, 'V');
  const columns = traceColumns(traceWidth);
  return {
    values: [input, length],
    drawing: (
      <TraceDrawing
        id="meters-trace"
        columns={sweepColumns(display, columns)}
        behind={sweepColumns(sweep, columns)}
        findings={[]}
        width={traceWidth}
      />
    ),
    says: [
      lessonSentences.metered(input, openWith({ pullDown: meter.inputOhms }), openWith({})),
      lessonSentences.missed(length, textOf(sightOf(meter, dropout, 1).chance, '%')),
    ],
  };
}
