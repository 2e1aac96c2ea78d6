import {
  type CodeFault,
  type CodeLimitComparison,
  type CodeObservations,
  compareCodeLimit,
  locateCodeFault,
  type ReadCode,
  readTroubleCode,
} from '@truesweep/core/codes';
import { type CodeEntry, codeHints, codeLabels, codeWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';

/** P0105 to P0109, P0110 to P0114 and P0115 to P0119, those that the library knows. */
const codes: Readonly<Record<`P${string}`, string>> = Object.fromEntries(
  Array.from({ length: 15 }, (_, i) => `P0${105 + i}`).map((code) => [code, code]),
);

const notSeen = { '': codeWords.notSeen };

const entries = {
  code: { unit: 'choice', initial: 'P0118', choices: codes },
  unplugged: { unit: 'choice', initial: 'high', choices: { ...notSeen, ...codeWords.signals } },
  bridged: { unit: 'choice', initial: '', choices: { ...notSeen, ...codeWords.signals } },
  leads: { unit: 'choice', initial: '', choices: { ...notSeen, ...codeWords.leadStates } },
  pull: { unit: 'choice', initial: '', choices: { ...notSeen, ...codeWords.pulls } },
  plugSupply: { unit: 'choice', initial: '', choices: { ...notSeen, ...codeWords.supplies } },
  side: { unit: 'choice', initial: 'above', choices: codeWords.sides },
  limitVolts: { unit: 'V', low: 0, high: 60, initial: '', optional: true },
  unitSupply: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
} as const satisfies Readonly<Record<CodeEntry, Entry>>;

/** The form: a code with the sensor plugged in, and by itself what was seen with it unplugged. */
export const troubleCodeForm: Form<typeof entries> = {
  groups: [
    { title: codeWords.pluggedIn, names: ['code'] },
    { title: codeWords.unplugged, names: ['unplugged', 'bridged', 'leads', 'pull', 'plugSupply'] },
    { title: codeWords.page, names: ['side', 'limitVolts', 'unitSupply'], folded: true },
  ],
  entries,
  readings: ['code', 'unplugged'],
  labels: codeLabels,
  hints: codeHints,
  check,
};

type CodeValues = Values<typeof entries>;

function check({
  code,
  pull,
  plugSupply,
  limitVolts,
  unitSupply,
}: CodeValues): Refusals<typeof entries> {
  const isThermistor = readTroubleCode(code).sensor !== 'manifold-pressure';
  return {
    ...(isThermistor && pull !== '' && { pull: codeWords.notThermistor }),
    ...(isThermistor && plugSupply !== '' && { plugSupply: codeWords.notThermistor }),
    ...(limitVolts !== undefined &&
      limitVolts > unitSupply && { limitVolts: codeWords.aboveSupply }),
  };
}

/** What a code says, whose fault it is, and whether a page has it right. */
export interface LocatedCode {
  readonly read: ReadCode;
  readonly fault: CodeFault;
  readonly seen: CodeObservations;
  readonly compared?: CodeLimitComparison;
}

export function troubleCode(values: CodeValues): LocatedCode {
  const { code, unplugged, bridged, leads, pull, plugSupply, side, limitVolts } = values;
  const seen: CodeObservations = {
    code,
    ...(unplugged !== '' && { unplugged }),
    ...(bridged !== '' && { bridged }),
    ...(leads !== '' && { leads }),
    ...(pull !== '' && { pull }),
    ...(plugSupply !== '' && { supply: plugSupply }),
  };
  return {
    read: readTroubleCode(code),
    fault: locateCodeFault(seen),
    seen,
    ...(limitVolts !== undefined && {
      compared: compareCodeLimit({
        code,
        set: side,
        volts: limitVolts,
        supply: values.unitSupply,
      }),
    }),
  };
}
