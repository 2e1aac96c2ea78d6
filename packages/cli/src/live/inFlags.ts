import { InputError } from '@truesweep/core';

/** The command's options by the names that the library knows them by. */
const flags: Readonly<Record<string, string>> = {
  timeColumn: '--time-column',
  signalColumn: '--signal-column',
  supplyColumn: '--supply-column',
  timeUnit: '--time-unit',
  signalUnit: '--signal-unit',
  voltsPerUnit: '--volts-per-unit',
  sampleRate: '--rate',
  delimiter: '--delimiter',
  decimal: '--decimal',
};

/** A refusal in the words of the command line: its options by their flags. */
export function inFlags(error: unknown): unknown {
  if (!(error instanceof InputError)) return error;
  const { code, path, message, place } = error;
  const named = path.replace(/^options\.(\w+)$/, (whole, name: string) => flags[name] ?? whole);
  const said = message.replace(
    /\bthe options? (\w+)(?: and (\w+))?/g,
    (whole, one: string, other: string | undefined) => {
      const told = [one, other].flatMap((name) => (name && flags[name] ? [flags[name]] : []));
      return told.length > 0 ? told.join(' and ') : whole;
    },
  );
  return new InputError(code, named, said.replaceAll('µs', 'us'), place);
}
