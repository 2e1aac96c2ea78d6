import type { Celsius, Kelvins, Ohms, Seconds, Volts } from '@truesweep/core';
import {
  dividerVolts,
  type PullUpDivider,
  type SelfHeating,
  selfHeating,
} from '@truesweep/core/pullUp';
import {
  type ResistanceBand,
  relativeSlopeAt,
  resistanceBand,
  shownTemperature,
  timeInBath,
} from '@truesweep/core/thermistor';
import { temperatureNowHints, temperatureNowLabels, temperatureNowWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { measureEntry } from '../forms/measureEntry.js';
import {
  allLawHints,
  allLawLabels,
  beyondLaw,
  checkedLaw,
  drawnTemperatures,
  lawEntries,
  lawGroups,
  lawOf,
  lawReadings,
  rowTemperatures,
} from './thermistorLaw.js';

const entries = {
  ...lawEntries,
  now: measureEntry('temperature', [-60, 400], '21.5 °C'),
  pullUpOhms: { unit: 'Ω', low: 1, high: 1e7, initial: '1 kΩ', optional: true },
  pullUpSupply: { unit: 'V', low: 0.1, high: 60, initial: '5 V', optional: true },
  meterInput: { unit: 'Ω', low: 1000, high: 1e12, initial: '', optional: true },
  dissipation: { unit: 'W', low: 1e-5, high: 10, initial: '', optional: true },
  timeConstant: { unit: 's', low: 0.1, high: 3600, initial: '20 s', optional: true },
  before: measureEntry('temperature', [-60, 400], '5 °C'),
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: the manual's rows, how warm the sensor is now, and what it is read on. */
export const temperatureNowForm: Form<typeof entries> = {
  groups: [
    { title: temperatureNowWords.now, names: ['now'] },
    ...lawGroups,
    { title: temperatureNowWords.onPullUp, names: ['pullUpOhms', 'pullUpSupply', 'meterInput'] },
    {
      title: temperatureNowWords.further,
      names: ['timeConstant', 'before', 'dissipation'],
      folded: true,
    },
  ],
  entries,
  readings: ['now', ...lawReadings],
  labels: { ...allLawLabels, ...temperatureNowLabels },
  hints: { ...allLawHints, ...temperatureNowHints },
  check,
};

type TemperatureNowValues = Values<typeof entries>;

function check(values: TemperatureNowValues): Refusals<typeof entries> {
  const ofLaw = checkedLaw(values);
  if (Object.keys(ofLaw).length > 0) return ofLaw;
  const beyond = beyondLaw(values, values.now);
  return {
    ...(beyond && { now: beyond }),
    ...(values.pullUpOhms !== undefined &&
      values.pullUpSupply === undefined && { pullUpSupply: temperatureNowWords.needsSupply }),
  };
}

/** How near to its bath a sensor must come to be read, K. */
export const nearEnough: Kelvins = 0.2;

/** A band of voltages. */
export interface VoltBand {
  readonly low: Volts;
  readonly nominal: Volts;
  readonly high: Volts;
}

/** What a sound sensor has at one temperature. */
export interface AtTemperature {
  readonly temperature: Celsius;
  readonly ohms: ResistanceBand;
  readonly volts?: VoltBand;
}

/** What a temperature sensor must read now. */
export interface TemperatureNow extends AtTemperature {
  readonly hasBand: boolean;
  /** What a scan tool may show of a sound one, the coldest and the hottest. */
  readonly shown: { readonly low: Celsius; readonly high: Celsius };
  readonly perKelvin: number;
  readonly pullUp?: { readonly ohms: Ohms; readonly supply: Volts; readonly broken: Volts };
  readonly wait?: { readonly seconds: Seconds; readonly from: Celsius };
  readonly heated?: SelfHeating | 'beyond';
  readonly rows: readonly AtTemperature[];
  readonly drawn: readonly (ResistanceBand & { readonly temperature: Celsius })[];
}

/** The pull-up with the meter beside the sensor; nothing where no pull-up was entered. */
export function dividerOf(values: TemperatureNowValues): PullUpDivider | undefined {
  const { pullUpOhms, pullUpSupply, meterInput } = values;
  if (pullUpOhms === undefined || pullUpSupply === undefined) return undefined;
  return {
    supply: pullUpSupply,
    pullUp: pullUpOhms,
    ...(meterInput !== undefined && { meter: meterInput }),
  };
}

export function temperatureNow(values: TemperatureNowValues): TemperatureNow {
  const { now, dissipation, timeConstant, before } = values;
  const { law, tolerances } = lawOf(values);
  const divider = dividerOf(values);
  const at = (temperature: Celsius): AtTemperature => {
    const ohms = resistanceBand(law, temperature, tolerances);
    return {
      temperature,
      ohms,
      ...(divider && {
        volts: {
          low: dividerVolts(divider, ohms.low),
          nominal: dividerVolts(divider, ohms.nominal),
          high: dividerVolts(divider, ohms.high),
        },
      }),
    };
  };
  const own = at(now);
  const step = Math.abs(now - before);
  const slope = relativeSlopeAt(law, now);
  // By the law's slope here: a tolerance is a few kelvins, and beyond its ends a law tells no temperature.
  const shownOf = (ohms: Ohms): Celsius =>
    shownTemperature(now + Math.log(ohms / own.ohms.nominal) / slope).celsius;
  return {
    ...own,
    hasBand: own.ohms.low < own.ohms.high,
    shown: { low: shownOf(own.ohms.high), high: shownOf(own.ohms.low) },
    perKelvin: -slope,
    ...(divider && {
      pullUp: {
        ohms: divider.pullUp,
        supply: divider.supply,
        broken: dividerVolts(divider, Number.POSITIVE_INFINITY),
      },
    }),
    ...(timeConstant !== undefined &&
      step > nearEnough && {
        wait: { seconds: timeInBath(timeConstant, step, nearEnough), from: before },
      }),
    ...(divider &&
      dissipation !== undefined && { heated: heatedBy(law, divider, now, dissipation) }),
    rows: [...new Set([...rowTemperatures(values), now])].sort((a, b) => a - b).map(at),
    drawn: drawnTemperatures(values).map((temperature) => ({
      temperature,
      ...at(temperature).ohms,
    })),
  };
}

/** How far the current warms it; `beyond` where that leads out of its law. */
function heatedBy(...given: Parameters<typeof selfHeating>): SelfHeating | 'beyond' {
  try {
    return selfHeating(...given);
  } catch {
    return 'beyond';
  }
}
