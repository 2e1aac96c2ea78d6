import {
  boilingBath,
  iceBath,
  judgePressure,
  judgeThermistor,
  type PressureSource,
  stationPressure,
  type Verdict,
} from '@truesweep/core';
import { expect, test } from 'vitest';
import { randomNumbers } from '../../../packages/core/src/statistics/randomNumbers.js';
import { soak } from '../../counts.js';
import { clopperPearson } from '../clopperPearson.js';
import { type PressureCase, pressureCase } from './pressureBench.js';
import { type ThermistorCase, thermistorCase } from './thermistorBench.js';

/** Of each kind. */
const cases = 2000 * soak;

interface Judged {
  readonly kind: string;
  readonly isVisible: boolean;
  readonly isAdequate: boolean;
  readonly verdict: Verdict;
}

const airOf = (
  altitude: number,
  barometer?: { pressure: number; uncertainty: number },
): PressureSource =>
  barometer ? { kind: 'barometer', ...barometer } : { kind: 'altitude', altitude };

/** As a person enters it: the bath's temperature by what it is, its uncertainty with what had to settle. */
function judgeBath(one: ThermistorCase): Verdict {
  const boiling = boilingBath(airOf(one.altitude, one.barometer));
  const known = {
    ice: [iceBath.temperature, iceBath.uncertainty],
    boiling: [boiling.temperature, boiling.uncertainty],
  } as const;
  const readings = one.readings.map(
    ({ bath, shown, thermometer, unsettled, ohms, volts, meter }) => {
      const [temperature, u] = bath === 'thermometer' ? [shown, thermometer] : known[bath];
      return {
        temperature,
        temperatureUncertainty: Math.hypot(u, unsettled),
        ...(ohms !== undefined && { ohms }),
        ...(volts !== undefined && { volts }),
        uncertainty: meter,
      };
    },
  );
  const { ohms, b } = one.nominal;
  const law = { kind: 'b', b, ohms, from: 25, to: 85, lowest: -20, highest: 130 } as const;
  const { pullUp } = one;
  return judgeThermistor(
    {
      law,
      tolerances: one.tolerances,
      ...(one.dissipation !== undefined && { dissipation: one.dissipation }),
    },
    readings,
    pullUp && {
      supply: pullUp.supply,
      pullUp: pullUp.ohms,
      meter: pullUp.meter,
      isProved: pullUp.isProved,
      supplyUncertainty: 0.005,
      pullUpUncertainty: (pullUp.isProved ? 0.002 : 0.01) * pullUp.ohms,
    },
  ).verdict;
}

function judgePump(one: PressureCase): Verdict {
  const { pressure, uncertainty } = stationPressure(airOf(one.altitude, one.barometer));
  const { reference, readAs, gain, offset, error, gauge, voltmeter } = one;
  const range =
    reference === 'gauge' ? { lowest: -115_000, highest: 0 } : { lowest: 10_000, highest: 115_000 };
  const response = { kind: 'line', gain, offset, ...range } as const;
  return judgePressure(
    { reference, response, error, supply: { low: 4.5, high: 5.5 } },
    { station: pressure, stationUncertainty: uncertainty },
    one.readings.map(({ vacuum, absolute, volts, supply }) => ({
      gauge: vacuum > 0 && readAs === 'absolute' ? absolute - pressure : 0 - vacuum,
      readAs: vacuum > 0 ? readAs : 'gauge',
      gaugeUncertainty: vacuum > 0 ? gauge : 0,
      ...{ volts, supply, uncertainty: voltmeter },
    })),
  ).verdict;
}

const percent = (part: number) => `${(100 * part).toFixed(2)} %`;

/** What holds of each figure, with what is asked. */
const goals = [
  ['sound called fail', 0.003, 0.003],
  ['visibly faulty called pass', 0.005, 0.005],
  ['sound and adequate: inconclusive', 0.05, 0.05],
] as const;

test.each([
  ['thermistors', thermistorCase, judgeBath],
  ['pressure sensors', pressureCase, judgePump],
] as const)('%s: verdicts on modelled readings', (name, make, judge) => {
  const random = randomNumbers(20_261);
  const judged: Judged[] = [];
  for (let i = 0; i < cases; i++) {
    const one = make(random);
    judged.push({ ...one, verdict: judge(one as never) });
  }
  const sound = judged.filter(({ kind }) => kind === 'sound');
  const visible = judged.filter(({ isVisible }) => isVisible);
  const adequate = sound.filter(({ isAdequate }) => isAdequate);
  const figures = [
    [sound, 'fail'],
    [visible, 'pass'],
    [adequate, 'inconclusive'],
  ] as const;
  const told = figures.map(([of, wrong], i) => {
    const count = of.filter(({ verdict }) => verdict === wrong).length;
    const [low, high] = (['lower', 'upper'] as const).map((side) =>
      clopperPearson(side, count, of.length),
    ) as [number, number];
    const [what, holds, goal] = goals[i]!;
    console.log(
      `${name}, ${what}: ${count} of ${of.length}, ${percent(count / of.length)} (95 %: ${percent(low)} to ${percent(high)}; holds: at most ${percent(holds)}, goal: at most ${percent(goal)})`,
    );
    expect(of.length).toBeGreaterThan(cases / 20);
    return { rate: count / of.length, holds };
  });
  const kinds = [...new Set(judged.map(({ kind }) => kind))];
  for (const kind of kinds) {
    const all = judged.filter((one) => one.kind === kind);
    const of = (verdict: Verdict) => all.filter((one) => one.verdict === verdict).length;
    console.log(
      `${name}, ${kind}: pass ${of('pass')}, marginal ${of('marginal')}, fail ${of('fail')}, inconclusive ${of('inconclusive')}`,
    );
  }
  for (const { rate, holds } of told) expect(rate).toBeLessThanOrEqual(holds);
});
