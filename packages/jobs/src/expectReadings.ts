import {
  type Celsius,
  dividerVolts,
  type Fraction,
  type Ohms,
  type Pascals,
  pressureRatio,
  type ReadOn,
  resistanceAtTemperature,
  resistanceBand,
  type Seconds,
  type StationPressure,
  shownTemperature,
  stationPressure,
  timeInBath,
  type Volts,
} from '@truesweep/core';
import { knownAnyJob } from './parseAnyJob.js';
import type {
  PressureJob,
  ReadingsJob,
  ThermistorJob,
  TwoStateJob,
  WindingJob,
} from './readingsJob.js';

/** What a sound sensor must read, by its kind. */
export type ExpectedOfKind =
  | {
      readonly kind: 'thermistor';
      /** At temperatures in °C: Ω without load, V on the pull-up where one is told, and what a scan tool shows, °C. */
      readonly rows: readonly {
        readonly temperature: Celsius;
        readonly ohms: { readonly low: Ohms; readonly nominal: Ohms; readonly high: Ohms };
        readonly volts?: { readonly low: Volts; readonly nominal: Volts; readonly high: Volts };
        readonly shown: Celsius;
      }[];
      /** How long it takes from 20 °C into boiling water until it is within 0.1 K, s; left out where its time constant is not told. */
      readonly settles?: Seconds;
      /** What a break and a short show there, V; left out without a pull-up. */
      readonly faults?: { readonly broken: Volts; readonly shorted: Volts };
    }
  | {
      readonly kind: 'pressure';
      /** The air at the bench. */
      readonly station: StationPressure;
      /** At pressures at the port: gauge and absolute, Pa, the output over the supply, and at 5 V or the middle of the sensor's supplies, V. */
      readonly rows: readonly {
        readonly gauge: Pascals;
        readonly absolute: Pascals;
        readonly ratio: {
          readonly low: Fraction;
          readonly nominal: Fraction;
          readonly high: Fraction;
        };
        readonly volts: { readonly low: Volts; readonly nominal: Volts; readonly high: Volts };
      }[];
      /** The supply of those volts, V. */
      readonly supply: Volts;
    }
  | {
      readonly kind: 'two-state';
      /** The sensor with the windows of both states. */
      readonly sensor: TwoStateJob['sensor'];
    }
  | {
      readonly kind: 'winding';
      /** At temperatures in °C: the limits, Ω; left out where the sensor has none. */
      readonly rows: readonly {
        readonly temperature: Celsius;
        readonly low?: Ohms;
        readonly high?: Ohms;
      }[];
    };

/** Where a thermistor and a winding are looked at, °C. */
const temperatures: readonly Celsius[] = [-20, 0, 10, 20, 25, 30, 40, 60, 80, 90, 100, 110, 120];
const ofWinding: readonly Celsius[] = [-10, 0, 10, 20, 30, 40, 60, 80, 100];
/** Depths that a hand pump is taken to, Pa. */
const vacuums: readonly Pascals[] = [0, 10_000, 20_000, 30_000, 40_000, 50_000, 60_000];

/**
 * What a sound sensor of a job must read: resistances and voltages over temperature, outputs over pressure, the windows of both states, or the limits
 * of a winding over temperature. Temperatures and pressures beyond the sensor's range are left out.
 *
 * @param job A job of a thermistor, a pressure sensor, a sensor of two states or a winding.
 * @throws InputError as {@link parseAnyJob} and the functions of core do.
 *
 * @example
 * const expected = expectReadings(
 *   parseAnyJob({
 *     version: 3,
 *     title: 'Crank sensor of the workshop boat',
 *     sensor: { kind: 'winding', name: 'Crank sensor', low: 765, high: 935 },
 *   }),
 * );
 * expected.rows.find(({ temperature }) => temperature === 80).high // => ≈ 1155.4
 */
