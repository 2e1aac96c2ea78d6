import { resistanceAt, type ThermistorLaw } from '@truesweep/core/thermistor';
import { compareSoaked, type SoakComparison } from '@truesweep/core/thermistorVerdict';
import { soakHints, soakLabels, soakWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { measureEntry } from '../forms/measureEntry.js';
import { quantityText } from '../forms/quantityText.js';
import {
  allLawHints,
  allLawLabels,
  checkedLaw,
  lawEntries,
  lawGroups,
  lawOf,
  lawRange,
  lawReadings,
} from './thermistorLaw.js';

const ohms = (initial: string) => ({ unit: 'Ω', low: 0.1, high: 1e9, initial }) as const;

const entries = {
  ...lawEntries,
  oneOhms: ohms('2.62 kΩ'),
  otherOhms: ohms('3.31 kΩ'),
  otherLaw: {
    unit: 'choice',
    initial: 'same',
    choices: { same: soakWords.same, own: soakWords.own },
  },
  otherAt25: ohms('10 kΩ'),
  otherB: measureEntry('temperature-difference', [1000, 10_000], '3435 K'),
  otherTolerance: { unit: '%', low: 0, high: 0.5, initial: '5 %' },
  soakTemperature: { ...measureEntry('temperature', [-60, 100], ''), optional: true },
  soakThermometer: measureEntry('temperature-difference', [0, 10], '0.5 K'),
  soakMeter: { unit: '%', low: 0, high: 0.1, initial: '0.5 %' },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: two resistances after a night, the manual's rows, a thermometer where there is one. */
export const soakForm: Form<typeof entries> = {
  groups: [
    { title: soakWords.readings, names: ['oneOhms', 'otherOhms', 'soakTemperature'] },
    ...lawGroups,
    {
      title: soakWords.other,
      names: ['otherLaw', 'otherAt25', 'otherB', 'otherTolerance', 'soakThermometer', 'soakMeter'],
      folded: true,
    },
  ],
  entries,
  readings: ['oneOhms', 'otherOhms', ...lawReadings],
  labels: { ...allLawLabels, ...soakLabels },
  hints: { ...allLawHints, ...soakHints },
  check,
};

type SoakValues = Values<typeof entries>;

/** The other's law where it is its own: one B from far below 0 °C to far above, as wide as a night and a day are. */
const ownLaw = ({ otherAt25, otherB }: SoakValues): ThermistorLaw => ({
  kind: 'b',
  b: otherB,
  ohms: otherAt25,
  from: 25,
  to: 85,
  lowest: -30,
  highest: 85,
});

function check(values: SoakValues): Refusals<typeof entries> {
  const ofLaw = checkedLaw(values);
  if (Object.keys(ofLaw).length > 0) return ofLaw;
  const { law } = lawOf(values);
  const beyond = (
    ofWhich: ThermistorLaw,
    [lowest, highest]: readonly [number, number],
    read: number,
  ): string | undefined => {
    const [most, least] = [resistanceAt(ofWhich, lowest), resistanceAt(ofWhich, highest)];
    if (read <= most && read >= least) return undefined;
    return soakWords.notIn(quantityText(least, 'Ω'), quantityText(most, 'Ω'));
  };
  const one = beyond(law, lawRange(values), values.oneOhms);
  const other =
    values.otherLaw === 'own'
      ? beyond(ownLaw(values), [-30, 85], values.otherOhms)
      : beyond(law, lawRange(values), values.otherOhms);
  return { ...(one && { oneOhms: one }), ...(other && { otherOhms: other }) };
}

export function soak(values: SoakValues): SoakComparison {
  const { oneOhms, otherOhms, otherLaw, otherTolerance, soakTemperature } = values;
  const sensor = lawOf(values);
  const read = (ohms: number) => ({ ohms, uncertainty: values.soakMeter * ohms });
  const other =
    otherLaw === 'own' ? { law: ownLaw(values), tolerances: { ohms: otherTolerance } } : sensor;
  return compareSoaked(
    { ...sensor, ...read(oneOhms) },
    { ...other, ...read(otherOhms) },
    soakTemperature === undefined
      ? undefined
      : { temperature: soakTemperature, uncertainty: values.soakThermometer },
  );
}
