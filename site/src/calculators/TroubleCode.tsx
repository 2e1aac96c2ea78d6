import { codeLabels, codeWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { type LocatedCode, troubleCode, troubleCodeForm } from './troubleCode.js';

/** The calculator: a code and what was seen with the sensor unplugged in; whose fault it is, and what to look at next, out. */
export function TroubleCode({ keeping }: CalculatorProps) {
  return <Calculator form={troubleCodeForm} show={show} keeping={keeping} />;
}

const words = codeWords;

function show(values: Parameters<typeof troubleCode>[0]): ShownResult {
  const located = troubleCode(values);
  return {
    sentences: sentencesOf(located),
    caution: words.caution,
    below: (
      <DataTable
        id="seen"
        caption={words.numbers}
        head={[words.what, words.value]}
        rows={rowsOf(located)}
      />
    ),
  };
}

function sentencesOf({ read, fault, compared }: LocatedCode): readonly string[] {
  const { conclusion, because, next } = fault;
  return [
    words.conclusions[conclusion],
    words.reasons[because],
    ...(next ? [words.steps[next]] : []),
    words.says(read.code, words.sensors[read.sensor], words.kinds[read.kind]),
    ...(read.means ? [words.means[read.means]] : []),
    ...(compared
      ? [
          compared.conclusion === 'swapped'
            ? words.comparisons.swapped(compared.code ?? '')
            : words.comparisons[compared.conclusion],
        ]
      : []),
  ];
}

function rowsOf({ read, seen }: LocatedCode): readonly (readonly string[])[] {
  const { unplugged, bridged, leads } = seen;
  return [
    [codeLabels.code, `${read.code}: ${words.kinds[read.kind]}`],
    [codeLabels.unplugged, unplugged ? words.signals[unplugged] : words.notSeen],
    [codeLabels.bridged, bridged ? words.signals[bridged] : words.notSeen],
    [codeLabels.leads, leads ? words.leadStates[leads] : words.notSeen],
  ];
}
