import type { SoakComparison } from '@truesweep/core/thermistorVerdict';
import {
  judgedReadingWords,
  outcomeLabels,
  soakAdvice,
  soakWords,
  verdictLabels,
} from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { measureText } from '../forms/measureText.js';
import { soak, soakForm } from './soak.js';

/** The calculator: two sensors after a cold soak in; whether they agree, and which is wrong where a thermometer can tell, out. */
export function Soak({ keeping }: CalculatorProps) {
  return <Calculator form={soakForm} show={show} workings={workings} keeping={keeping} />;
}

const workings = () => import('../workings/soak.js');

function show(values: Parameters<typeof soak>[0]): ShownResult {
  const compared = soak(values);
  const { verdict, one, other, advice } = compared;
  return {
    sentences: [
      `${verdictLabels[verdict]}. ${saidOf(compared)}`,
      soakWords.shows(measureText(one, '°C'), measureText(other, '°C')),
      ...advice.map((code) => soakAdvice[code]),
    ],
    caution: soakWords.caution,
    below: (
      <DataTable
        id="checks"
        caption={soakWords.checks}
        head={[soakWords.what, soakWords.shown, soakWords.limit, judgedReadingWords.outcome]}
        rows={compared.checks.map(({ check, measured = 0, highLimit = 0, outcome }) => [
          { difference: soakWords.difference, one: soakWords.one, other: soakWords.otherOne }[
            check
          ],
          measureText(measured, 'K'),
          soakWords.within(measureText(highLimit, 'K')),
          outcomeLabels[outcome],
        ])}
      />
    ),
  };
}

function saidOf({ verdict, checks, advice }: SoakComparison): string {
  if (checks.length > 1) {
    if (advice.includes('read-elsewhere')) return soakWords.pass;
    return verdict === 'fail' ? soakWords.fails : soakWords.unsure;
  }
  const outcome = checks[0]?.outcome;
  if (outcome === 'conforms') return soakWords.agree;
  return outcome === 'fails' ? soakWords.differ : soakWords.cannot;
}
