import { circuitFormulas } from './circuitFormulas.js';
import type { Formula, FormulaGroup } from './formula.js';
import { instrumentFormulas } from './instrumentFormulas.js';
import { otherSensorFormulas } from './otherSensorFormulas.js';
import { uncertaintyFormulas } from './uncertaintyFormulas.js';
import { vehicleFormulas } from './vehicleFormulas.js';

/** All formulas of the site by their pages. */
export const formulaGroups: readonly FormulaGroup[] = [
  circuitFormulas,
  uncertaintyFormulas,
  instrumentFormulas,
  vehicleFormulas,
  otherSensorFormulas,
];

/** The formulas that stand behind a page, each with its address below the site's. */
export function formulasBehind(
  page: string,
): readonly { readonly formula: Formula; readonly address: string }[] {
  return formulaGroups.flatMap(({ path, formulas }) =>
    formulas
      .filter(({ usedBy }) => usedBy.includes(page))
      .map((formula) => ({ formula, address: `${path}/#${formula.id}` })),
  );
}
