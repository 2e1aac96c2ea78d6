import { ThermistorDrawing } from '@truesweep/drawings';
import { bathWords, thermistorAdvice, thermistorUnsaid } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { measureText } from '../forms/measureText.js';
import { quantityText } from '../forms/quantityText.js';
import { iceAndBoiling, iceAndBoilingForm, type JudgedBaths } from './iceAndBoiling.js';
import { JudgedTables } from './JudgedTables.js';
import { judgedSentences } from './judgedSentences.js';
import { outcomeOf } from './outcomeOf.js';

/** The calculator: readings in ice and boiling water in; the verdict with its reasons out. */
export function IceAndBoiling({ keeping }: CalculatorProps) {
  return <Calculator form={iceAndBoilingForm} show={show} workings={workings} keeping={keeping} />;
}

const own = { advice: thermistorAdvice, unsaid: thermistorUnsaid };

const workings = () => import('../workings/iceAndBoiling.js');

function show(values: Parameters<typeof iceAndBoiling>[0]): ShownResult {
  const baths = iceAndBoiling(values);
  const { judgement, readings, boiling, drawn } = baths;
  const judged = { kind: 'thermistor', judgement, readings } as const;
  return {
    sentences: [
      ...judgedSentences(judged, own),
      ...(boiling
        ? [
            bathWords.boils(
              measureText(boiling.temperature, '°C'),
              measureText(boiling.station.pressure, 'kPa'),
              measureText(2 * boiling.uncertainty, 'K'),
            ),
          ]
        : []),
    ],
    caution: bathWords.caution,
    drawing: (
      <ThermistorDrawing
        id="thermistor"
        points={drawn}
        readings={readings.map(({ temperature, temperatureUncertainty, ohms, uncertainty }, i) => ({
          temperature,
          temperatureUncertainty,
          ohms,
          uncertainty,
          outcome: outcomeOf(judgement.checks, i),
        }))}
      />
    ),
    below: <JudgedTables judged={judged} sentences={own} />,
    sheet: sheetOf(baths),
  };
}

function sheetOf({
  iceBand,
  boilingBand,
  boiling,
}: JudgedBaths): NonNullable<ShownResult['sheet']> {
  const range = ({ low, high }: { readonly low: number; readonly high: number }) =>
    `${quantityText(low, 'Ω')} – ${quantityText(high, 'Ω')}`;
  return [
    ...(iceBand ? [[bathWords.iceAt, range(iceBand)] as const] : []),
    ...(boilingBand && boiling
      ? [[bathWords.boilingAt(measureText(boiling.temperature, '°C')), range(boilingBand)] as const]
      : []),
  ];
}
