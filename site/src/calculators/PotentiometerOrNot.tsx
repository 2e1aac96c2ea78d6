import { contactlessLabels, contactlessWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { potentiometerOrNot, potentiometerOrNotForm } from './potentiometerOrNot.js';

/** The calculator: ohms between three terminals in; whether they are a potentiometer's, and why, out. */
export function PotentiometerOrNot({ keeping }: CalculatorProps) {
  return <Calculator form={potentiometerOrNotForm} show={show} keeping={keeping} />;
}

const words = contactlessWords;

function show(values: Parameters<typeof potentiometerOrNot>[0]): ShownResult {
  const { finding, starving, limiter, needs, endToEnd, sum, difference } =
    potentiometerOrNot(values);
  const resistor = quantityText(limiter, 'Ω');
  const left = quantityText(starving.left, 'V');
  return {
    sentences: [
      words.conclusions[finding.conclusion],
      ...finding.reasons.map((reason) => words.reasons[reason]),
      ...(finding.conclusion === 'potentiometer'
        ? [words.goOn]
        : [
            ...(finding.conclusion === 'not-one' ? [words.refuse] : []),
            starving.starved
              ? words.starved(resistor, left, quantityText(needs, 'V'))
              : words.fed(resistor, left),
            words.largest(quantityText(starving.largestLimiter, 'Ω')),
          ]),
    ],
    below: (
      <DataTable
        id="parts"
        caption={words.numbers}
        head={[words.what, words.value]}
        rows={[
          [contactlessLabels.endToEnd, ohmsText(endToEnd)],
          [words.difference, ohmsText(difference)],
          [words.sum, ohmsText(sum)],
        ]}
      />
    ),
  };
}

function ohmsText(ohms: number): string {
  return ohms === Number.POSITIVE_INFINITY ? 'OL' : quantityText(ohms, 'Ω');
}
