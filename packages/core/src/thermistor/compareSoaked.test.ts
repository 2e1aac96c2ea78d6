import { describe, expect, test } from 'vitest';
import { compareSoaked } from './compareSoaked.js';
import { resistanceAt } from './resistanceAt.js';

const law = {
  kind: 'b',
  b: 3640,
  ohms: 2044,
  from: 25,
  to: 100,
  lowest: -40,
  highest: 150,
} as const;
const at = (temperature: number) => ({
  law,
  tolerances: { kelvins: 1 },
  ohms: resistanceAt(law, temperature),
  uncertainty: 2,
});

describe('two sensors after a cold soak', () => {
  test('that agree pass nobody', () => {
    const { verdict, checks, advice } = compareSoaked(at(18), at(17));
    expect([verdict, checks[0]?.outcome, advice]).toEqual(['inconclusive', 'conforms', []]);
  });

  test('that differ say that one is wrong', () => {
    const { checks, advice, one, other } = compareSoaked(at(18), at(13));
    expect(checks).toHaveLength(1);
    expect(checks[0]).toMatchObject({ outcome: 'fails', unit: 'K' });
    expect(checks[0]!.highLimit).toBeCloseTo(2, 1);
    expect([one, other].map((shown) => shown.toFixed(3))).toEqual(['18.000', '13.000']);
    expect(advice).toEqual(['read-thermometer']);
  });

  test.each([
    [18, 17.4, 17.8, 'inconclusive', ['read-elsewhere']],
    [18, 13, 18.2, 'fail', ['replace-other']],
    [13, 18, 18.2, 'fail', ['replace-one']],
    [25, 13, 18, 'fail', ['replace-one', 'replace-other']],
  ])('%d and %d °C beside %d °C by a thermometer: %s', (one, other, shown, verdict, advice) => {
    const compared = compareSoaked(at(one), at(other), { temperature: shown, uncertainty: 0.1 });
    expect(compared).toMatchObject({ verdict, advice });
  });

  test('a poor thermometer can’t tell', () => {
    const poor = { temperature: 17, uncertainty: 1 };
    expect(compareSoaked(at(18), at(16.5), poor)).toMatchObject({
      verdict: 'inconclusive',
      advice: ['better-thermometer'],
    });
  });

  test('without tolerances nothing is judged', () => {
    const { tolerances: _, ...bare } = at(18);
    const told = compareSoaked(bare, at(13), { temperature: 15, uncertainty: 0.01 });
    expect(told).toMatchObject({ verdict: 'inconclusive', advice: ['state-tolerances'] });
    expect(new Set(told.checks.map(({ outcome }) => outcome))).toEqual(new Set(['cannot-tell']));
  });

  test('a resistance that is none of its law’s is refused where it stands', () => {
    expect(() => compareSoaked({ ...at(18), ohms: 1 }, at(18))).toThrow(/^one\.ohms is 1 Ω/);
    expect(() => compareSoaked(at(18), { ...at(18), ohms: 1 })).toThrow(/^other\.ohms/);
  });
});
