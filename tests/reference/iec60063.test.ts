import { preferredValues } from '@truesweep/core';
import { expect, test } from 'vitest';
import published from './iec60063.json' with { type: 'json' };

/** Source: IEC 60063, named in the data file. E3 to E24 are published to two figures, the finer series to three. */
test.each(['E3', 'E6', 'E12', 'E24'] as const)('%s, two figures', (series) => {
  expect(preferredValues(series)).toEqual(published[series].map((figures) => figures * 10));
});

test.each(['E48', 'E96', 'E192'] as const)('%s, three figures', (series) => {
  expect(preferredValues(series)).toEqual(published[series]);
});
