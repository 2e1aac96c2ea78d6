import {
  boilingTemperature,
  judgePressure,
  leakTime,
  type PressureSensor,
  parsePressure,
  pressureFromRatio,
  pressureRatio,
  shownPressure,
  standardPressure,
} from '@truesweep/core';
import { describe, expect, test } from 'vitest';

/** Factor on the error of one family: 1 from 0 to 85 °C, 3 at −40 and 125 °C (published data sheets). */
const errorFactors = [
  { temperature: -40, factor: 3 },
  { temperature: 0, factor: 1 },
  { temperature: 85, factor: 1 },
  { temperature: 125, factor: 3 },
];
const line = (gain: number, offset: number, lowest: number, highest: number) =>
  ({ kind: 'line', gain, offset, lowest, highest }) as const;
/** An absolute part of 15 to 115 kPa: V_s(0.009P − 0.095) ±1.5 kPa, 4.85 to 5.35 V (published data sheet). */
const manifold: PressureSensor = {
  reference: 'absolute',
  response: line(9e-6, -0.095, 15_000, 115_000),
  error: 1500,
  errorFactors,
  supply: { low: 4.85, high: 5.35 },
};
/** One of 20 to 250 kPa: V_s(0.004P − 0.04) (published data sheet; the ±3.45 kPa from memory). */
const boosted: PressureSensor = {
  reference: 'absolute',
  response: line(4e-6, -0.04, 20_000, 250_000),
  error: 3450,
  errorFactors,
};
const volts = (sensor: PressureSensor, kilopascals: number, supply: number) =>
  supply * pressureRatio(sensor, 1000 * kilopascals).nominal;

describe('what it must read', () => {
  test.each([
    [15, 0.204],
    [40, 1.3515],
    [60, 2.2695],
    [80, 3.1875],
    [101.325, 4.1663],
    [115, 4.794],
  ])(
    '15 to 115 kPa at 5.1 V: %d kPa is %d V (its published ends; computed between)',
    (kilopascals, output) => {
      expect(volts(manifold, kilopascals, 5.1)).toBeCloseTo(output, 4);
    },
  );

  test('the published ends with their tolerance: 0.135 to 0.273 V, 4.725 to 4.863 V at 5.1 V', () => {
    const [cold, hot] = [15_000, 115_000].map((pressure) => pressureRatio(manifold, pressure));
    expect(5.1 * cold!.low).toBeCloseTo(0.135, 3);
    expect(5.1 * cold!.high).toBeCloseTo(0.273, 3);
    expect(5.1 * hot!.low).toBeCloseTo(4.725, 3);
    expect(5.1 * hot!.high).toBeCloseTo(4.863, 3);
  });

  test.each([
    [20, 0.204],
    [100, 1.836],
    [250, 4.896],
  ])('20 to 250 kPa at 5.1 V: %d kPa is %d V (computed)', (kilopascals, output) => {
    expect(volts(boosted, kilopascals, 5.1)).toBeCloseTo(output, 4);
  });

  test('a gauge part: V_s(0.007652P + 0.92), 2.30 V at −60 kPa and 5 V (published data sheet)', () => {
    const gauge: PressureSensor = {
      reference: 'gauge',
      response: line(7.652e-6, 0.92, -115_000, 0),
    };
    expect(volts(gauge, -60, 5)).toBeCloseTo(2.3, 2);
  });

  test('at 5.0 V and 101.325 kPa 4.0846 V; taken for 5.00 V where 4.80 feed it, 100 kPa read 96.4 (computed)', () => {
    expect(volts(manifold, 101.325, 5)).toBeCloseTo(4.0846, 4);
    const seen = pressureFromRatio(manifold, volts(manifold, 100, 4.8) / 5);
    expect(seen / 1000).toBeCloseTo(96.4, 1);
  });

  test.each([
    [-40, 3],
    [-20, 2],
    [-10, 1.5],
    [25, 1],
    [105, 2],
    [125, 3],
  ])('at %d °C the error is %d times as large', (temperature, factor) => {
    const { low, high } = pressureRatio(manifold, 96_000, temperature);
    expect((high - low) / 2 / 9e-6).toBeCloseTo(1500 * factor, 6);
  });

  test('a service table without a live zero: 20.0, 46.66 and 101.32 kPa are 0.79, 1.84 and 4.0 V (published service manual): 39.5 mV/kPa', () => {
    const rows = [
      [20, 0.79],
      [46.66, 1.84],
      [101.32, 4.0],
    ].map(([kilopascals, output]) => ({
      pressure: 1000 * kilopascals!,
      ratio: output! / 5,
    }));
    const sensor: PressureSensor = { reference: 'absolute', response: { kind: 'table', rows } };
    const slope = (volts(sensor, 101.32, 5) - volts(sensor, 20, 5)) / 81.32;
    expect(1000 * slope).toBeCloseTo(39.5, 1);
    expect(volts(sensor, 20, 5) - 20 * slope).toBeCloseTo(0, 2);
  });
});

