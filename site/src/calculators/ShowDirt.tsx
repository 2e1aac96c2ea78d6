import type {
  BenchLoad,
  BenchLoadChoice,
  BenchLoadWay,
  NoBenchLoad,
  ReadingChange,
} from '@truesweep/core';
import { CircuitDrawing } from '@truesweep/drawings';
import { benchLoadLabels, dirtWords, noBenchLoadLabels } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { askDirt, type ShownDirt, showDirt, showDirtForm } from './showDirt.js';

/** The calculator: dirt in the wiper's contact in; what it does and the load that shows it, out. */
export function ShowDirt({ keeping }: CalculatorProps) {
  return (
    <Calculator form={showDirtForm} show={show} workings={workings} ask={ask} keeping={keeping} />
  );
}

const workings = () => import('../workings/showDirt.js');

type Values = Parameters<typeof showDirt>[0];

const show = (values: Values) => shownOf(showDirt(values));
const ask = async (values: Values) => shownOf(await askDirt(values));

function shownOf(shown: ShownDirt): ShownResult {
  const { circuit, closed, open, choice } = shown;
  return {
    sentences: sentencesOf(shown),
    drawing: <CircuitDrawing id="circuit-drawing" circuit={circuit} closed={closed} open={open} />,
    below: choice.kind !== 'none-needed' && (
      <DataTable
        id="loads"
        caption={dirtWords.ways}
        head={[
          dirtWords.way,
          dirtWords.resistor,
          dirtWords.change,
          dirtWords.current,
          dirtWords.bend,
        ]}
        rows={rowsOf(choice.ways)}
      />
    ),
  };
}

function sentencesOf({ effect, choice }: ShownDirt): readonly string[] {
  const dirty = changeText(effect.dirty);
  if (choice.kind === 'none-needed') return [dirtWords.noneNeeded(dirty)];
  const asItIs = dirtWords.asItIs(dirty, changeText(effect.lifted));
  if (choice.kind === 'impossible') return [dirtWords.impossible, asItIs];
  const load = choice.ways[choice.use];
  const ohms = load.kind === 'possible' ? quantityText(load.ohms, 'Ω') : '';
  return [dirtWords.chosen(ohms, benchLoadLabels[choice.use]), dirtWords.takeOff, asItIs];
}

function rowsOf(
  ways: Exclude<BenchLoadChoice, { readonly kind: 'none-needed' }>['ways'],
): readonly (readonly string[])[] {
  return (Object.entries(ways) as [BenchLoadWay, BenchLoad | NoBenchLoad][]).map(([way, load]) =>
    load.kind === 'possible'
      ? [
          benchLoadLabels[way],
          quantityText(load.ohms, 'Ω'),
          quantityText(load.change, 'V'),
          load.wiperCurrent === undefined ? '–' : quantityText(load.wiperCurrent, 'A'),
          quantityText(load.loadingError, '%'),
        ]
      : [benchLoadLabels[way], dirtWords.not(noBenchLoadLabels[load.binding]), '–', '–', '–'],
  );
}

function changeText(change: ReadingChange): string {
  return change.kind === 'floating' ? dirtWords.floats : quantityText(change.volts, 'V');
}
