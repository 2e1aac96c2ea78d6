import { checkFields, checkText, type FieldRules, InputError } from '@truesweep/core';
import { dateSeconds } from './dates.js';
import type { HistoryRecord } from './historyRecord.js';

const verdicts = ['pass', 'marginal', 'fail', 'inconclusive'];
const most = 1e12;

function number(low: number, high: number) {
  return (value: unknown, path: string): void => {
    if (typeof value === 'number' && value >= low && value <= high) return;
    const wrong = `${path} must be a number from ${low} to ${high}.`;
    throw new InputError(value === undefined ? 'missing' : 'out-of-range', path, wrong);
  };
}

const any = number(-most, most);
const notNegative = number(0, most);

function filledText(value: unknown, path: string): void {
  checkText(value, path);
  if ((value as string).trim() === '')
    throw new InputError('empty', path, `${path} is empty; it must be a text.`);
}

function hash(value: unknown, path: string): void {
  if (typeof value === 'string' && /^[0-9a-f]{64}$/.test(value)) return;
  const wrong = `${path} must be a SHA-256: 64 hexadecimal digits, lower case.`;
  throw new InputError(value === undefined ? 'missing' : 'not-a-hash', path, wrong);
}

function date(value: unknown, path: string): void {
  checkText(value, path);
  if (dateSeconds(value as string) !== undefined) return;
  const wrong = `${path} must be a date as 2026-05-03, or one with a time as 2026-05-03T14:30Z.`;
  throw new InputError('unclear-date', path, wrong);
}

const end: FieldRules = { 'volts?': any, 'uncertainty?': notNegative, low: any, high: any };

const rules: FieldRules = {
  kind: ['truesweep-record'],
  form: formOne,
  sensor: filledText,
  recording: hash,
  'date?': date,
  'dateFrom?': ['told', 'file-name', 'judged'],
  file: checkText,
  'note?': checkText,
  'version?': checkText,
  verdict: verdicts,
  'cause?': filledText,
  'closed?': end,
  'open?': end,
  noise: notNegative,
  visible: notNegative,
  'hysteresis?': any,
  roughness: notNegative,
  findings: notNegative,
  'worst?': { kind: filledText, 'travel?': any, depthOfSpan: notNegative },
  recorder: { interval: notNegative, resolution: notNegative },
};

function formOne(value: unknown, path: string): void {
  if (value === 1) return;
  const isNewer = typeof value === 'number' && value > 1;
  throw new InputError(
    isNewer ? 'newer-version' : 'not-a-version',
    path,
    isNewer
      ? `${path} is ${value}: a newer truesweep wrote this record; read it with that one.`
      : `${path} must be 1.`,
  );
}

/**
 * Refuses anything but a record of a recording; returns it.
 *
 * @param value Anything, such as a line of a file, parsed.
 * @param path What it is called in a refusal; `record` when left out.
 * @throws InputError with the path of the field that is wrong, `newer-version` for a later form.
 *
 * @example
 * let code;
 * try {
 *   checkRecord({ kind: 'truesweep-record', form: 2 });
 * } catch (error) {
 *   code = error.code;
 * }
 * code // => 'newer-version'
 */
export function checkRecord(value: unknown, path = 'record'): HistoryRecord {
  checkFields(value, path, rules);
  const record = value as HistoryRecord;
  for (const name of ['closed', 'open'] as const) {
    const { low = 0, high = 0 } = record[name] ?? {};
    if (low > high)
      throw new InputError(
        'out-of-order',
        `${path}.${name}`,
        `${path}.${name} has its limits exchanged.`,
      );
  }
  return record;
}
