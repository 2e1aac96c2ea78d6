import type { LeadOhms } from '@truesweep/core';
import { dropWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { type JudgedDrop, supplyDrop, supplyDropForm } from './supplyDrop.js';

/** The calculator: voltages along supply and ground in; what they do to the signal, out. */
export function SupplyDrop({ keeping }: CalculatorProps) {
  return <Calculator form={supplyDropForm} show={show} workings={workings} keeping={keeping} />;
}

const workings = () => import('../workings/supplyDrop.js');

function show(values: Parameters<typeof supplyDrop>[0]): ShownResult {
  const judged = supplyDrop(values);
  return {
    sentences: sentencesOf(judged),
    below: (
      <DataTable
        id="drops"
        caption={dropWords.numbers}
        head={[dropWords.what, dropWords.value]}
        rows={rowsOf(judged)}
      />
    ),
  };
}

function sentencesOf({ drop, criterion }: JudgedDrop): readonly string[] {
  const { matters, worstError, bottomError, topError, seenFromBattery } = drop;
  const facts = { worst: quantityText(worstError, '%'), criterion: quantityText(criterion, '%') };
  const isGround = Math.abs(bottomError) >= Math.abs(topError);
  return [
    ...(matters
      ? [dropWords.matters(facts), isGround ? dropWords.mendGround : dropWords.mendSupply]
      : [dropWords.small(facts)]),
    ...(seenFromBattery === bottomError
      ? []
      : [dropWords.fromBattery(quantityText(seenFromBattery, '%'))]),
  ];
}

function rowsOf({ drop, groundDrop }: JudgedDrop): readonly (readonly string[])[] {
  return [
    [dropWords.supplyDrop, quantityText(drop.supplyDrop, 'V')],
    [dropWords.groundDrop, quantityText(groundDrop, 'V')],
    [dropWords.bottomError, quantityText(drop.bottomError, '%')],
    [dropWords.topError, quantityText(drop.topError, '%')],
    [dropWords.supplyOhms, ohmsText(drop.supplyLead)],
    [dropWords.groundOhms, ohmsText(drop.groundLead)],
  ];
}

function ohmsText(lead: LeadOhms): string {
  if (lead.kind === 'not-determined') return dropWords.notDetermined[lead.reason];
  return `${quantityText(lead.ohms, 'Ω')} (± ${quantityText(2 * lead.uncertainty, 'Ω')})`;
}
