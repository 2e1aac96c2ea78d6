import { dividerVolts, formatMeasure, resistanceAt } from '@truesweep/core';
import { ThermistorDrawing } from '@truesweep/drawings';
import { lessonSentences } from '@truesweep/wording/working';
import type { ComponentChildren } from 'preact';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import {
  drawnTemperatures,
  temperatureAt,
  temperatureLaw,
  temperatureSliders,
} from './temperature.js';
import { textOf } from './textOf.js';

const figure: LessonFigure = {
  id: 'temperature',
  sliders: temperatureSliders,
  shown,
  steps: () => import('../workings/temperatureLesson.js'),
};
const points = drawnTemperatures.map((temperature) => {
  const nominal = resistanceAt(temperatureLaw, temperature);
  return { temperature, low: 0.95 * nominal, nominal, high: 1.05 * nominal };
});

/** A thermistor's resistance over its temperature, and its voltage on a pull-up. */
export function TemperatureLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const { temperature, divider } = temperatureAt(places);
  const ohms = resistanceAt(temperatureLaw, temperature);
  const [at, pullUp] = [formatMeasure(temperature, '°C', 0), textOf(divider.pullUp, 'Ω')];
  return {
    values: [at, pullUp],
    drawing: (
      <ThermistorDrawing
        id="temperature-law"
        points={points}
        readings={[{ temperature, ohms, outcome: 'conforms' }]}
      />
    ),
    says: [
      lessonSentences.warm(at, textOf(ohms, 'Ω')),
      lessonSentences.across(
        textOf(divider.supply, 'V'),
        pullUp,
        textOf(dividerVolts(divider, ohms), 'V'),
      ),
    ],
  };
}
