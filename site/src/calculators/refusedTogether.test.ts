import { describe, expect, test } from 'vitest';
import { type Entries, type Form, initialTexts, readForm } from '../forms/form.js';
import { coil, coilForm } from './coil.js';
import { curveFitForm } from './curveFit.js';
import { iceAndBoilingForm } from './iceAndBoiling.js';
import { openPort, openPortForm } from './openPort.js';
import { potentiometerOrNotForm } from './potentiometerOrNot.js';
import { temperatureNow, temperatureNowForm } from './temperatureNow.js';
import { troubleCodeForm } from './troubleCode.js';
import { twoStatesForm } from './twoStates.js';

const refusals = <Of extends Entries>(form: Form<Of>, texts: Readonly<Record<string, string>>) => {
  const read = readForm(form as unknown as Form<Entries>, {
    ...initialTexts(form as unknown as Form<Entries>),
    ...texts,
  });
  return 'refusals' in read ? read.refusals : {};
};

/** A contact, closed at rest. */
const contact = {
  readsAs: 'ohms',
  restLow: '',
  restHigh: '0.5 Ω',
  operatedLow: '1 MΩ',
  operatedHigh: '',
  atRest: '0.4 Ω',
  operated: 'OL',
  otherWay: 'OL',
  backAtRest: 'OL',
  keyCycled: '0.4 Ω',
  stateUncertainty: '0.1 Ω',
};

/** A form, entries that don't go together, the field that it is told at, and what is told. */
const wrong: readonly (readonly [
  name: string,
  form: unknown,
  texts: Readonly<Record<string, string>>,
  at: string,
  told: RegExp,
])[] = [
  ['beyond the rows', temperatureNowForm, { now: '140 °C' }, 'now', /0.°C to 110.°C/],
  ['limits swapped', temperatureNowForm, { highest2: '2 kΩ' }, 'highest2', /below the lowest/],
  [
    'a row that rises',
    temperatureNowForm,
    { lowest3: '2.6 kΩ', highest3: '2.7 kΩ' },
    'lowest3',
    /row 3 is warmer/,
  ],
  [
    'one temperature twice',
    temperatureNowForm,
    { temperature2: '0 °C' },
    'temperature2',
    /Row 1 has/,
  ],
  ['a row without ohms', temperatureNowForm, { lowest1: '' }, 'lowest1', /Enter the resistance/],
  [
    'a row without temperature',
    temperatureNowForm,
    { temperature1: '' },
    'temperature1',
    /its unit/,
  ],
  [
    'a limit in some rows',
    temperatureNowForm,
    { highest1: '' },
    'highest1',
    /in every row, or in none/,
  ],
  [
    'a B of one temperature',
    temperatureNowForm,
    { law: 'b', bTo: '25 °C' },
    'bTo',
    /belongs to two/,
  ],
  [
    'a pull-up that nothing feeds',
    temperatureNowForm,
    { pullUpSupply: '' },
    'pullUpSupply',
    /feeds/,
  ],
  ['nothing read', iceAndBoilingForm, { iceOhms: '', hotOhms: '' }, 'iceOhms', /at least one/],
  ['no barometer', iceAndBoilingForm, { barometer: '' }, 'barometer', /barometer shows/],
  [
    'boils beyond the rows',
    iceAndBoilingForm,
    { temperature6: '90 °C' },
    'hotTemperature',
    /boils at 99\.9.°C/,
  ],
  [
    'a room without thermometer',
    iceAndBoilingForm,
    { roomOhms: '2.4k' },
    'roomTemperature',
    /thermometer beside/,
  ],
  [
    'a height that lacks',
    iceAndBoilingForm,
    { air: 'altitude' },
    'altitude',
    /height of the bench/,
  ],
  ['points that rise', curveFitForm, { ohms4: '900' }, 'ohms4', /point 4 is warmer/],
  ['a pair without volts', curveFitForm, { pairOhms1: '2k' }, 'pairVolts1', /volts of this pair/],
  [
    'a pair at its supply',
    curveFitForm,
    { pairOhms1: '2k', pairVolts1: '5 V' },
    'pairVolts1',
    /below that/,
  ],
  [
    'a range beyond the points',
    curveFitForm,
    { rangeFrom: '-20 °C' },
    'rangeFrom',
    /0.°C to 99\.4.°C/,
  ],
  ['below empty space', openPortForm, { pump1: '110 kPa vacuum' }, 'pump1', /−100.kPa/],
  [
    'absolute taken for gauge',
    openPortForm,
    { reference: 'gauge', pump1: '', pumpedVolts1: '', pump2: '', pumpedVolts2: '' },
    'reference',
    /absolute or gauge/,
  ],
  ['a negative absolute pressure', openPortForm, { pressure1: '-15 kPa' }, 'pressure1', /below 0/],
  [
    'pumped beyond its range',
    openPortForm,
    { pump1: '5 kPa absolute' },
    'pump1',
    /15.kPa to 115.kPa/,
  ],
  [
    'an output that turns',
    openPortForm,
    { pressure3: '150 kPa', volts3: '1 V' },
    'volts3',
    /all the way/,
  ],
  ['supplies swapped', openPortForm, { supplyHigh: '4 V' }, 'supplyHigh', /above the lowest/],
  [
    'a pump without its output',
    openPortForm,
    { pumpedVolts1: '' },
    'pumpedVolts1',
    /Enter the output/,
  ],
  ['no limit', coilForm, { coilLow: '', coilHigh: '' }, 'coilLow', /lowest or the highest/],
  ['ohms where volts are read', twoStatesForm, { atRest: '2 Ω' }, 'atRest', /no reading in volts/],
  ['windows that overlap', twoStatesForm, { operatedLow: '1 V' }, 'operatedLow', /overlap/],
  [
    'OL as a lowest',
    twoStatesForm,
    { ...contact, restLow: 'OL', restHigh: '' },
    'restLow',
    /OL is no lowest/,
  ],
  [
    'no limit but OL',
    twoStatesForm,
    { ...contact, restLow: '', restHigh: 'OL' },
    'restLow',
    /lowest or the highest/,
  ],
  [
    'no uncertainty',
    twoStatesForm,
    { stateUncertainty: '' },
    'stateUncertainty',
    /standard uncertainty/,
  ],
  ['ohms beyond', twoStatesForm, { ...contact, atRest: '2 GΩ' }, 'atRest', /0.Ω to 1.GΩ/],
  ['one angle', twoStatesForm, { angleHigh: '' }, 'angleHigh', /both angles/],
  ['half a movement', potentiometerOrNotForm, { oneMoved: '' }, 'oneMoved', /both readings/],
  [
    'a supply of a thermistor',
    troubleCodeForm,
    { plugSupply: 'missing' },
    'plugSupply',
    /pressure sensor/,
  ],
];

