import { InputError, type InputErrorCode } from '@truesweep/core';
import type { BaseIssue } from 'valibot';

/**
 * A refusal as the message of a schema's issue: its code and what is to be said after the field's path. The
 * path is known only once the job was read, so the sentence is finished by {@link inputErrorOf}.
 *
 * @param name The field of the group that is refused, where it isn't the whole of it.
 */
export function refusal(code: InputErrorCode, predicate: string, name?: string): string {
  return JSON.stringify([code, predicate, name]);
}

/** A schema's issue as an error. */
export function inputErrorOf(issue: BaseIssue<unknown>): InputError {
  const [code, predicate, name] = JSON.parse(issue.message);
  const path = pathOf(issue) + (name === null ? '' : `.${clipped(name)}`);
  return new InputError(code, path, `${path} ${predicate}`);
}

function pathOf({ path }: BaseIssue<unknown>): string {
  const steps = (path ?? []).map(({ key }) =>
    typeof key === 'number' ? `[${key}]` : `.${String(key)}`,
  );
  return `job${steps.join('')}`;
}

/** A value of a job as it is shown in a refusal. */
export function shown(value: unknown): string {
  if (value === undefined) return 'missing';
  if (value === null) return 'null';
  if (typeof value === 'number') return String(value).replace('-', '−');
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of fields';
  if (typeof value === 'string') return clipped(JSON.stringify(value));
  return typeof value === 'boolean' ? `${value}` : `a ${typeof value}`;
}

/** The beginning of a text that no line would hold. */
export function clipped(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}
