import fc from 'fast-check';

/** One thing that is made wrong, or merely strange, in a function's arguments. */
export type Change =
  /** A value in the place of the right one. */
  | { readonly kind: 'value'; readonly value: unknown }
  /** The field is not there. */
  | { readonly kind: 'gone' }
  /** A field beside it bears a name that nobody knows. */
  | { readonly kind: 'unknown'; readonly name: string }
  /** Reading the field throws what is no refusal. */
  | { readonly kind: 'getter' }
  /** A column of numbers is another kind of list. */
  | { readonly kind: 'list'; readonly as: 'plain' | 'float32' };

/** What a getter throws: it is told as the cause of a refusal. */
export const ownError = new Error("the caller's own");

const numbers = [
  Number.NaN,
  0,
  -0,
  Number.POSITIVE_INFINITY,
  Number.NEGATIVE_INFINITY,
  1e308,
  -1e308,
  5e-324,
  1e-300,
  1e-13,
  1e13,
  -1,
  1.5,
  3,
  2 ** 53,
];

const others = (): readonly unknown[] => [
  undefined,
  null,
  '',
  '0.1',
  'x',
  true,
  [],
  {},
  10n,
  Symbol('s'),
  () => 1,
  new Date(Number.NaN),
  Object.create(null),
  Object.freeze({}),
  [null],
  [[]],
  new Array(3),
  [1, 2],
  new Float64Array(0),
  Float32Array.of(1, 2),
  BigInt64Array.of(1n, 2n),
  new Map(),
  new DataView(new ArrayBuffer(8)),
];

export const change: fc.Arbitrary<Change> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.constantFrom(...numbers).map((value) => ({ kind: 'value' as const, value })),
  },
  {
    weight: 4,
    arbitrary: fc
      .nat(others().length - 1)
      .map((i) => ({ kind: 'value' as const, value: others()[i] })),
  },
  { weight: 1, arbitrary: fc.constant({ kind: 'gone' as const }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom('colour', 'trak', 'closedPos', 'volt').map((name) => ({
      kind: 'unknown' as const,
      name,
    })),
  },
  { weight: 1, arbitrary: fc.constant({ kind: 'getter' as const }) },
  {
    weight: 1,
    arbitrary: fc
      .constantFrom('plain' as const, 'float32' as const)
      .map((as) => ({ kind: 'list' as const, as })),
  },
);

type Path = readonly (string | number)[];

const isGroup = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

/** Every place in some arguments: of lists the first entries, of columns one number. */
export function placesIn(value: unknown, path: Path = []): readonly Path[] {
  const inner = (key: string | number, part: unknown) => placesIn(part, [...path, key]);
  const here = path.length > 0 ? [path] : [];
  if (value instanceof Float64Array) return [...here, [...path, 1]];
  if (Array.isArray(value)) {
    const most = path.length === 0 ? value.length : 2;
    return [...here, ...value.slice(0, most).flatMap((part, i) => inner(i, part))];
  }
  if (isGroup(value)) {
    return [...here, ...Object.entries(value).flatMap(([key, part]) => inner(key, part))];
  }
  return here;
}

/** Arguments with one change; undefined where the change can't be made at that place. */
export function changed(
  args: readonly unknown[],
  path: Path,
  what: Change,
): readonly unknown[] | undefined {
  const copy = copyOf(args) as unknown[];
  const key = path.at(-1)!;
  const parent = path.slice(0, -1).reduce<unknown>((at, step) => at![step as never], copy);
  const holder = parent as Record<string | number, unknown>;
  switch (what.kind) {
    case 'value':
      if (parent instanceof Float64Array && typeof what.value !== 'number') return undefined;
      holder[key] = what.value;
      return copy;
    case 'gone':
      if (parent instanceof Float64Array) return undefined;
      if (Array.isArray(parent)) holder[key] = undefined;
      else delete holder[key];
      return copy;
    case 'unknown': {
      const group = holder[key];
      if (!isGroup(group) || what.name in group) return undefined;
      group[what.name] = 0.5;
      return copy;
    }
    case 'getter':
      if (parent instanceof Float64Array || path.length < 2) return undefined;
      Object.defineProperty(holder, key, {
        enumerable: true,
        get() {
          throw ownError;
        },
      });
      return copy;
    case 'list': {
      const column = holder[key];
      if (!(column instanceof Float64Array)) return undefined;
      holder[key] = what.as === 'plain' ? Array.from(column) : Float32Array.from(column);
      return copy;
    }
  }
}

