import { CircuitDrawing } from '@truesweep/drawings';
import {
  connectionRows,
  limiterAdviceSentences,
  planWords,
  readingsWords,
} from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { CurrentsTable } from './CurrentsTable.js';
import { planHookUp, planHookUpForm } from './planHookUp.js';

/** The calculator: the parts at hand and what they bear in; the limiting resistor and what mistakes do, out. */
export function PlanHookUp({ keeping }: CalculatorProps) {
  return <Calculator form={planHookUpForm} show={show} keeping={keeping} />;
}

function show(values: Parameters<typeof planHookUp>[0]): ShownResult {
  const { circuit, choice, connections, closed, open } = planHookUp(values);
  const [head = [], ...rows] = connectionRows(connections);
  const right = rows[0] ?? [];
  return {
    sentences: limiterAdviceSentences(choice),
    caution: circuit.limiter === 0 ? readingsWords.noLimiter : undefined,
    drawing: <CircuitDrawing id="circuit-drawing" circuit={circuit} closed={closed} open={open} />,
    below: (
      <>
        <CurrentsTable closed={closed} open={open} />
        <DataTable
          id="connections"
          caption={planWords.table(quantityText(circuit.limiter, 'Ω'))}
          head={head}
          rows={rows}
        />
      </>
    ),
    sheet: [
      [`${readingsWords.throttle}: ${readingsWords.closed}`, right[1] ?? ''],
      [`${readingsWords.throttle}: ${readingsWords.open}`, right[2] ?? ''],
    ],
  };
}
