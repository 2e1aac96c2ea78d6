import type { jobEntries } from '@truesweep/wording';

/** The name of a field that a job is filled in by. */
export type JobFieldName = keyof typeof jobEntries;

/** A field as it stands in a job's file and on the command line. */
export interface JobField {
  readonly name: JobFieldName;
  /** Where it stands in the file. */
  readonly path: string;
  /** Its option, with what it takes. */
  readonly flags: string;
  readonly isNeeded: boolean;
}

const needed: readonly (readonly [name: JobFieldName, path: string, flags: string])[] = [
  ['title', 'title', '--title <text>'],
  ['sensor', 'sensor.name', '--sensor <text>'],
  ['track', 'sensor.track', '--track <resistance>'],
  ['source', 'hookUp.source.volts', '--source <voltage>'],
  ['limiter', 'hookUp.limiter', '--limiter <resistance>'],
  ['instrument', 'instrument.name', '--instrument <text>'],
  ['inputResistance', 'instrument.inputResistance', '--input-resistance <resistance>'],
];

const further: typeof needed = [
  ['closedAt', 'sensor.closedPosition', '--closed-at <place>'],
  ['openAt', 'sensor.openPosition', '--open-at <place>'],
  ['trackTolerance', 'sensor.tolerances.track', '--track-tolerance <part>'],
  ['closedTolerance', 'sensor.tolerances.closedPosition', '--closed-tolerance <part>'],
  ['openTolerance', 'sensor.tolerances.openPosition', '--open-tolerance <part>'],
  ['pullDown', 'hookUp.pullDown', '--pull-down <resistance>'],
  ['resolution', 'instrument.resolution', '--resolution <voltage>'],
];

const fieldOf =
  (isNeeded: boolean) =>
  ([name, path, flags]: (typeof needed)[number]): JobField => ({ name, path, flags, isNeeded });

/** Every field that a job is filled in by, in the order in which it is asked. */
export const jobFields: readonly JobField[] = [
  ...needed.map(fieldOf(true)),
  ...further.map(fieldOf(false)),
];

/** The option of a field without what it takes. */
export function flagOf({ flags }: JobField): string {
  return flags.split(' ')[0]!;
}
