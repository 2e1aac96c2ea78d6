import { expectedCurve, operatingPoint } from '@truesweep/core';
import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { lessonSentences } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { dividerAt, dividerSliders } from './divider.js';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import { numberOf, textOf } from './textOf.js';

const figure: LessonFigure = {
  id: 'divider',
  sliders: dividerSliders,
  shown,
  steps: () => import('../workings/dividerLesson.js'),
};

/** A track as a divider: the reading over the wiper's place, and the circuit. */
export function DividerLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const { circuit, position } = dividerAt(places);
  const { output, parts } = operatingPoint(circuit, position);
  const [at, track] = [textOf(position, '%'), textOf(circuit.sensor.track, 'Ω')];
  const reading = textOf(output, 'V');
  return {
    values: [at, track],
    drawing: (
      <>
        <CurveDrawing
          id="divider-curve"
          curve={expectedCurve(circuit, 2)}
          markers={[{ travel: position, volts: numberOf(output), label: reading }]}
        />
        <CircuitDrawing
          id="divider-circuit"
          circuit={circuit}
          closed={operatingPoint(circuit, 0)}
          open={operatingPoint(circuit, 1)}
        />
      </>
    ),
    says: [
      lessonSentences.divided(at, textOf(circuit.source.volts, 'V'), reading),
      lessonSentences.noTrack(track, textOf(parts.source?.amps, 'A')),
    ],
  };
}