function copyOf(value: unknown): unknown {
  if (value instanceof Float64Array) return value.slice();
  if (Array.isArray(value)) return value.map(copyOf);
  if (!isGroup(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, copyOf(part)]));
}

/** Freezes groups and lists throughout; columns of numbers can't be. */
export function frozen<Value>(value: Value): Value {
  if (Array.isArray(value) || isGroup(value)) {
    for (const [key, { get }] of Object.entries(Object.getOwnPropertyDescriptors(value))) {
      if (!get) frozen((value as Record<string, unknown>)[key]);
    }
    Object.freeze(value);
  }
  return value;
}

/** All numbers of columns, to tell whether a function changed one. */
export function columnsOf(value: unknown): readonly (readonly number[])[] {
  if (value instanceof Float64Array) return [Array.from(value)];
  if (!Array.isArray(value) && !isGroup(value)) return [];
  return Object.values(Object.getOwnPropertyDescriptors(value)).flatMap(({ value: part }) =>
    columnsOf(part),
  );
}

/** Where in a result the first number stands that a test refuses. */
export function wrongNumber(
  value: unknown,
  isWrong: (number: number) => boolean,
  path = 'result',
): string | undefined {
  if (typeof value === 'number') return isWrong(value) ? `${path} is ${value}` : undefined;
  if (ArrayBuffer.isView(value)) {
    const at = (value as Float64Array).findIndex?.(isWrong) ?? -1;
    return at < 0 ? undefined : `${path}[${at}] is ${(value as Float64Array)[at]}`;
  }
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, part] of Object.entries(value)) {
    const found = wrongNumber(part, isWrong, `${path}.${key}`);
    if (found) return found;
  }
  return undefined;
}

/** What no text says: a value that was turned into one unawares. */
const unsaid = /NaN|undefined|\[object|Infinity/;

/** Where in a result the first text stands that says a value that was none. */
export function wrongText(value: unknown, path = 'result'): string | undefined {
  if (typeof value === 'string') return unsaid.test(value) ? `${path} is ${value}` : undefined;
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return undefined;
  for (const [key, part] of Object.entries(value)) {
    const found = wrongText(part, `${path}.${key}`);
    if (found) return found;
  }
  return undefined;
}

/** Where in a result, which is of texts only, the first value stands that is none. */
export function noText(value: unknown, path = 'result'): string | undefined {
  if (typeof value === 'string') return undefined;
  if (!Array.isArray(value) && !isGroup(value)) return `${path} is no text but ${String(value)}`;
  for (const [key, part] of Object.entries(value)) {
    const found = noText(part, `${path}.${key}`);
    if (found) return found;
  }
  return undefined;
}

/** A function with the name that it is called by in its module: of a map of functions the map's and its key. */
type Named = readonly [name: string, call: (...args: unknown[]) => unknown];

const isClass = (value: unknown) => /^class\b/.test(String(value));

/** Every function that a module hands out, also those that stand in its maps. */
export function functionsIn(module: object, before = ''): readonly Named[] {
  return Object.entries(module).flatMap(([key, value]): readonly Named[] => {
    const name = `${before}${key}`;
    if (typeof value === 'function') return isClass(value) ? [] : [[name, value]];
    return isGroup(value) ? functionsIn(value, `${name}.`) : [];
  });
}
