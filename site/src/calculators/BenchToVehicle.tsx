import type { CarriedReading, ThrottlePercent, Volts } from '@truesweep/core';
import { CircuitDrawing } from '@truesweep/drawings';
import { carryWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import {
  type BenchAndVehicle,
  benchToVehicle,
  benchToVehicleForm,
  type ScanShown,
} from './benchToVehicle.js';

/** The calculator: a reading on the bench in, the same place on the vehicle and on a scan tool out; and back. */
export function BenchToVehicle({ keeping }: CalculatorProps) {
  return <Calculator form={benchToVehicleForm} show={show} workings={workings} keeping={keeping} />;
}

const workings = () => import('../workings/benchToVehicle.js');

function show(values: Parameters<typeof benchToVehicle>[0]): ShownResult {
  const both = benchToVehicle(values);
  return {
    sentences: sentencesOf(both),
    drawing: <CircuitDrawing id="circuit-drawing" circuit={both.bench} {...both.atStops} />,
    below: (
      <>
        <PlacesTable both={both} />
        <ScanTable both={both} />
      </>
    ),
    sheet: [
      [`${carryWords.benchVolts}: ${carryWords.closed}`, volts(both.closed.bench)],
      [`${carryWords.vehicleVolts}: ${carryWords.closed}`, carriedVolts(both.closed.vehicle)],
      [`${carryWords.vehicleVolts}: ${carryWords.open}`, carriedVolts(both.open.vehicle)],
    ],
  };
}

function sentencesOf(both: BenchAndVehicle): readonly string[] {
  const { toVehicle, toBench, reading, stated, reference, scan, fromScan } = both;
  const { onBench, onVehicle } = carryWords;
  return [
    toVehicle.kind === 'carried'
      ? carryWords.toVehicle({
          bench: volts(reading),
          vehicle: volts(toVehicle.volts),
          ratio: quantityText(toVehicle.ratio, '%'),
          reference: volts(reference),
        })
      : carryWords.notCarried[toVehicle.kind](onBench),
    ...(scan
      ? [carryWords.scan(percentText(scan.absolute), scan.relative && percentText(scan.relative))]
      : []),
    toBench.kind === 'carried'
      ? carryWords.toBench({ vehicle: volts(stated), bench: volts(toBench.volts) })
      : carryWords.notCarried[toBench.kind](onVehicle),
    ...(fromScan
      ? [
          carryWords.fromScan(
            quantityText(fromScan.percent / 100, '%'),
            volts(fromScan.volts),
            volts(fromScan.low),
            volts(fromScan.high),
          ),
        ]
      : []),
  ];
}

function PlacesTable({ both }: { readonly both: BenchAndVehicle }) {
  const { closed, open, reading, toVehicle, stated, toBench } = both;
  const row = (place: string, bench: string, carried: CarriedReading, vehicle: string) => [
    place,
    carried.kind === 'carried' ? quantityText(carried.position, '%') : '–',
    bench,
    vehicle,
  ];
  return (
    <DataTable
      id="places"
      caption={carryWords.numbers}
      head={[carryWords.place, carryWords.wiper, carryWords.benchVolts, carryWords.vehicleVolts]}
      rows={[
        row(carryWords.closed, volts(closed.bench), closed.vehicle, carriedVolts(closed.vehicle)),
        row(carryWords.open, volts(open.bench), open.vehicle, carriedVolts(open.vehicle)),
        row(carryWords.read, volts(reading), toVehicle, carriedVolts(toVehicle)),
        row(carryWords.stated, carriedVolts(toBench), toBench, volts(stated)),
      ]}
    />
  );
}

function ScanTable({ both }: { readonly both: BenchAndVehicle }) {
  const rows = (
    [
      [carryWords.closed, both.closed.scan],
      [carryWords.open, both.open.scan],
      [carryWords.read, both.scan],
    ] as const
  ).flatMap(([place, scan]) => (scan ? [[place, ...scanCells(scan)]] : []));
  return (
    <DataTable
      id="scan"
      caption={carryWords.scanTable}
      head={[carryWords.place, carryWords.absolute, carryWords.relative]}
      rows={rows}
    />
  );
}

function scanCells({ absolute, relative }: ScanShown): readonly string[] {
  return [absolute, relative].map((shown) =>
    shown ? `${percentText(shown)} (${percents(shown.low, shown.high)})` : '–',
  );
}

function percents(low: number, high: number): string {
  return `${quantityText(low / 100, '%')} – ${quantityText(high / 100, '%')}`;
}

function percentText({ percent }: ThrottlePercent): string {
  return quantityText(percent / 100, '%');
}

function volts(value: Volts): string {
  return quantityText(value, 'V');
}

function carriedVolts(carried: CarriedReading): string {
  return carried.kind === 'carried' ? volts(carried.volts) : '–';
}
