import { filingLabels, verdictLabels } from '@truesweep/wording';

/** A test for a value, which names what is wrong in it: the path from there, empty for the value itself; undefined where it is right. */
type Shape = (value: unknown) => string | undefined;

const when =
  (holds: (value: unknown) => boolean): Shape =>
  (value) =>
    holds(value) ? undefined : '';

const text = when((value) => typeof value === 'string');
const number = when((value) => typeof value === 'number');
const size = when((value) => Number.isSafeInteger(value) && (value as number) >= 0);
/** A quantity that is never below 0, and small enough to be computed with. */
const magnitude = when((value) => typeof value === 'number' && value >= 0 && value <= 1e12);
const signed = when((value) => typeof value === 'number' && Math.abs(value) <= 1e12);
const oneOf = (...words: readonly string[]) =>
  when((value) => typeof value === 'string' && words.includes(value));

const maybe =
  (shape: Shape): Shape =>
  (value) =>
    value === undefined ? undefined : shape(value);

const list =
  (item: Shape): Shape =>
  (value) => {
    if (!Array.isArray(value)) return '';
    for (const [i, one] of value.entries()) {
      const fault = item(one);
      if (fault !== undefined) return `[${i}]${fault}`;
    }
    return undefined;
  };

/** A group with these fields, whatever else it holds. */
const group =
  (fields: Readonly<Record<string, Shape>>): Shape =>
  (value) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return '';
    for (const [name, shape] of Object.entries(fields)) {
      const held = Object.hasOwn(value, name)
        ? (value as Record<string, unknown>)[name]
        : undefined;
      const fault = shape(held);
      if (fault !== undefined) return `.${name}${fault}`;
    }
    return undefined;
  };

const readings = group({ source: signed, zero: signed });

const recorder = group({
  resolution: maybe(magnitude),
  range: maybe(group({ low: signed, high: signed })),
  uncertainty: maybe(magnitude),
  coupling: maybe(oneOf('dc', 'ac')),
  sampling: maybe(oneOf('picked', 'averaged', 'peak-kept', 'interpolated')),
  sampledEvery: maybe(magnitude),
  before: maybe(readings),
  after: maybe(readings),
});

const score = group({
  verdict: oneOf(...Object.keys(verdictLabels)),
  causes: list(group({})),
  advice: list(text),
  checks: list(group({ check: text, outcome: text })),
  findings: list(group({ kind: text })),
  quality: group({}),
  restsOn: group({ looks: size, looksAskedFor: size, snaps: size, snapsAskedFor: size }),
});

const report = group({
  writtenAt: text,
  record: maybe(
    group(Object.fromEntries(Object.keys(filingLabels).map((name) => [name, maybe(text)]))),
  ),
  recordings: list(
    group({
      name: text,
      bytes: size,
      sha256: text,
      howRead: text,
      recorder: maybe(recorder),
      score,
      envelope: group({
        start: number,
        end: number,
        columns: size,
        column: list(number),
        low: list(number),
        high: list(number),
      }),
      stretches: maybe(list(group({ kind: text, start: signed, end: signed }))),
      unread: maybe(
        list(
          group({
            reading: oneOf('above-range', 'below-range', 'none'),
            rows: size,
            after: size,
            start: signed,
            end: signed,
          }),
        ),
      ),
      samples: maybe(group({ time: text, signal: text, supply: maybe(text) })),
    }),
  ),
});

/** The path of the first field that a stored report lacks or holds in a wrong form, but for its job; undefined where it is right. */
export function findStoredFault(data: unknown): string | undefined {
  return report(data)?.replace(/^\./, '');
}
