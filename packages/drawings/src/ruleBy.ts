import { type FieldRule, InputError } from '@truesweep/core';

/** A rule by a check of core, whose refusals are told of the property instead of what the check calls it. */
export const ruleBy =
  (named: string, check: (value: unknown) => void): FieldRule =>
  (value, path) => {
    try {
      check(value);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const told = (text: string) =>
        text.startsWith(named) ? path + text.slice(named.length) : text;
      const { code, place, cause } = error;
      throw new InputError(code, told(error.path), told(error.message), place, { cause });
    }
  };