export function expectReadings(job: ReadingsJob): ExpectedOfKind {
  const known = knownAnyJob(job);
  switch (known.sensor.kind) {
    case 'thermistor':
      return ofThermistor(known as ThermistorJob);
    case 'pressure':
      return ofPressure(known as PressureJob);
    case 'two-state':
      return { kind: 'two-state', sensor: (known as TwoStateJob).sensor };
    case 'winding':
      return ofCoil(known as WindingJob);
  }
}

function ofThermistor({ sensor, readOn, readings = [] }: ThermistorJob): ExpectedOfKind {
  const { law, tolerances } = sensor;
  const own = readings.flatMap(({ temperature }) =>
    temperature === undefined ? [] : [temperature],
  );
  const at = [...new Set([...temperatures, ...own])].sort((a, b) => a - b);
  const divider = readOn && dividerOf(readOn);
  const rows = at.flatMap((temperature) => {
    const ohms = orNothing(() => resistanceBand(law, temperature, tolerances));
    if (!ohms) return [];
    const volts = divider && {
      low: dividerVolts(divider, ohms.low),
      nominal: dividerVolts(divider, ohms.nominal),
      high: dividerVolts(divider, ohms.high),
    };
    const shown = shownTemperature(temperature).celsius;
    return [{ temperature, ohms, ...(volts && { volts }), shown }];
  });
  // Where nothing lies in its range the law itself may be wrong: it is asked once more, and says so.
  if (rows.length === 0) resistanceBand(law, temperatures[0]!, tolerances);
  const faults = divider && {
    broken: dividerVolts(divider, Number.POSITIVE_INFINITY),
    shorted: dividerVolts(divider, 0),
  };
  const { timeConstant } = sensor;
  return {
    kind: 'thermistor',
    rows,
    ...(timeConstant !== undefined && { settles: timeInBath(timeConstant, 80, 0.1) }),
    ...(faults && { faults }),
  };
}

const dividerOf = ({ supply, pullUp, meter }: ReadOn) => ({
  supply,
  pullUp,
  ...(meter !== undefined && { meter }),
});

function ofPressure({ sensor, air, temperature = 25 }: PressureJob): ExpectedOfKind {
  const { kind, name: _, ...described } = sensor;
  const station = stationPressure(air);
  const supply = described.supply ? (described.supply.low + described.supply.high) / 2 : 5;
  const isAbsolute = described.reference === 'absolute';
  const rows = vacuums.flatMap((vacuum) => {
    const absolute = station.pressure - vacuum;
    const gauge = 0 - vacuum;
    const ratio = orNothing(() =>
      pressureRatio(described, isAbsolute ? absolute : gauge, temperature),
    );
    if (!ratio) return [];
    const times = (of: Fraction): Volts => of * supply;
    const volts = { low: times(ratio.low), nominal: times(ratio.nominal), high: times(ratio.high) };
    return [{ gauge, absolute, ratio, volts }];
  });
  if (rows.length === 0) pressureRatio(described, isAbsolute ? station.pressure : 0, temperature);
  return { kind, station, rows, supply };
}

function ofCoil({ sensor }: WindingJob): ExpectedOfKind {
  const { at = 20, conductor, low, high } = sensor;
  const wire = { at, ...(conductor && { conductor }) };
  const moved = (ohms: Ohms | undefined, temperature: Celsius) =>
    ohms === undefined ? undefined : resistanceAtTemperature({ ohms, ...wire }, temperature);
  const rows = ofWinding.map((temperature) => {
    const [lowest, highest] = [moved(low, temperature), moved(high, temperature)];
    return {
      temperature,
      ...(lowest !== undefined && { low: lowest }),
      ...(highest !== undefined && { high: highest }),
    };
  });
  return { kind: 'winding', rows };
}

/** What lies beyond a sensor's range is left out of the table. */
function orNothing<Value>(of: () => Value): Value | undefined {
  try {
    return of();
  } catch {
    return undefined;
  }
}
