import { InputError } from '@truesweep/core';
import { expect, test } from 'vitest';
import { whole } from './whole.js';

test('hands on what is said', () => {
  expect(whole({}, 'facts', () => ({ verdict: 'Pass', next: [['a'], []] }))).toEqual({
    verdict: 'Pass',
    next: [['a'], []],
  });
});

test('facts that lack a part are refused, with the error that came of it as the cause', () => {
  const facts = {} as { window: { low: string } };
  const act = () => whole(facts, 'facts', () => facts.window.low);
  expect(act).toThrow(expect.objectContaining({ code: 'missing', path: 'facts' }));
  expect(act).toThrow(expect.objectContaining({ cause: expect.any(TypeError) }));
  expect(act).toThrow('facts lacks a part, or holds what has no words; it must be whole');
});

test('a code without words is refused, wherever it stands', () => {
  const said = { rows: [['Pass', undefined]] };
  expect(() => whole({}, 'facts', () => said)).toThrow(InputError);
});

test('a getter that throws is told with its path', () => {
  const facts = {
    closed: {
      get low(): string {
        throw new Error('no power');
      },
    },
  };
  expect(() => whole(facts, 'facts', () => facts.closed.low)).toThrow(
    expect.objectContaining({ code: 'unreadable', path: 'facts.closed.low' }),
  );
});

test('a refusal stays as it is', () => {
  const refusal = new InputError('empty', 'x', 'x is empty.');
  const act = () =>
    whole({}, 'facts', () => {
      throw refusal;
    });
  expect(act).toThrow(refusal);
});