describe('under a pump', () => {
  test.each([
    [0, 101.3, 4.085],
    [5, 84.4, 3.323],
    [10, 67.5, 2.561],
    [15, 50.5, 1.799],
    [20, 33.6, 1.037],
  ])(
    '%d inHg at sea level leave %d kPa and give %d V at 5 V (computed)',
    (inches, kilopascals, output) => {
      const { pascals } = parsePressure(`${inches} inHg vacuum`);
      const absolute = 101_325 + pascals;
      expect(absolute / 1000).toBeCloseTo(kilopascals, 1);
      expect(volts(manifold, absolute / 1000, 5)).toBeCloseTo(output, 2);
      // At 1000 m all lie 0.515 V lower.
      const higher = volts(manifold, (standardPressure(1000) + pascals) / 1000, 5);
      expect(volts(manifold, absolute / 1000, 5) - higher).toBeCloseTo(0.515, 3);
    },
  );

  test('34 kPa (10 inHg) must move the signal by more than 1.5 V (published service manual): by 1.52 V', () => {
    const { pascals } = parsePressure('10 inHg vacuum');
    expect(
      volts(manifold, 101.325, 5) - volts(manifold, (101_325 + pascals) / 1000, 5),
    ).toBeCloseTo(1.52, 2);
  });

  test('a published service page applies “67 kPa(abs)” and expects 23 to 38 kPa absolute: it is gauge', () => {
    expect(101_325 + parsePressure('67 kPa vacuum').pascals).toBeCloseTo(34_000, -3);
    // Taken for a gauge pressure above the air it would be beyond the sensor, and said so.
    expect(() =>
      judgePressure(manifold, { station: 101_325, stationUncertainty: 100 }, [
        { gauge: 67_000, gaugeUncertainty: 300, volts: 1, supply: 5, uncertainty: 0.005 },
      ]),
    ).toThrow(/nothing is extrapolated/);
  });

  test('a bench feed of three cells, 4.5 to 5.0 V, changes nothing: the ratio is judged (as in a published service manual)', () => {
    const judged = [4.5, 5].map((supply) =>
      judgePressure(
        { ...manifold, supply: { low: 4.4, high: 5.35 } },
        { station: 101_325, stationUncertainty: 100 },
        [0, -53_329].map((gauge) => ({
          ...{ gauge, gaugeUncertainty: gauge && 300, supply, uncertainty: 0.005 },
          volts: volts(manifold, (101_325 + gauge) / 1000, supply),
        })),
      ),
    );
    expect(judged.map(({ verdict }) => verdict)).toEqual(['pass', 'pass']);
  });

  test('60 to 57 kPa in 30 s: 585 s (computed)', () => {
    const held = [
      { seconds: 0, pascals: 60_000 },
      { seconds: 30, pascals: 57_000 },
    ];
    expect(leakTime(held)).toBeCloseTo(585, 0);
  });
});

describe('the open port', () => {
  test('at 96.0 kPa and 5.00 V: 3.845 V in a window of 3.7775 to 3.9125 V, u about 9 mV (computed)', () => {
    const { checks } = judgePressure(manifold, { station: 96_000, stationUncertainty: 100 }, [
      { gauge: 0, gaugeUncertainty: 0, volts: 3.845, supply: 5, uncertainty: 0.005 },
    ]);
    const open = checks.find(({ check }) => check === 'open-port')!;
    expect(5 * open.lowLimit!).toBeCloseTo(3.7775, 6);
    expect(5 * open.highLimit!).toBeCloseTo(3.9125, 6);
    expect(open.outcome).toBe('conforms');
  });

  test('from the altitude alone ±3 kPa of weather hide ±1.5 kPa of error: it can’t be told, and a barometer would', () => {
    const { verdict, advice } = judgePressure(
      manifold,
      { station: standardPressure(250), stationUncertainty: 1500 },
      [
        { gauge: 0, gaugeUncertainty: 0, volts: 3.96, supply: 5, uncertainty: 0.005 },
        { gauge: -50_000, gaugeUncertainty: 200, volts: 1.71, supply: 5, uncertainty: 0.005 },
      ],
    );
    expect(verdict).toBe('inconclusive');
    expect(advice).toContain('use-barometer');
  });

  test('a feed outside 4.85 to 5.35 V tells nothing', () => {
    const { verdict, advice } = judgePressure(
      manifold,
      { station: 96_000, stationUncertainty: 100 },
      [{ gauge: 0, gaugeUncertainty: 0, volts: 1, supply: 4.2, uncertainty: 0.005 }],
    );
    expect([verdict, advice]).toEqual(['inconclusive', ['mend-supply']]);
  });
});

test('scan tools show whole kPa (PIDs 0B and 33, as quoted publicly)', () => {
  expect(shownPressure(101_325).count).toBe(101);
  expect(shownPressure(400_000).count).toBe(255);
});

test('1 kPa moves boiling water by 0.277 K: 3 kPa of weather are 0.83 K (computed)', () => {
  expect(3 * (boilingTemperature(101_825) - boilingTemperature(100_825))).toBeCloseTo(0.83, 2);
});
