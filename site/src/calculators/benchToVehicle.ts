import {
  absoluteThrottlePercent,
  type CarriedReading,
  type Circuit,
  carryToBench,
  carryToVehicle,
  expectedCurve,
  type Fraction,
  type Hookup,
  type OperatingPoint,
  type OutputSense,
  relativeThrottlePercent,
  type ThrottlePercent,
  throttlePercentRatio,
  type Volts,
} from '@truesweep/core';
import { carryHints, carryLabels, carryWords, entryHints, entryLabels } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';
import { atStops, benchCircuit } from './hookUp.js';
import { benchEntries, benchNames } from './hookUpEntries.js';

const entries = {
  benchReading: { unit: 'V', low: 0, high: 60, initial: '420 mV' },
  vehicleReading: { unit: 'V', low: 0, high: 60, initial: '500 mV' },
  reference: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
  vehiclePullDown: { unit: 'Ω', low: 100, high: 1e9, initial: '220 kΩ' },
  vehiclePullUp: { unit: 'Ω', low: 100, high: 1e9, initial: '', optional: true },
  learnedClosed: { unit: 'V', low: 0, high: 60, initial: '', optional: true },
  scanPercent: { unit: '%', low: 0, high: 1, initial: '', optional: true },
  ...benchEntries,
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: readings, the vehicle's side, what a scan tool shows, and the bench hook-up. */
export const benchToVehicleForm: Form<typeof entries> = {
  groups: [
    { title: carryWords.readings, names: ['benchReading', 'vehicleReading'] },
    { title: carryWords.vehicle, names: ['reference', 'vehiclePullDown', 'vehiclePullUp'] },
    {
      title: carryWords.bench,
      names: benchNames,
    },
    { title: carryWords.scanTool, names: ['learnedClosed', 'scanPercent'] },
  ],
  entries,
  readings: ['benchReading', 'vehicleReading'],
  labels: { ...entryLabels, ...carryLabels },
  hints: { ...entryHints, ...carryHints },
};

/** What a scan tool shows at a place. */
export interface ScanShown {
  readonly absolute: ThrottlePercent;
  /** Left out where the learned closed signal isn't known. */
  readonly relative?: ThrottlePercent;
}

/** A stop on bench and vehicle. */
export interface StopOnBoth {
  readonly bench: Volts;
  readonly vehicle: CarriedReading;
  readonly scan?: ScanShown;
}

/** Readings carried both ways, and what a scan tool makes of them. */
export interface BenchAndVehicle {
  readonly bench: Circuit;
  /** The bench circuit at its stops. */
  readonly atStops: { readonly closed: OperatingPoint; readonly open: OperatingPoint };
  readonly reference: Volts;
  readonly reading: Volts;
  readonly toVehicle: CarriedReading;
  readonly scan?: ScanShown;
  readonly stated: Volts;
  readonly toBench: CarriedReading;
  readonly closed: StopOnBoth;
  readonly open: StopOnBoth;
  /** What the given percent of a scan tool stands for, V; left out where none was given. */
  readonly fromScan?: {
    readonly percent: number;
    readonly volts: Volts;
    readonly low: Volts;
    readonly high: Volts;
  };
}

/** The bench circuit, the vehicle's hook-up, and which way the output goes as the throttle opens. */
export function onBoth(values: Values<typeof entries>): {
  readonly bench: Circuit;
  readonly vehicle: Hookup;
  readonly sense: OutputSense;
} {
  const { reference, vehiclePullDown, vehiclePullUp, closedPosition, openPosition } = values;
  return {
    bench: benchCircuit(values),
    vehicle: {
      source: { volts: reference },
      limiter: 0,
      load: {
        pullDown: vehiclePullDown,
        ...(vehiclePullUp !== undefined && { pullUp: { ohms: vehiclePullUp, from: 'source' } }),
      },
    },
    sense: closedPosition <= openPosition ? 'rising' : 'falling',
  };
}

export function benchToVehicle(values: Values<typeof entries>): BenchAndVehicle {
  const { reference, benchReading, vehicleReading, learnedClosed, scanPercent } = values;
  const { bench, vehicle, sense } = onBoth(values);
  const learned = learnedClosed === undefined ? undefined : learnedClosed / reference;
  const scanAt = (ratio: Fraction): ScanShown => ({
    absolute: absoluteThrottlePercent(ratio, sense),
    ...(learned !== undefined && {
      relative: relativeThrottlePercent(ratio, learned, sense),
    }),
  });
  const onScan = (carried: CarriedReading) =>
    carried.kind === 'carried' ? { scan: scanAt(carried.ratio) } : {};
  const stops = expectedCurve(bench, 2).volts;
  const stop = (travel: 0 | 1): StopOnBoth => {
    const volts = stops[travel] as Volts;
    const carried = carryToVehicle({ volts }, bench, vehicle);
    return { bench: volts, vehicle: carried, ...onScan(carried) };
  };
  const toVehicle = carryToVehicle({ volts: benchReading }, bench, vehicle);
  return {
    bench,
    atStops: atStops(bench),
    reference,
    reading: benchReading,
    toVehicle,
    ...onScan(toVehicle),
    stated: vehicleReading,
    toBench: carryToBench({ volts: vehicleReading }, bench, vehicle),
    closed: stop(0),
    open: stop(1),
    ...(scanPercent !== undefined && { fromScan: readBack(scanPercent, sense, reference) }),
  };
}

function readBack(part: Fraction, sense: OutputSense, reference: Volts) {
  const { ratio, low, high } = throttlePercentRatio(part * 100, sense);
  return {
    percent: part * 100,
    volts: ratio * reference,
    low: low * reference,
    high: high * reference,
  };
}
