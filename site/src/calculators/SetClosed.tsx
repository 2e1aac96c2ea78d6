import { closedSettingSentences, settingWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { type ClosedTurn, setClosed, setClosedForm } from './setClosed.js';

/** The calculator: two closed readings and the turn between them in; how far to turn, out. */
export function SetClosed({ keeping }: CalculatorProps) {
  return <Calculator form={setClosedForm} show={show} workings={workings} keeping={keeping} />;
}

const workings = () => import('../workings/setClosed.js');

function show(values: Parameters<typeof setClosed>[0]): ShownResult {
  const turn = setClosed(values);
  const rows = rowsOf(turn);
  return {
    sentences: closedSettingSentences(turn.setting),
    below: rows.length > 0 && (
      <DataTable
        id="turn"
        caption={settingWords.numbers}
        head={[settingWords.what, settingWords.value]}
        rows={rows}
      />
    ),
    sheet: [[settingWords.sheet, quantityText(turn.wanted, 'V')]],
  };
}

function rowsOf({ setting, turned }: ClosedTurn): readonly (readonly string[])[] {
  if (setting.kind === 'not-determined') return [];
  const { degrees, uncertainty, degreesPerVolt } = setting;
  const { turn, turnFromHere, perDegree } = settingWords;
  return [
    [turn, quantityText(degrees, '°')],
    [turnFromHere, quantityText(degrees - turned, '°')],
    [settingWords.uncertainty, quantityText(2 * uncertainty, '°')],
    [perDegree, quantityText(1 / degreesPerVolt, 'V')],
  ];
}
