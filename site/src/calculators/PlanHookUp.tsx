import type { Circuit } from '@truesweep/core';
import { CircuitDrawing, HookUpPicture } from '@truesweep/drawings';
import { planWords, readingsWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import { CurrentsTable } from './CurrentsTable.js';
import { askHookUp, type HookUpPlan, planHookUp, planHookUpForm } from './planHookUp.js';

/** The calculator: the parts at hand and what they bear in; the limiting resistor and what mistakes do, out. */
export function PlanHookUp(props: CalculatorProps) {
  return <Calculator form={planHookUpForm} show={show} workings={workings} ask={ask} {...props} />;
}

const workings = () => import('../workings/planHookUp.js');

type Values = Parameters<typeof planHookUp>[0];

const show = (values: Values) => shownOf(planHookUp(values));
const ask = async (values: Values) => shownOf(await askHookUp(values));

function shownOf({ circuit, sentences, connections, closed, open }: HookUpPlan): ShownResult {
  const [head = [], ...rows] = connections;
  const right = rows[0] ?? [];
  return {
    sentences,
    caution: circuit.limiter === 0 ? readingsWords.noLimiter : undefined,
    picture: <Picture circuit={circuit} />,
    drawing: (
      <div class="drawings">
        <Picture circuit={circuit} />
        <CircuitDrawing id="circuit-drawing" circuit={circuit} closed={closed} open={open} />
      </div>
    ),
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

/** The bench as it lies there. */
function Picture({ circuit }: { readonly circuit: Circuit }) {
  const { source, limiter, sensor } = circuit;
  return (
    <HookUpPicture
      id="hook-up-picture"
      source={source.volts}
      limiter={limiter}
      track={sensor.track}
    />
  );
}
