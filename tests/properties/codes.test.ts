import { type CodeObservations, locateCodeFault, readTroubleCode } from '@truesweep/core';
import { expect, test } from 'vitest';

const maybe = <Value>(...values: readonly Value[]) => [undefined, ...values];
const sides = maybe('low', 'high', 'between' as const);

/** Every code with everything that can be seen of it. */
const all = Array.from({ length: 15 }, (_, i) => `P0${105 + i}`).flatMap((code) => {
  const isPressure = readTroubleCode(code).sensor === 'manifold-pressure';
  return sides.flatMap((unplugged) =>
    sides.flatMap((bridged) =>
      maybe('sound', 'shorted', 'open').flatMap((leads) =>
        (isPressure ? maybe('up', 'down') : [undefined]).flatMap((pull) =>
          (isPressure ? maybe('right', 'missing') : [undefined]).map(
            (supply) =>
              JSON.parse(
                JSON.stringify({ code, unplugged, bridged, leads, pull, supply }),
              ) as CodeObservations,
          ),
        ),
      ),
    ),
  );
});

/** Where the signal goes with nothing connected; undefined where it isn't known. */
const freeOf = ({ code, pull }: CodeObservations) => {
  if (readTroubleCode(code).sensor !== 'manifold-pressure') return 'high';
  return pull && (pull === 'up' ? 'high' : 'low');
};

test('a fault is the sensor’s only where it was unplugged, the signal went free, and nothing else was found wrong', () => {
  const sensors = all.filter((seen) => locateCodeFault(seen).conclusion === 'sensor');
  expect(all.length).toBeGreaterThan(3000);
  expect(sensors.length).toBeGreaterThan(20);
  for (const seen of sensors) {
    const { unplugged, bridged, leads, supply } = seen;
    expect(unplugged).toBe(freeOf(seen));
    expect([undefined, 'low', 'high'].filter((side) => side !== unplugged)).toContain(bridged);
    expect([undefined, 'sound']).toContain(leads);
    expect(supply).not.toBe('missing');
  }
});

test('only what was measured is called a short or an open of the wiring', () => {
  for (const seen of all) {
    const { conclusion, because } = locateCodeFault(seen);
    const isSure = because !== 'contradictory';
    expect(conclusion === 'wiring-short').toBe(seen.leads === 'shorted' && isSure);
    expect(conclusion === 'wiring-open').toBe(seen.leads === 'open' && isSure);
    if (conclusion === 'control-unit') expect(seen.leads).toBe('sound');
  }
});

test('what can’t be told, and what isn’t told apart, names the next step', () => {
  for (const seen of all) {
    const { conclusion, next } = locateCodeFault(seen);
    if (conclusion === 'cannot-tell' || conclusion === 'control-unit-or-wiring')
      expect(next, JSON.stringify(seen)).toBeDefined();
  }
});

test('pulled down it is the mirror image of pulled up', () => {
  const swap = { low: 'high', high: 'low', between: 'between' } as const;
  const mirrored: Readonly<Record<string, string>> = { P0107: 'P0108', P0108: 'P0107' };
  for (const seen of all.filter(({ pull }) => pull === 'up')) {
    const { unplugged, bridged } = seen;
    const other: CodeObservations = {
      ...seen,
      code: mirrored[seen.code] ?? seen.code,
      pull: 'down',
      ...(unplugged && { unplugged: swap[unplugged] }),
      ...(bridged && { bridged: swap[bridged] }),
    };
    expect(locateCodeFault(other)).toEqual(locateCodeFault(seen));
  }
});
