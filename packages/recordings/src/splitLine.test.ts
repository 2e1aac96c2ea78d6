import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { splitLine } from './splitLine.js';

test.each([
  ['a,"b,c",d', ['a', 'b,c', 'd']],
  ['"t ""s""",U', ['t "s"', 'U']],
  ['"","",', ['', '', '']],
  ['""""', ['"']],
  ['"open, to the end', ['open, to the end']],
  ['5" scope,"x"', ['5" scope', 'x']],
] as const)('%s', (line, fields) => {
  expect(splitLine(line, ',')).toEqual(fields);
});

test('parts what was written by the rules of RFC 4180 as a library for it does', () => {
  const field = fc.string({ unit: fc.constantFrom('a', '1', '"', ',', ';', '.'), maxLength: 6 });
  fc.assert(
    fc.property(
      fc.array(field, { minLength: 1, maxLength: 5 }),
      fc.constantFrom(',', ';'),
      (given, delimiter) => {
        const line = given.map((one) => `"${one.replaceAll('"', '""')}"`).join(delimiter);
        expect(splitLine(line, delimiter)).toEqual(given);
        expect(Papa.parse<string[]>(line, { delimiter }).data[0]).toEqual(given);
      },
    ),
  );
});
