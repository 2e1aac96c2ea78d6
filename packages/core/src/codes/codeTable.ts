/** What a standard code is about. */
export type CodedSensor = 'manifold-pressure' | 'air-temperature' | 'coolant-temperature';

/** What a control unit noticed: a circuit fault not told further, a value out of range or of behaviour, a signal too low, too high, or one that comes and goes. */
export type CodeKind = 'circuit' | 'range' | 'low' | 'high' | 'intermittent';

const kinds: readonly CodeKind[] = ['circuit', 'range', 'low', 'high', 'intermittent'];

/** The first code of each sensor; the kinds follow one another. */
const firsts: Readonly<Record<CodedSensor, number>> = {
  'manifold-pressure': 105,
  'air-temperature': 110,
  'coolant-temperature': 115,
};

const table = (Object.keys(firsts) as CodedSensor[]).flatMap((sensor) =>
  kinds.map((kind, i) => ({ code: codeOf(sensor, kind, i), sensor, kind })),
);

/** The code that a sensor's fault of a kind has. */
export function codeOf(sensor: CodedSensor, kind: CodeKind, place = kinds.indexOf(kind)): string {
  return `P0${firsts[sensor] + place}`;
}

/** Every code known. */
export const knownCodes: readonly string[] = table.map(({ code }) => code);

/** What a known code says. */
export function entryOf(code: string): {
  readonly code: string;
  readonly sensor: CodedSensor;
  readonly kind: CodeKind;
} {
  return table[knownCodes.indexOf(code)]!;
}
