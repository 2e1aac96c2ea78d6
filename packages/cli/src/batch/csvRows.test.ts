import fc from 'fast-check';
import { expect, test } from 'vitest';
import { csvRows } from './csvRows.js';

async function rowsOf(text: string): Promise<readonly (readonly string[])[]> {
  const rows: (readonly string[])[] = [];
  const lines = (async function* () {
    yield* text.split('\n');
  })();
  for await (const { cells } of csvRows(lines, 'list.csv')) rows.push(cells);
  return rows;
}

test('what is written in quotation marks is read as it was, whatever it holds', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(',', ';', '\t'),
      fc.array(
        fc.array(fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', ' ', 'é') }), {
          minLength: 3,
          maxLength: 3,
        }),
        { minLength: 1 },
      ),
      async (delimiter, rows) => {
        const head = ['file', 'sensor', 'note'];
        const cell = (text: string) => `"${text.replaceAll('"', '""')}"`;
        const text = [head, ...rows.map((row) => row.map(cell))].map((row) => row.join(delimiter));
        const wanted = rows.map((row) => row.map((one) => one.trim()));
        expect(await rowsOf(text.join('\n'))).toEqual([
          head,
          ...wanted.filter((row) => row.some((one) => one !== '')),
        ]);
      },
    ),
  );
});

test('a quotation mark that is not closed is refused where it opens', async () => {
  await expect(rowsOf('file,note\na.csv,b\nc.csv,"open\nd.csv,e')).rejects.toMatchObject({
    code: 'endless-line',
    place: { line: 3 },
  });
});
