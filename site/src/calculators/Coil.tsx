import { coilWords, windingAdvice, windingUnsaid } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { measureText } from '../forms/measureText.js';
import { quantityText } from '../forms/quantityText.js';
import { type CoilAt, coil, coilForm, type JudgedCoil } from './coil.js';
import { JudgedTables } from './JudgedTables.js';
import { judgedSentences } from './judgedSentences.js';

/** The calculator: a winding's resistance at its temperature in; the verdict, its current and its kick out. */
export function Coil({ keeping }: CalculatorProps) {
  return <Calculator form={coilForm} show={show} workings={workings} keeping={keeping} />;
}

const words = coilWords;

const own = { advice: windingAdvice, unsaid: windingUnsaid };

const workings = () => import('../workings/coil.js');

function show(values: Parameters<typeof coil>[0]): ShownResult {
  const judgedCoil = coil(values);
  const { judgement, readings, here, rows, current, feed } = judgedCoil;
  const judged = { kind: 'winding', judgement, readings } as const;
  return {
    sentences: [
      ...judgedSentences(judged, own),
      limitsSentence(here),
      ...(current && feed !== undefined
        ? [
            words.current(
              quantityText(current.amps, 'A'),
              quantityText(current.watts, 'W'),
              quantityText(feed, 'V'),
            ),
          ]
        : []),
    ],
    caution: `${kickOf(judgedCoil)} ${words.feedBriefly}`,
    below: (
      <>
        <JudgedTables judged={judged} sentences={own} />
        <DataTable
          id="temperatures"
          caption={words.table}
          head={[words.temperature, words.low, words.high]}
          rows={rows.map(({ temperature, low, high }) => [
            measureText(temperature, '°C'),
            ...[low, high].map((ohms) => (ohms === undefined ? '–' : quantityText(ohms, 'Ω'))),
          ])}
        />
      </>
    ),
    sheet: [[words.resistanceAt(measureText(here.temperature, '°C')), rangeOf(here)]],
  };
}

function kickOf({ current }: JudgedCoil): string {
  if (!current?.stored) return words.someKick;
  const { kick, joules } = current.stored;
  return words.kick(quantityText(kick, 'V'), `${joules.toPrecision(2)}\u00a0J`);
}

function limitsSentence({ temperature, low, high }: CoilAt): string {
  const at = measureText(temperature, '°C');
  if (low === undefined) return words.atMostAt(quantityText(high ?? 0, 'Ω'), at);
  if (high === undefined) return words.atLeastAt(quantityText(low, 'Ω'), at);
  return words.limitsAt(quantityText(low, 'Ω'), quantityText(high, 'Ω'), at);
}

function rangeOf({ low, high }: CoilAt): string {
  return [low, high]
    .map((ohms) => (ohms === undefined ? '…' : quantityText(ohms, 'Ω')))
    .join(' – ');
}
