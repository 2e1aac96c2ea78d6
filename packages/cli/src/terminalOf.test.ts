import { expect, test } from 'vitest';
import { terminalOf } from './terminalOf.js';

test.each([
  ['a pipe', {}, {}, { width: 80, colour: false }],
  ['a pipe of a told width', {}, { COLUMNS: '100' }, { width: 100, colour: false }],
  ['no width', {}, { COLUMNS: 'wide' }, { width: 80, colour: false }],
  ['a terminal', { isTTY: true, columns: 90 }, { TERM: 'xterm' }, { width: 90, colour: true }],
  ['a narrow one', { isTTY: true, columns: 20 }, {}, { width: 60, colour: true }],
  ['a wide one', { isTTY: true, columns: 300 }, {}, { width: 120, colour: true }],
  ['no colour', { isTTY: true, columns: 80 }, { NO_COLOR: '1' }, { width: 80, colour: false }],
  ['an empty wish', { isTTY: true, columns: 80 }, { NO_COLOR: '' }, { width: 80, colour: true }],
  ['a dumb one', { isTTY: true, columns: 80 }, { TERM: 'dumb' }, { width: 80, colour: false }],
])('%s', (_, stream, env, wanted) => {
  expect(terminalOf(stream, env)).toEqual(wanted);
});
