import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyWay, readWay, type Way } from './way.js';

const way: Way = {
  ...emptyWay,
  step: 'verdict',
  bench: 'winding',
  texts: { track: '4k7', ABclosed: 'OL' },
  done: ['rest', 'harness-flexed', 'snapsShut'],
  judged: {
    title: 'Port engine',
    recordings: [{ name: 'a.csv', verdict: 'pass', said: 'Nothing speaks against it.' }],
    restsOn: [['Source', '5 V']],
    key: '{}',
  },
};

test('a way comes back from what was kept of it', () => {
  expect(readWay(JSON.stringify(way))).toEqual({ way });
});

test('what is unknown is left out, the rest is read', () => {
  const odd = {
    ...way,
    step: 'coffee',
    bench: 'kettle',
    texts: { track: '4k7', load: 5, long: 'x'.repeat(300) },
    done: ['rest', 'nap', 7],
    judged: { title: 'x', restsOn: [], recordings: [{ name: 'a.csv', verdict: 'splendid' }] },
  };
  expect(readWay(JSON.stringify(odd))).toEqual({
    way: {
      ...emptyWay,
      texts: { track: '4k7' },
      done: ['rest'],
      judged: { title: 'x', restsOn: [], recordings: [] },
    },
  });
});

test('a verdict that does not say what it rests on is left out', () => {
  const { title, recordings } = { title: 'Port engine', recordings: [] };
  for (const judged of [
    { title, recordings },
    { title, recordings, restsOn: [['Source']] },
    { title, recordings, restsOn: [], key: 5 },
  ])
    expect(readWay(JSON.stringify({ ...way, judged }))).not.toHaveProperty('way.judged');
});

test('what is no way is refused, and so is one of a newer version', () => {
  for (const json of ['', 'null', '[]', '{}', '{"kind":"truesweep-way"}'])
    expect(readWay(json)).toHaveProperty('refusal');
  const newer = readWay(JSON.stringify({ ...way, version: 2 }));
  expect(newer).toMatchObject({ refusal: expect.stringContaining('newer') });
});

test('whatever JSON is kept, reading it throws nothing', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const kept = { ...way, ...(typeof value === 'object' ? value : { texts: value }) };
      expect(Object.keys(readWay(JSON.stringify(kept)))).toHaveLength(1);
    }),
  );
});
