import { workingLabels } from '@truesweep/wording/working';
import { checkWorking } from './checkWorking.js';
import { escaped, mathmlNotation, mathmlQuantity, mathmlSymbol } from './mathmlNotation.js';
import type { Quantity } from './quantity.js';
import { rulesOf, type Step, type Working } from './working.js';
import { writeQuantity } from './writeQuantity.js';
import { comparedTexts, writeResult, writtenLines } from './writtenStep.js';

/**
 * A working as a fragment of HTML with MathML: a list of what is given, a list of steps, no style and no script. Every text in it is escaped.
 *
 * @throws InputError at `working…` for what is no working.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * workingHtml(explainOperatingPoint(circuit, 0.9)).startsWith('<dl') // => true
 */
export function workingHtml(working: Working): string {
  checkWorking(working);
  const { given, steps, conclusion } = working;
  const givenRows = given.map(
    (one) =>
      `<div><dt>${math(mathmlSymbol(one.symbol))} <span>${escaped(one.meaning)}</span></dt><dd>${escaped(writeQuantity(one, one.digits, true))}</dd></div>`,
  );
  return [
    `<dl class="working-given" aria-label="${escaped(workingLabels.given)}">${givenRows.join('')}</dl>`,
    `<ol class="working-steps">${steps.map((step) => `<li>${stepHtml(step)}</li>`).join('')}</ol>`,
    conclusion === undefined ? '' : `<p class="working-conclusion">${escaped(conclusion)}</p>`,
    `<ul class="working-sources" aria-label="${escaped(workingLabels.restsOn)}">${rulesOf(steps)
      .map(({ name, source }) => `<li>${escaped(name)}: ${escaped(source)}</li>`)
      .join('')}</ul>`,
  ].join('');
}

function stepHtml(step: Step): string {
  return `<p class="working-finds">${escaped(step.finds)} <span class="working-rule">${escaped(step.rule.name)}</span></p>${bodyHtml(step)}`;
}

function bodyHtml(step: Step): string {
  if (step.kind === 'comparison') {
    const [left, right] = comparedTexts(step).map(mathmlQuantity);
    const relation = `<mo>${escaped(step.relation)}</mo>`;
    const symbols = [step.left, step.right].map(({ symbol }: Quantity) => mathmlSymbol(symbol));
    return `<div class="working-line">${math(symbols.join(relation))}</div><div class="working-line">${math(`${left}${relation}${right}`)}</div><p class="working-so">${escaped(step.so)}</p>`;
  }
  if (step.kind === 'table') {
    const [first = '', ...others] = step.columns.map(escaped);
    const head = `<tr><th scope="col">${first}</th>${others.map((column) => `<th scope="col">${column}</th>`).join('')}</tr>`;
    const rows = step.rows.map(
      ({ name, cells }) =>
        `<tr><th scope="row">${escaped(name)}</th>${cells.map((cell) => `<td>${escaped(writeResult(cell))}</td>`).join('')}</tr>`,
    );
    return `<div class="working-table"><table><thead>${head}</thead><tbody>${rows.join('')}</tbody></table></div>`;
  }
  const { symbol, formula, numbers, result } = writtenLines(step, mathmlNotation, mathmlQuantity);
  const equals = '<mo>=</mo>';
  const shown = [`${symbol}${equals}${formula}`];
  if (numbers !== undefined) shown.push(`${equals}${numbers}`);
  shown.push(`${equals}${result}`);
  return shown.map((line) => `<div class="working-line">${math(line)}</div>`).join('');
}

/** With fractions in full size, as in a displayed equation. */
const math = (inside: string): string => `<math displaystyle="true">${inside}</math>`;
