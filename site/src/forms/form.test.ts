import { describe, expect, test } from 'vitest';
import { benchToVehicle, benchToVehicleForm } from '../calculators/benchToVehicle.js';
import { coil, coilForm } from '../calculators/coil.js';
import { curveFit, curveFitForm } from '../calculators/curveFit.js';
import { expectedReadings, expectedReadingsForm } from '../calculators/expectedReadings.js';
import {
  findTerminals,
  findTerminalsForm,
  hasNoReading,
  ownTerminalsForm,
} from '../calculators/findTerminals.js';
import { iceAndBoiling, iceAndBoilingForm } from '../calculators/iceAndBoiling.js';
import { openPort, openPortForm } from '../calculators/openPort.js';
import { planHookUp, planHookUpForm } from '../calculators/planHookUp.js';
import { potentiometerOrNot, potentiometerOrNotForm } from '../calculators/potentiometerOrNot.js';
import { setClosed, setClosedForm } from '../calculators/setClosed.js';
import { showDirt, showDirtForm } from '../calculators/showDirt.js';
import { supplyDrop, supplyDropForm } from '../calculators/supplyDrop.js';
import { temperatureNow, temperatureNowForm } from '../calculators/temperatureNow.js';
import { troubleCode, troubleCodeForm } from '../calculators/troubleCode.js';
import { twoStates, twoStatesForm } from '../calculators/twoStates.js';
import { whichInstrument, whichInstrumentForm } from '../calculators/whichInstrument.js';
import { jobForm, jobOf } from '../checkSweep/jobForm.js';
import { refit, refitForm } from '../way/refit.js';
import { boundsOf, type Entry, type OwnEntry, type QuantityEntry } from './entry.js';
import { type Entries, type Form, initialTexts, namesOf, readForm, type Values } from './form.js';

interface Given {
  readonly form: Form<Entries>;
  readonly solve: (values: Values<Entries>) => unknown;
}

const given = <Of extends Entries>(form: Form<Of>, solve: (values: Values<Of>) => unknown) =>
  ({ form, solve }) as unknown as Given;

const noTicks = { asksRelearn: false, relearned: false, snapsShut: false };

const forms: Readonly<Record<string, Given>> = {
  planHookUp: given(planHookUpForm, planHookUp),
  expectedReadings: given(expectedReadingsForm, expectedReadings),
  whichInstrument: given(whichInstrumentForm, whichInstrument),
  findTerminals: given(findTerminalsForm, findTerminals),
  setClosed: given(setClosedForm, setClosed),
  benchToVehicle: given(benchToVehicleForm, benchToVehicle),
  supplyDrop: given(supplyDropForm, supplyDrop),
  showDirt: given(showDirtForm, showDirt),
  checkSweep: given(jobForm, jobOf),
  ownTerminals: given(ownTerminalsForm, findTerminals),
  temperatureNow: given(temperatureNowForm, temperatureNow),
  iceAndBoiling: given(iceAndBoilingForm, iceAndBoiling),
  curveFit: given(curveFitForm, curveFit),
  openPort: given(openPortForm, openPort),
  coil: given(coilForm, coil),
  twoStates: given(twoStatesForm, twoStates),
  potentiometerOrNot: given(potentiometerOrNotForm, potentiometerOrNot),
  troubleCode: given(troubleCodeForm, troubleCode),
  refit: given(refitForm, (values) => refit(values, noTicks) ?? 'no window'),
};

const isQuantity = (entry: Entry): entry is QuantityEntry | OwnEntry =>
  entry.unit !== 'text' && entry.unit !== 'choice';

/** The texts that are shown pale where nothing was entered. */
const examplesOf = (form: Form<Entries>) =>
  Object.fromEntries(
    Object.entries(form.entries).flatMap(([name, entry]) =>
      isQuantity(entry) && entry.example !== undefined ? [[name, entry.example]] : [],
    ),
  );

describe.each(Object.entries(forms))('%s', (_, { form, solve }) => {
  const names = namesOf(form);
  const first = initialTexts(form);
  // Each entry by itself, whatever the others are.
  const { check: __, ...plain } = form;

  test('every entry has one place in the form, a label and a hint', () => {
    expect([...names].sort()).toEqual(Object.keys(form.entries).sort());
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) {
      expect(form.labels[name], name).toMatch(/\S/);
      expect(form.hints[name], name).toMatch(/\.$/);
    }
    expect(new Set(names.map((name) => form.labels[name])).size).toBe(names.length);
  });

  test('what stands in it first, or could, has an answer', () => {
    const read = readForm(form, { ...first, ...examplesOf(form) });
    expect(read).not.toHaveProperty('refusals');
    if ('values' in read) expect(solve(read.values)).toBeTruthy();
  });

  test('both bounds of every entry are taken, and what lies beyond them is not', () => {
    for (const name of names) {
      const entry = form.entries[name] as Entry;
      if (entry.unit === 'choice') {
        for (const text of Object.keys(entry.choices))
          expect(readForm(plain, { ...first, [name]: text }), name).not.toHaveProperty('refusals');
        expect(readForm(plain, { ...first, [name]: 'nothing of these' })).toHaveProperty(
          `refusals.${name}`,
        );
        continue;
      }
      if (entry.unit === 'text') continue;
      const [low, high] = boundsOf(entry);
      for (const text of [low, high])
        expect(readForm(plain, { ...first, [name]: text }), name).not.toHaveProperty('refusals');
      if (entry.unit === 'own') {
        expect(readForm(plain, { ...first, [name]: 'nothing of the kind' }), name).toHaveProperty(
          `refusals.${name}`,
        );
        continue;
      }
      const beyond = [
        entry.low > 0 ? '0' : `${entry.low * 2 - 1}`,
        `${entry.high * (entry.unit === '%' ? 200 : 2)}`,
      ];
      for (const text of beyond)
        expect(readForm(plain, { ...first, [name]: text }), `${name} ${text}`).toHaveProperty(
          `refusals.${name}`,
        );
    }
  });

  test('an entry left empty is refused beside its field unless it may be', () => {
    for (const name of names) {
      const read = readForm(plain, { ...first, [name]: ' ' });
      const entry = form.entries[name] as Entry;
      if (entry.unit === 'text' || (entry.unit !== 'choice' && entry.optional))
        expect(read, name).not.toHaveProperty('refusals');
      else expect(read, name).toHaveProperty(`refusals.${name}`);
    }
  });
});

test('no example is a value: nothing is known of a sensor that nobody measured, and no window is checked against', () => {
  const terminals = readForm(ownTerminalsForm, initialTexts(ownTerminalsForm));
  expect('values' in terminals && hasNoReading(terminals.values)).toBe(true);
  const refitting = readForm(refitForm, initialTexts(refitForm));
  expect('values' in refitting && refit(refitting.values, noTicks)).toBeUndefined();
});

test('each wrong entry has its own refusal', () => {
  const texts = {
    ...initialTexts(expectedReadingsForm),
    track: '1,500',
    source: '70 V',
    input: '',
  };
  expect(readForm(expectedReadingsForm, texts)).toEqual({
    refusals: {
      track: expect.stringContaining('1.500'),
      source: expect.stringContaining('write 100\u00a0mV to 60\u00a0V'),
      input: expect.stringContaining('such as'),
    },
  });
});

test('an over-range of an ohmmeter is an endless resistance', () => {
  const texts = { ...initialTexts(findTerminalsForm), ACclosed: ' OL', ACopen: 'open' };
  const read = readForm(findTerminalsForm, texts);
  expect(read).toMatchObject({ values: { ACclosed: Infinity, ACopen: Infinity } });
});
