import { judgePressure, judgeThermistor, judgeTwoState, judgeWinding } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import {
  type ReadingsOfKind,
  readingAdviceSentences,
  readingCheckRows,
  readingCodesSentences,
  readingReasonSentences,
  readingUnsaidSentences,
} from './judgedReadings.js';

const law = {
  kind: 'b',
  b: 3640,
  ohms: 2044,
  from: 25,
  to: 100,
  lowest: -40,
  highest: 150,
} as const;

const thermistor = (ohms: readonly number[], temperatureUncertainty = 0.2): ReadingsOfKind => {
  const readings = ohms.map((one, i) => ({
    ...{ temperature: [0, 90][i]!, temperatureUncertainty, ohms: one, uncertainty: 1 },
  }));
  const judgement = judgeThermistor({ law, tolerances: { ohms: 0.05 } }, readings);
  return { kind: 'thermistor', judgement, readings };
};

describe('what is said of single readings', () => {
  test('a thermistor that passes: rows only', () => {
    const judged = thermistor([6260, 229]);
    expect(readingReasonSentences(judged)).toEqual([]);
    expect(readingCheckRows(judged).slice(1)).toEqual([
      ['Resistance at 0.0 °C', '6.26 ± 0.12 kΩ', '5.94 to 6.56 kΩ', 'conforms'],
      ['Resistance at 90.0 °C', '229 ± 3 Ω', '218 to 241 Ω', 'conforms'],
      ['Coldest to hottest', '90.0 K', 'at least 40.0 K', 'conforms'],
    ]);
  });

  test('a break, one temperature, a poor thermometer', () => {
    const broken = thermistor([Infinity]);
    expect(readingCodesSentences(broken)[0]).toMatch(/P0118 \(coolant, signal too high\), P0113/);
    expect(readingReasonSentences(broken)[0]).toMatch(
      /^Resistance at 0\.0 °C: over range is outside/,
    );
    expect(readingReasonSentences(broken)[1]).toMatch(
      /0\.0 K cannot be told from at least 40\.0 K\./,
    );
    const poor = thermistor([6260, 237], 1.5);
    expect(readingReasonSentences(poor).at(-1)).toMatch(/most uncertain is the thermometer\.$/);
    expect(readingAdviceSentences(poor)[0]).toMatch(/^How warm the bath is decides/);
    expect(readingUnsaidSentences(poor)[0]).toMatch(/^Its plug and harness/);
  });

  test('a pressure sensor: ports by their pressure, ratios in percent', () => {
    const response = {
      kind: 'line',
      gain: 9e-6,
      offset: -0.095,
      lowest: 15e3,
      highest: 115e3,
    } as const;
    const readings = [
      { gauge: 0, gaugeUncertainty: 0, volts: 3.85, supply: 5, uncertainty: 0.005 },
      { gauge: -50e3, gaugeUncertainty: 300, volts: 2.2, supply: 5, uncertainty: 0.005 },
    ];
    const judgement = judgePressure(
      { reference: 'absolute', response, error: 1500, supply: { low: 4.75, high: 5.25 } },
      { station: 96e3, stationUncertainty: 100 },
      readings,
    );
    const judged = { kind: 'pressure', judgement, readings } as const;
    expect(readingCheckRows(judged)[3]![0]).toBe('Output, open port');
    expect(readingCheckRows(judged)[4]![0]).toBe('Output at −50.0 kPa');
    const names = readingCheckRows(judged).map(([name]) => name);
    expect(names[2]).toBe('Supply at −50.0 kPa');
    expect(readingCodesSentences(judged)[0]).toMatch(
      /P0106 \(manifold or barometric pressure, signal does not fit the other readings\)/,
    );
    expect(readingReasonSentences(judged)[0]).toMatch(/44\.0 ± 0\.6 % is outside 30\.6 to 33\.3 %/);
    expect(readingAdviceSentences(judged)).toHaveLength(2);
  });

  test('two states: what was not read', () => {
    const readings = [{ state: 'rest', value: 1, uncertainty: 0.01 }] as const;
    const judgement = judgeTwoState(
      {
        kind: 'volts',
        rest: { low: 0.4, high: 1.4 },
        operated: { low: 3.7, high: 4.4 },
        latched: false,
        bothWays: false,
      },
      readings,
    );
    const judged = { kind: 'two-state', judgement, readings } as const;
    expect(readingReasonSentences(judged)).toEqual([
      'Operated: not read.',
      'Back at rest: not read.',
    ]);
    expect(readingAdviceSentences(judged)).toEqual(['Read it operated.', 'Read it back at rest.']);
  });

  test('what is said of any switch speaks of no lean', () => {
    const readings = [
      { state: 'rest', value: 0.1, uncertainty: 0.01 },
      { state: 'operated', value: 0.1, uncertainty: 0.01 },
    ] as const;
    const sensor = {
      kind: 'ohms',
      rest: { high: 1 },
      operated: { low: 1e6 },
      latched: false,
      bothWays: false,
    } as const;
    const judgement = judgeTwoState(sensor, readings);
    const sentences = readingAdviceSentences({ kind: 'two-state', judgement, readings });
    expect(sentences[0]).toMatch(/^Operate it all the way, beyond the point at which it changes/);
    expect(sentences.at(-1)).toBe('If it fails again, the sensor is to be replaced.');
    expect(sentences.join(' ')).not.toMatch(/angle|lean|tilt/);
  });

  test('a winding: what a pass does not say', () => {
    const readings = [
      { ohms: 866, uncertainty: 3, leads: 0.2, temperature: 23, temperatureUncertainty: 1 },
    ];
    const judged = {
      kind: 'winding',
      judgement: judgeWinding({ low: 765, high: 935 }, readings),
      readings,
    } as const;
    expect(readingUnsaidSentences(judged)).toHaveLength(4);
    expect(readingCheckRows(judged)[1]![2]).toBe('774.0 to 946.0 Ω');
  });
});
