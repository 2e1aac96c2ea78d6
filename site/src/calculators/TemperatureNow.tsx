import { ThermistorDrawing } from '@truesweep/drawings';
import { type BandWords, temperatureNowWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { measureText } from '../forms/measureText.js';
import { quantityText } from '../forms/quantityText.js';
import {
  type TemperatureNow as Now,
  nearEnough,
  temperatureNow,
  temperatureNowForm,
} from './temperatureNow.js';

/** The calculator: the manual's rows and a temperature in; ohms, volts and what a scan tool shows, out. */
export function TemperatureNow({ keeping }: CalculatorProps) {
  return <Calculator form={temperatureNowForm} show={show} workings={workings} keeping={keeping} />;
}

const words = temperatureNowWords;

const workings = () => import('../workings/temperatureNow.js');

function show(values: Parameters<typeof temperatureNow>[0]): ShownResult {
  const now = temperatureNow(values);
  const at = measureText(now.temperature, '°C');
  const isBelow = now.hasBand;
  return {
    sentences: sentencesOf(now, at),
    drawing: <ThermistorDrawing id="thermistor" points={now.drawn} readings={[]} />,
    below: <RowsTable now={now} />,
    ...(isBelow && {
      sheet: [
        [words.ohmsAt(at), range(now.ohms, 'Ω')],
        ...(now.volts ? [[words.voltsAt(at), range(now.volts, 'V')] as const] : []),
      ],
    }),
  };
}

function sentencesOf(now: Now, at: string): readonly string[] {
  const { ohms, volts, pullUp, wait, heated } = now;
  return [
    now.hasBand
      ? words.ohms(at, bandWords(ohms, 'Ω'))
      : words.noBand(at, quantityText(ohms.nominal, 'Ω')),
    ...(volts && pullUp
      ? [
          words.volts(
            quantityText(pullUp.ohms, 'Ω'),
            quantityText(pullUp.supply, 'V'),
            bandWords(volts, 'V'),
          ),
          words.faults(quantityText(pullUp.broken, 'V')),
        ]
      : []),
    now.shown.low === now.shown.high
      ? words.shown(measureText(now.shown.low, '°C'))
      : words.shownBand(measureText(now.shown.low, '°C'), measureText(now.shown.high, '°C')),
    words.perKelvin(quantityText(now.perKelvin, '%')),
    ...(wait
      ? [
          words.wait(
            quantityText(wait.seconds, 's'),
            measureText(wait.from, '°C'),
            measureText(nearEnough, 'K'),
          ),
        ]
      : []),
    ...(heated === 'beyond'
      ? [words.heatsBeyond]
      : heated
        ? [words.heats(measureText(heated.rise, 'K'), quantityText(heated.volts, 'V'))]
        : []),
  ];
}

function RowsTable({ now }: { readonly now: Now }) {
  const hasVolts = now.volts !== undefined;
  return (
    <DataTable
      id="rows"
      caption={words.table}
      head={[
        words.temperature,
        words.lowest,
        words.nominal,
        words.highest,
        ...(hasVolts ? [words.voltage] : []),
      ]}
      rows={now.rows.map(({ temperature, ohms, volts }) => [
        measureText(temperature, '°C'),
        ...[ohms.low, ohms.nominal, ohms.high].map((one) => quantityText(one, 'Ω')),
        ...(volts ? [range(volts, 'V')] : []),
      ])}
    />
  );
}

interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

function bandWords({ low, nominal, high }: Band, unit: 'Ω' | 'V'): BandWords {
  return {
    low: quantityText(low, unit),
    nominal: quantityText(nominal, unit),
    high: quantityText(high, unit),
  };
}

function range({ low, high }: Band, unit: 'Ω' | 'V'): string {
  return `${quantityText(low, unit)} – ${quantityText(high, unit)}`;
}
