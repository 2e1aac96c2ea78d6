import { dirtEffect, simulateSweep, sweepColumns } from '@truesweep/core';
import { TraceDrawing, traceColumns } from '@truesweep/drawings';
import { lessonSentences } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { dirtySpot, dropoutAt, dropoutSliders, openingSeconds } from './dropout.js';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import { textOf } from './textOf.js';
import { traceWidth } from './traceWidth.js';

const figure: LessonFigure = {
  id: 'dropout',
  sliders: dropoutSliders,
  shown,
  steps: () => import('../workings/dropoutLesson.js'),
};

/** One opening and one closing over a dirty spot, with a load that makes more or less of it. */
export function DropoutLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const { circuit, ohms } = dropoutAt(places);
  const { sweep } = simulateSweep({
    circuit,
    movements: [
      { kind: 'hold', seconds: 0.2 },
      { kind: 'turn', to: 1, seconds: openingSeconds },
      { kind: 'hold', seconds: 0.2 },
      { kind: 'turn', to: 0, seconds: openingSeconds },
      { kind: 'hold', seconds: 0.2 },
    ],
    recorder: { interval: 0.001, noise: 0.002, resolution: 0.001 },
    faults: [{ kind: 'worn-spot', ...dirtySpot, ohms }],
    seed: 5,
  });
  const { clean, dirty, lifted } = dirtEffect(circuit, dirtySpot.travel, ohms);
  if (dirty.kind !== 'change' || lifted.kind !== 'change')
    throw new Error('A lesson on dirt has no load.');
  const [dirt, load] = [textOf(ohms, 'Ω'), textOf(circuit.load.pullDown, 'Ω')];
  return {
    values: [dirt, load],
    drawing: (
      <TraceDrawing
        id="dropout-trace"
        columns={sweepColumns(sweep, traceColumns(traceWidth))}
        findings={[]}
        width={traceWidth}
        volts={{ low: 0, high: 4 }}
      />
    ),
    says: [
      lessonSentences.dirty(
        dirt,
        textOf(clean, 'V'),
        textOf(clean + dirty.volts, 'V'),
        textOf(Math.abs(dirty.ofSpan ?? 0), '%'),
      ),
      lessonSentences.lifted(textOf(Math.round((clean + lifted.volts) * 1e6) / 1e6, 'V')),
    ],
  };
}
