import { expectedCurve, type Ohms, operatingPoint } from '@truesweep/core';
import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { lessonSentences } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { closedStop, openStop } from './bench.js';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import { limiterAt, limiterSliders, wrongConnection } from './limiter.js';
import { numberOf, textOf } from './textOf.js';

const figure: LessonFigure = {
  id: 'limiter',
  sliders: limiterSliders,
  shown,
  steps: () => import('../workings/limiterLesson.js'),
};

/** What a limiting resistor costs and what it holds down: readings over the travel beside those without it, and the mistake's circuit. */
export function LimiterLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const { circuit, position } = limiterAt(places);
  const without = { ...circuit, limiter: 0 };
  const open = operatingPoint(circuit, openStop);
  const mistaken = (ohms: Ohms) =>
    operatingPoint({ ...circuit, limiter: ohms, connection: wrongConnection }, position).parts
      .source?.amps;
  const [limiter, at] = [textOf(circuit.limiter, 'Ω'), textOf(position, '%')];
  const reading = textOf(open.output, 'V');
  return {
    values: [limiter, at],
    drawing: (
      <>
        <CurveDrawing
          id="limiter-curve"
          curve={expectedCurve(circuit)}
          compared={expectedCurve(without)}
          markers={[{ travel: 1, volts: numberOf(open.output), label: reading }]}
        />
        <CircuitDrawing
          id="limiter-circuit"
          circuit={circuit}
          closed={operatingPoint(circuit, closedStop)}
          open={open}
        />
      </>
    ),
    says: [
      lessonSentences.costs(
        limiter,
        reading,
        textOf(operatingPoint(without, openStop).output, 'V'),
      ),
      lessonSentences.protects(
        at,
        textOf(mistaken(circuit.limiter), 'A'),
        position < 1 ? textOf(mistaken(0), 'A') : lessonSentences.nothingElse,
      ),
    ],
  };
}
