import { CircuitDrawing, CurveDrawing } from '@truesweep/drawings';
import { dividerSentences } from '@truesweep/wording';
import type { ComponentChildren } from 'preact';
import { Lesson } from './Lesson.js';
import type { LessonFigure, LessonShown, Places } from './lesson.js';
import { loadedDivider } from './loadedDivider.js';
import { loadingAt, loadingSliders } from './loading.js';

const figure: LessonFigure = {
  id: 'loading',
  sliders: loadingSliders,
  shown,
  steps: () => import('../workings/loadingLesson.js'),
};

/** A load on the wiper: the bent line beside the straight one, and the circuit. */
export function LoadingLesson({ children }: { readonly children?: ComponentChildren }) {
  return <Lesson figure={figure}>{children}</Lesson>;
}

function shown(places: Places): LessonShown {
  const entries = loadingAt(places);
  const { circuit, closed, open, loaded, unloaded, reading, facts } = loadedDivider(entries);
  return {
    values: [facts.load, facts.position],
    drawing: (
      <>
        <CurveDrawing
          id="loading-curve"
          curve={loaded}
          compared={unloaded}
          markers={[{ travel: entries.position, volts: reading, label: facts.loaded }]}
        />
        <CircuitDrawing id="loading-circuit" circuit={circuit} closed={closed} open={open} />
      </>
    ),
    says: dividerSentences(facts).answer,
  };
}
