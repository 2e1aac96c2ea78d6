import { describe, expect, test } from 'vitest';
import { checkFields, checkKind, listOf } from './fields.js';
import { between } from './guard.js';

const ohms = between(0, 1e6, 'Ω');
const rules = { track: ohms, 'contact?': ohms, 'load?': { 'common?': ['source', 'sensor'] } };

test('what follows its rules passes', () => {
  expect(() => checkFields({ track: 1 }, 'it', rules)).not.toThrow();
  expect(() => checkFields({ track: 1, contact: undefined }, 'it', rules)).not.toThrow();
  expect(() => checkFields({ track: 1, load: { common: 'source' } }, 'it', rules)).not.toThrow();
  expect(() => checkFields(Object.create(null, {}), 'it', { 'a?': ohms })).not.toThrow();
});

test.each([
  [
    { trak: 5000 },
    'unknown-field',
    'it.trak',
    'it.trak is not known; it may be meant to be “track”.',
  ],
  [{ track: 1, colour: 2 }, 'unknown-field', 'it.colour', /there are track, contact, load\.$/],
  [{ track: 1, load: { comon: 'x' } }, 'unknown-field', 'it.load.comon', /“common”/],
  [{}, 'missing', 'it.track', /missing/],
  [{ track: 1, contact: null }, 'missing', 'it.contact', /missing/],
  [{ track: 1, load: { common: 'ground' } }, 'unknown-choice', 'it.load.common', /source, sensor/],
  [{ track: 1, ['x'.repeat(1e5)]: 1 }, 'unknown-field', /^it\.x{39}…$/, /not known/],
  [undefined, 'missing', 'it', /object \{ track, contact, load \}/],
  [[1], 'not-a-group', 'it', /a list/],
  [5, 'not-a-group', 'it', /5/],
])('%j is refused: %s', (value, code, path, message) => {
  expect(() => checkFields(value, 'it', rules)).toThrow(
    expect.objectContaining({
      name: 'InputError',
      code,
      path: typeof path === 'string' ? path : expect.stringMatching(path),
    }),
  );
  expect(() => checkFields(value, 'it', rules)).toThrow(message);
});

describe('a getter that throws', () => {
  const cause = new Error('no power');
  const get = () => {
    throw cause;
  };
  const field = (name: string | number, of: object) =>
    Object.defineProperty(of, name, { get, enumerable: true });
  test.each([
    ['it.track', field('track', {})],
    ['it.contact', field('contact', { track: 1 })],
    ['it.load.common', { track: 1, load: field('common', {}) }],
    ['it.list[1]', { track: 1, list: field(1, [1]) }],
  ])('is refused at %s, with what it threw as the cause', (path, value) => {
    const act = () => checkFields(value, 'it', { ...rules, 'list?': listOf(ohms) });
    expect(act).toThrow(expect.objectContaining({ name: 'InputError', code: 'unreadable', path }));
    expect(act).toThrow(expect.objectContaining({ cause }));
    expect(act).toThrow(`${path} could not be read (no power); it must be a plain value.`);
  });

  test('is refused as a kind, and whatever it throws', () => {
    const kind = field('kind', {});
    expect(() => checkKind(kind, 'it', {})).toThrow(expect.objectContaining({ path: 'it.kind' }));
    const none = {
      get track(): number {
        throw undefined;
      },
    };
    expect(() => checkFields(none, 'it', rules)).toThrow(/could not be read \(missing\)/);
  });
});

describe('listOf', () => {
  test.each([
    [[1, 2], undefined],
    [[1], 'it'],
    [[1, 2, 3, 4], 'it'],
    [new Array(2), 'it[0]'],
    [[1, -1], 'it[1]'],
    ['12', 'it'],
  ])('%j', (value, path) => {
    const act = () => listOf(ohms, 2, 3)(value, 'it');
    if (path) expect(act).toThrow(expect.objectContaining({ name: 'InputError', path }));
    else expect(act).not.toThrow();
  });
});

test('a kind brings its own fields, and no others', () => {
  const kinds = { a: { ohms }, b: {} };
  expect(() => checkKind({ kind: 'a', ohms: 1 }, 'it', kinds)).not.toThrow();
  for (const [value, path] of [
    [{ kind: 'c' }, 'it.kind'],
    [{ kind: 'b', ohms: 1 }, 'it.ohms'],
    [{ kind: 'a' }, 'it.ohms'],
    [{}, 'it.kind'],
    ['a', 'it'],
  ] as const) {
    expect(() => checkKind(value, 'it', kinds)).toThrow(expect.objectContaining({ path }));
  }
});