describe('what does not go together is refused beside its field', () => {
  test.each(wrong)('%s', (_, form, texts, at, told) => {
    const found = refusals(form as Form<Entries>, texts);
    expect(Object.keys(found)).toEqual([at]);
    expect(found[at]).toMatch(told);
  });
});

test('rows in another order, and °F, tell the same', () => {
  const given = (texts: Readonly<Record<string, string>>) => {
    const read = readForm(temperatureNowForm, { ...initialTexts(temperatureNowForm), ...texts });
    if (!('values' in read)) throw new Error('must be read');
    return temperatureNow(read.values).ohms.low;
  };
  const swapped = {
    temperature1: '68 °F',
    lowest1: '2.3k',
    highest1: '2.8k',
    temperature2: '32 °F',
    lowest2: '5.5k',
    highest2: '6.8k',
  };
  expect(given(swapped)).toBeCloseTo(given({}), 6);
});

test('a line and two points of it judge alike', () => {
  const judged = (answers: string) => {
    const read = readForm(openPortForm, { ...initialTexts(openPortForm), answers });
    if (!('values' in read)) throw new Error('must be read');
    return openPort(read.values);
  };
  expect(judged('line').open?.volts.low).toBeCloseTo(judged('table').open?.volts.low ?? 0, 9);
  expect(judged('line').judgement.verdict).toBe('pass');
});

const valuesOf = <Of extends Entries>(form: Form<Of>, texts: Readonly<Record<string, string>>) => {
  const read = readForm(form, { ...initialTexts(form), ...texts });
  if (!('values' in read)) throw new Error(JSON.stringify(read.refusals));
  return read.values;
};

test('of leads that nobody read the current takes off as much as the verdict', () => {
  const { judgement, current } = coil(valuesOf(coilForm, { coilOhms: '0.6 Ω', coilLeads: '' }));
  expect(judgement.checks[0]?.measured).toBeCloseTo(0.5, 9);
  expect(current?.amps).toBeCloseTo(24, 6);
});

test('a supply that was limited on one side is told that side only', () => {
  const limits = (texts: Readonly<Record<string, string>>) => {
    const { checks } = openPort(valuesOf(openPortForm, texts)).judgement;
    const supply = checks.find(({ check }) => check === 'supply');
    return [supply?.lowLimit, supply?.highLimit];
  };
  expect(limits({ supplyLow: '' })).toEqual([undefined, 5.25]);
  expect(limits({ supplyHigh: '' })).toEqual([4.75, undefined]);
  expect(limits({})).toEqual([4.75, 5.25]);
});

test('a scan tool may show of a sound sensor what its tolerance leaves', () => {
  const { shown, ohms, perKelvin } = temperatureNow(valuesOf(temperatureNowForm, {}));
  expect(shown.low).toBeLessThan(shown.high);
  // By hand: half the band over the slope, to whole °C.
  const colder = Math.log(ohms.high / ohms.nominal) / perKelvin;
  expect(Math.abs(21.5 - colder - shown.low)).toBeLessThanOrEqual(0.5 + 1e-9);
  // Without a tolerance: one value.
  const lacking = Object.fromEntries([1, 2, 3, 4, 5, 6].map((i) => [`highest${i}`, '']));
  const exact = temperatureNow(valuesOf(temperatureNowForm, { ...lacking, ohmsTolerance: '0 %' }));
  expect(exact.shown.low).toBe(exact.shown.high);
});
