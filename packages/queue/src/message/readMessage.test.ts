import { isInputError } from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readMessage } from './readMessage.js';

const message = {
  version: 1,
  recording: { in: 'folder', name: '2026/port.csv', bytes: 52_000, sha256: 'ab'.repeat(32) },
  definition: 'cd'.repeat(32),
  file: 'port.csv',
  sensor: 'Port engine',
};
const code = (data: unknown) => {
  try {
    readMessage(data);
    return 'read';
  } catch (error) {
    return isInputError(error) ? `${error.code} ${error.path}` : String(error);
  }
};

test('what is right comes through as it is', () => {
  expect(readMessage(message)).toEqual(message);
  const readAs = { text: { delimiter: ';' } };
  const read = { ...message, recording: { ...message.recording, readAs } };
  expect(readMessage(JSON.parse(JSON.stringify(read)))).toEqual(read);
});

describe('what is wrong is refused with its field', () => {
  const within = (more: object) => ({ ...message, recording: { ...message.recording, ...more } });
  test.each([
    [undefined, 'not-a-group message'],
    [[], 'not-a-group message'],
    [{ ...message, version: 2 }, 'newer-version message.version'],
    [{ ...message, version: '1' }, 'not-a-version message.version'],
    [{ ...message, extra: 1 }, 'unknown-field message.extra'],
    [{ ...message, file: '' }, 'not-a-text message.file'],
    [{ ...message, note: 'x'.repeat(5000) }, 'not-a-text message.note'],
    [{ ...message, definition: 'CD'.repeat(32) }, 'not-a-hash message.definition'],
    [{ ...message, recording: 'port.csv' }, 'not-a-group message.recording'],
    [within({ in: 'tape' }), 'not-one-of message.recording.in'],
    [within({ name: '/etc/passwd' }), 'not-a-name message.recording.name'],
    [within({ name: 'a/../../b' }), 'not-a-name message.recording.name'],
    [within({ bytes: -1 }), 'not-a-count message.recording.bytes'],
    [within({ bytes: 1.5 }), 'not-a-count message.recording.bytes'],
    [within({ readAs: [] }), 'not-a-group message.recording.readAs'],
  ])('%j', (data, wanted) => {
    expect(code(data)).toBe(wanted);
  });

  test.each(['version', 'recording', 'definition', 'file'])('without %s', (name) => {
    const { [name]: _, ...rest } = message as Record<string, unknown>;
    expect(code(rest)).toMatch(new RegExp(`message\\.${name}$`));
  });
});

test('anything is read or refused', () => {
  fc.assert(
    fc.property(fc.anything({ withNullPrototype: true }), (data) => {
      expect(code(data)).toMatch(/^(read$|[a-z-]+ message)/);
    }),
  );
});
