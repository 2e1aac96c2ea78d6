import { testTimeHint, testTimeLabels, wayWords } from '@truesweep/wording';
import { momentEntries } from '../checkSweep/momentEntries.js';
import { testTimes } from '../checkSweep/testTimes.js';
import type { Form, Texts } from '../forms/form.js';

const names = testTimes.flatMap(({ from, to }) => [from, to]);

/** The form of the sweep: when the deliberate tests began and ended. */
export const sweepForm: Form<typeof momentEntries> = {
  groups: [{ title: wayWords.tasks, names }],
  entries: momentEntries,
  labels: testTimeLabels,
  hints: Object.fromEntries(names.map((name) => [name, testTimeHint])) as Texts<
    typeof momentEntries
  >,
};
