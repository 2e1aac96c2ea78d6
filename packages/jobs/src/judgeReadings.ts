import {
  boilingBath,
  InputError,
  iceBath,
  judgePressure,
  judgeThermistor,
  judgeTwoState,
  judgeWinding,
  type PressureJudgement,
  type PressureReading,
  type StationPressure,
  stationPressure,
  type ThermistorJudgement,
  type ThermistorReading,
  type TwoStateJudgement,
  type TwoStateReading,
  type WindingJudgement,
  type WindingReading,
} from '@truesweep/core';
import { knownAnyJob } from './parseAnyJob.js';
import type {
  BathReading,
  PortReading,
  PressureJob,
  ReadingsJob,
  ThermistorJob,
  TwoStateJob,
  WindingJob,
} from './readingsJob.js';

/** A judgement of single readings, by the kind of the sensor. */
export type JudgedReadings =
  | {
      readonly kind: 'thermistor';
      /** What the readings say. */
      readonly judgement: ThermistorJudgement;
      /** The readings as they were judged: each bath's temperature in °C, with its uncertainty in K. */
      readonly readings: readonly ThermistorReading[];
    }
  | {
      readonly kind: 'pressure';
      /** What the readings say. */
      readonly judgement: PressureJudgement;
      /** The readings as they were judged: each port as gauge pressure, Pa. */
      readonly readings: readonly PressureReading[];
      /** The air at the bench, by which they were. */
      readonly station: StationPressure;
    }
  | {
      readonly kind: 'two-state';
      /** What the readings say. */
      readonly judgement: TwoStateJudgement;
      /** The readings as they were judged. */
      readonly readings: readonly TwoStateReading[];
    }
  | {
      readonly kind: 'winding';
      /** What the readings say. */
      readonly judgement: WindingJudgement;
      /** The readings as they were judged. */
      readonly readings: readonly WindingReading[];
    };

/**
 * Judges a job's single readings. Ice is 0 °C, boiling water as warm as the air's pressure has it; a pressure at the port is taken against the air at
 * the bench.
 *
 * @param job A job of a thermistor, a pressure sensor, a sensor of two states or a winding.
 * @param more Readings of a pressure sensor besides those in the job, such as of a recorded pump-down; none when left out.
 * @throws InputError `nothing-to-score` where there is no reading; what {@link parseAnyJob} and the judges of core refuse.
 *
 * @example
 * const { judgement } = judgeReadings(
 *   parseAnyJob({
 *     version: 3,
 *     title: 'Crank sensor of the workshop boat',
 *     sensor: { kind: 'winding', name: 'Crank sensor', low: 765, high: 935 },
 *     readings: [
 *       { ohms: '866 Ω', uncertainty: 3, leads: 0.2, temperature: '23 °C', temperatureUncertainty: 1 },
 *     ],
 *   }),
 * );
 * judgement.verdict // => 'pass'
 */
export function judgeReadings(job: ReadingsJob, more: readonly PortReading[] = []): JudgedReadings {
  const known = knownAnyJob(job);
  if ((known.readings ?? []).length + more.length === 0) {
    throw new InputError(
      'nothing-to-score',
      'job.readings',
      'job.readings is empty; there must be a reading to judge.',
    );
  }
  switch (known.sensor.kind) {
    case 'thermistor':
      return judgeBaths(known as ThermistorJob);
    case 'pressure':
      return judgePorts(known as PressureJob, more);
    case 'two-state': {
      const { sensor, readings = [] } = known as TwoStateJob;
      const { kind: _, name: __, reads, ...windows } = sensor;
      const judgement = judgeTwoState({ kind: reads, ...windows }, readings);
      return { kind: 'two-state', judgement, readings };
    }
    case 'winding': {
      const { sensor, readings = [] } = known as WindingJob;
      const { kind: _, name: __, ...limits } = sensor;
      return { kind: 'winding', judgement: judgeWinding(limits, readings), readings };
    }
  }
}

function judgeBaths({ sensor, readings = [], readOn, air }: ThermistorJob): JudgedReadings {
  const { kind, name: _, timeConstant: __, ...described } = sensor;
  const inBaths = readings.map((reading, i) => inBath(reading, air, `job.readings[${i}]`));
  return { kind, judgement: judgeThermistor(described, inBaths, readOn), readings: inBaths };
}

/** A reading with its bath's temperature. */
function inBath(reading: BathReading, air: ThermistorJob['air'], path: string): ThermistorReading {
  const { bath = 'thermometer', temperature, temperatureUncertainty, unsettled = 0 } = reading;
  const { bath: _, unsettled: __, ...read } = reading;
  const known = (at: number, uncertainty: number | undefined): ThermistorReading => {
    if (uncertainty === undefined) {
      throw new InputError(
        'missing',
        `${path}.temperatureUncertainty`,
        `${path}.temperatureUncertainty is missing; a thermometer's must be told, such as "0.5 K".`,
      );
    }
    return {
      ...read,
      temperature: at,
      temperatureUncertainty: Math.hypot(uncertainty, unsettled),
    };
  };
  if (bath !== 'thermometer' && temperature !== undefined) {
    throw new InputError(
      'unexpected',
      `${path}.temperature`,
      `${path}.temperature stands with ${bath === 'ice' ? 'ice' : 'boiling water'}, which knows its own; leave out the one or the other.`,
    );
  }
  if (bath === 'ice')
    return known(iceBath.temperature, temperatureUncertainty ?? iceBath.uncertainty);
  if (bath === 'thermometer') {
    if (temperature !== undefined) return known(temperature, temperatureUncertainty);
    throw new InputError(
      'missing',
      `${path}.temperature`,
      `${path}.temperature is missing; say what the thermometer shows, or "bath": "ice" or "boiling".`,
    );
  }
  if (air === undefined) {
    throw new InputError(
      'missing',
      'job.air',
      'job.air is missing; water boils by the pressure of the air: give a barometer, an altimeter setting or the altitude.',
    );
  }
  const boiling = boilingBath(air);
  return known(boiling.temperature, temperatureUncertainty ?? boiling.uncertainty);
}

function judgePorts(
  { sensor, readings = [], air, temperature }: PressureJob,
  more: readonly PortReading[],
): JudgedReadings {
  const { kind, name: _, ...described } = sensor;
  const station = stationPressure(air);
  const atPorts = [...readings, ...more].map(
    ({ port, portUncertainty, ...read }, i): PressureReading => {
      if (port === 'open') return { ...read, gauge: 0, gaugeUncertainty: portUncertainty ?? 0 };
      if (portUncertainty === undefined) {
        const path = `job.readings[${i}].portUncertainty`;
        const wrong = 'is missing; how true the gauge reads must be told, such as "0.4 kPa"';
        throw new InputError('missing', path, `${path} ${wrong}.`);
      }
      const { pascals, reference } = port;
      return {
        ...read,
        gauge: reference === 'absolute' ? pascals - station.pressure : pascals,
        readAs: reference,
        gaugeUncertainty: portUncertainty,
      };
    },
  );
  const bench = {
    station: station.pressure,
    stationUncertainty: station.uncertainty,
    ...(temperature !== undefined && { temperature }),
  };
  return { kind, judgement: judgePressure(described, bench, atPorts), readings: atPorts, station };
}
