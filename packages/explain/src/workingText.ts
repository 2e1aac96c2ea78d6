import { workingLabels } from '@truesweep/wording/working';
import { checkWorking } from './checkWorking.js';
import { textNotation } from './textNotation.js';
import { rulesOf, type Step, type Working } from './working.js';
import { writeQuantity } from './writeQuantity.js';
import { comparedTexts, writeResult, writtenLines } from './writtenStep.js';

/**
 * A working as lines of plain text, for a terminal or a message.
 *
 * @throws InputError at `working…` for what is no working.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * workingText(explainOperatingPoint(circuit, 0.9)).includes('   V = 3.750\u00a0V') // => true
 */
export function workingText(working: Working): readonly string[] {
  checkWorking(working);
  const { title, given, steps, conclusion } = working;
  return [
    title,
    '',
    `${workingLabels.given}:`,
    ...given.map(
      (one) => `   ${one.symbol} = ${writeQuantity(one, one.digits, true)}   ${one.meaning}`,
    ),
    ...steps.flatMap((step, i) => ['', ...stepText(step, i + 1)]),
    ...(conclusion === undefined ? [] : ['', conclusion]),
    '',
    `${workingLabels.restsOn}:`,
    ...rulesOf(steps).map(({ name, source }) => `   ${name}: ${source}`),
  ];
}

function stepText(step: Step, number: number): readonly string[] {
  const head = [`${number}. ${step.finds} (${step.rule.name})`];
  if (step.kind === 'comparison') {
    const [left, right] = comparedTexts(step);
    return [
      ...head,
      `   ${step.left.symbol} ${step.relation} ${step.right.symbol}: ${left} ${step.relation} ${right}`,
      `   ${step.so}`,
    ];
  }
  if (step.kind === 'table') {
    const rows = [
      step.columns,
      ...step.rows.map(({ name, cells }) => [name, ...cells.map(writeResult)]),
    ];
    const widths = step.columns.map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
    const line = (row: readonly string[]) =>
      `   ${row.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]!) : cell.padStart(widths[i]!))).join('  ')}`;
    return [...head, ...rows.map(line)];
  }
  const { symbol, formula, numbers, result } = writtenLines(
    step,
    textNotation,
    (quantity) => quantity,
  );
  const indent = ' '.repeat(symbol.length + 3);
  return [
    ...head,
    `   ${symbol} = ${formula}`,
    ...(numbers === undefined ? [] : [`${indent}= ${numbers}`]),
    `   ${symbol} = ${result}`,
  ];
}
