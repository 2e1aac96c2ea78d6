import type { Celsius, Kelvins } from '@truesweep/core';
import { boilingBath, iceBath } from '@truesweep/core/atmosphere';
import { type ResistanceBand, resistanceBand } from '@truesweep/core/thermistor';
import {
  type Judgement,
  judgeThermistor,
  type ThermistorAdvice,
  type ThermistorCheck,
  type ThermistorReading,
  type ThermistorUnsaid,
} from '@truesweep/core/thermistorVerdict';
import { airHints, airLabels, bathHints, bathLabels, bathWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { measureEntry } from '../forms/measureEntry.js';
import { measureText } from '../forms/measureText.js';
import { airEntries, airGroup, airOf, checkedAir } from './benchAir.js';
import {
  allLawHints,
  allLawLabels,
  beyondLaw,
  checkedLaw,
  drawnTemperatures,
  lawEntries,
  lawGroups,
  lawOf,
  lawRange,
  lawReadings,
} from './thermistorLaw.js';

const ohms = (initial: string) =>
  ({ unit: 'Ω', low: 0, high: 1e9, initial, optional: true, overRange: true }) as const;
const celsius = { ...measureEntry('temperature', [-60, 400], ''), optional: true } as const;

const entries = {
  ...lawEntries,
  ...airEntries,
  iceOhms: ohms('6.24 kΩ'),
  hotOhms: ohms('184 Ω'),
  hotTemperature: celsius,
  roomOhms: ohms(''),
  roomTemperature: celsius,
  thermometer: measureEntry('temperature-difference', [0, 10], '0.5 K'),
  meterPart: { unit: '%', low: 0, high: 0.1, initial: '0.5 %' },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: readings in ice and boiling water, the manual's rows, the air at the bench. */
export const iceAndBoilingForm: Form<typeof entries> = {
  groups: [
    { title: bathWords.readings, names: ['iceOhms', 'hotOhms', 'hotTemperature'] },
    airGroup,
    ...lawGroups,
    {
      title: bathWords.further,
      names: ['roomOhms', 'roomTemperature', 'thermometer', 'meterPart'],
      folded: true,
    },
  ],
  entries,
  readings: ['iceOhms', 'hotOhms', 'barometer', ...lawReadings],
  labels: { ...allLawLabels, ...airLabels, ...bathLabels },
  hints: { ...allLawHints, ...airHints, ...bathHints },
  check,
};

type BathValues = Values<typeof entries>;

function check(values: BathValues): Refusals<typeof entries> {
  const ofLaw = checkedLaw(values);
  if (Object.keys(ofLaw).length > 0) return ofLaw;
  const { iceOhms, hotOhms, hotTemperature, roomOhms, roomTemperature } = values;
  const boils = hotOhms !== undefined && hotTemperature === undefined;
  const ofAir = boils ? checkedAir(values) : {};
  if (Object.keys(ofAir).length > 0) return ofAir;
  const [low, high] = lawRange(values).map((at) => measureText(at, '°C')) as [string, string];
  const boiling = boils ? boilingOf(values).temperature : undefined;
  const beyond = (at: Celsius | undefined) => at !== undefined && beyondLaw(values, at);
  return {
    ...([iceOhms, hotOhms, roomOhms].every((one) => one === undefined) && {
      iceOhms: bathWords.needsReading,
    }),
    ...(iceOhms !== undefined && beyond(0) && { iceOhms: bathWords.iceBeyond(low, high) }),
    ...(beyond(boiling) && {
      hotTemperature: bathWords.boilsBeyond(measureText(boiling ?? 0, '°C'), low, high),
    }),
    ...(hotOhms !== undefined && pick('hotTemperature', beyond(hotTemperature))),
    ...(roomOhms !== undefined &&
      (roomTemperature === undefined
        ? { roomTemperature: bathWords.needsRoomTemperature }
        : pick('roomTemperature', beyond(roomTemperature)))),
  };
}

function pick(name: string, refusal: string | false | undefined) {
  return refusal ? { [name]: refusal } : {};
}

/** How warm boiling water is at the bench. */
export type Boiling = ReturnType<typeof boilingBath>;

const boilingOf = (values: BathValues): Boiling => boilingBath(airOf(values));

/** What the readings of a thermistor say. */
export interface JudgedBaths {
  readonly judgement: Judgement<ThermistorCheck, ThermistorAdvice, ThermistorUnsaid>;
  readonly readings: readonly (ThermistorReading & { readonly ohms: number })[];
  /** Left out where nothing was read in boiling water. */
  readonly boiling?: Boiling;
  readonly iceBand?: ResistanceBand;
  readonly boilingBand?: ResistanceBand;
  readonly drawn: readonly (ResistanceBand & { readonly temperature: Celsius })[];
}

export function iceAndBoiling(values: BathValues): JudgedBaths {
  const { iceOhms, hotOhms, hotTemperature, roomOhms, roomTemperature } = values;
  const { thermometer, meterPart } = values;
  const { law, tolerances } = lawOf(values);
  const boiling =
    hotOhms !== undefined && hotTemperature === undefined ? boilingOf(values) : undefined;
  const read = (
    at: Celsius | undefined,
    temperatureUncertainty: Kelvins,
    ohms: number | undefined,
  ): readonly (ThermistorReading & { readonly ohms: number })[] =>
    at === undefined || ohms === undefined
      ? []
      : [
          {
            temperature: at,
            temperatureUncertainty,
            ohms,
            uncertainty: ohms === Number.POSITIVE_INFINITY ? 0 : meterPart * ohms,
          },
        ];
  const readings = [
    ...read(iceBath.temperature, iceBath.uncertainty, iceOhms),
    ...read(roomTemperature, thermometer, roomOhms),
    ...(boiling
      ? read(boiling.temperature, boiling.uncertainty, hotOhms)
      : read(hotTemperature, thermometer, hotOhms)),
  ];
  const band = (at: Celsius) => resistanceBand(law, at, tolerances);
  return {
    judgement: judgeThermistor({ law, ...(tolerances && { tolerances }) }, readings),
    readings,
    ...(boiling && { boiling, boilingBand: band(boiling.temperature) }),
    ...(iceOhms !== undefined && { iceBand: band(0) }),
    drawn: drawnTemperatures(values).map((temperature) => ({ temperature, ...band(temperature) })),
  };
}
