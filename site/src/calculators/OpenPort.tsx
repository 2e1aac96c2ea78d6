import { PressureDrawing } from '@truesweep/drawings';
import { portWords, pressureAdvice, pressureUnsaid } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { measureText } from '../forms/measureText.js';
import { quantityText } from '../forms/quantityText.js';
import { JudgedTables } from './JudgedTables.js';
import { judgedSentences } from './judgedSentences.js';
import { type AtPort, type JudgedPort, openPort, openPortForm } from './openPort.js';

/** The calculator: outputs with the port open and pumped in; the verdict with its reasons out. */
export function OpenPort({ keeping }: CalculatorProps) {
  return <Calculator form={openPortForm} show={show} workings={workings} keeping={keeping} />;
}

const words = portWords;

const own = { advice: pressureAdvice, unsaid: pressureUnsaid };

const workings = () => import('../workings/openPort.js');

function show(values: Parameters<typeof openPort>[0]): ShownResult {
  const port = openPort(values);
  const { judgement, readings, open, shown } = port;
  const judged = { kind: 'pressure', judgement, readings } as const;
  return {
    sentences: [
      ...judgedSentences(judged, own),
      ...(open
        ? [
            words.mustRead(
              measureText(port.station.pressure, 'kPa'),
              quantityText(open.volts.low, 'V'),
              quantityText(open.volts.high, 'V'),
            ),
          ]
        : []),
      ...(shown === undefined ? [] : [words.shown(measureText(shown, 'kPa'))]),
    ],
    caution: words.caution,
    drawing: drawingOf(port),
    below: (
      <>
        <JudgedTables judged={judged} sentences={own} />
        <DataTable
          id="expected"
          caption={words.table}
          head={[words.pressure, words.lowest, words.nominal, words.highest]}
          rows={port.expected.map(({ pressure, volts }) => [
            measureText(pressure, 'kPa'),
            ...[volts.low, volts.nominal, volts.high].map((one) => quantityText(one, 'V')),
          ])}
        />
      </>
    ),
    sheet: port.expected.map((at, i) => [placeOf(port, at, i), range(at)] as const),
  };
}

function drawingOf({ reference, supply, drawn, readings, station, judgement }: JudgedPort) {
  const base = reference === 'absolute' ? station.pressure : 0;
  return (
    <PressureDrawing
      id="pressure"
      unit="V"
      against={reference}
      points={drawn.map(({ pressure, low, nominal, high }) => ({
        pressure,
        low: low * supply,
        nominal: nominal * supply,
        high: high * supply,
      }))}
      readings={readings.map(
        ({ gauge, gaugeUncertainty, readAs = 'gauge', volts, uncertainty }, i) => ({
          pressure: base + gauge,
          pressureUncertainty:
            readAs === reference
              ? gaugeUncertainty
              : Math.hypot(gaugeUncertainty, station.uncertainty),
          signal: volts,
          uncertainty,
          outcome:
            judgement.checks.find(
              ({ check, reading }) => reading === i && /^(open-port|pumped)$/.test(check),
            )?.outcome ?? ('not-judged' as const),
        }),
      )}
    />
  );
}

function placeOf({ open }: JudgedPort, { pressure }: AtPort, i: number): string {
  const at = measureText(pressure, 'kPa');
  return i === 0 && open ? words.openAt(at) : words.pumpedAt(at);
}

function range({ volts }: AtPort): string {
  return `${quantityText(volts.low, 'V')} – ${quantityText(volts.high, 'V')}`;
}
