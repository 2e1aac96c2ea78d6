/** A lesson's page with the calculators and explanations that it leads to, which lead back to it; addresses without slashes around them. */
export interface LessonPage {
  readonly path: string;
  readonly uses: readonly string[];
}

/** The lessons in their order. */
export const lessonPages: readonly LessonPage[] = [
  {
    path: 'lessons/divider',
    uses: ['calculators/expected-readings', 'calculators/bench-to-vehicle'],
  },
  {
    path: 'lessons/loading',
    uses: ['concepts/loaded-divider', 'calculators/expected-readings'],
  },
  {
    path: 'lessons/limiter',
    uses: ['calculators/plan-the-hook-up', 'calculators/find-the-terminals'],
  },
  {
    path: 'lessons/meters',
    uses: ['calculators/which-instrument', 'concepts/what-an-instrument-shows'],
  },
  {
    path: 'lessons/dropout',
    uses: ['calculators/make-dirt-visible', 'calculators/which-instrument'],
  },
  {
    path: 'lessons/verdict',
    uses: ['calculators/check-a-sweep', 'concepts/evidence-and-verdict'],
  },
  {
    path: 'lessons/temperature',
    uses: ['calculators/temperature-now', 'calculators/ice-and-boiling'],
  },
];
