import { type HistoryRecord, sensorHistory, sharedScatter } from '@truesweep/history';
import { expect, test } from 'vitest';
import { soak } from '../../counts.js';
import { randomStream } from '../simulator/randomStream.js';
import { seasonRecords } from './seasonRecords.js';

const sensors = 1000 * soak;

/** The records of many sensors, whose readings repeat alike but for a factor of up to `unlike` either way. */
function seasons({ seed = 0, records = 4, drift = 0, unlike = 1.5 }): HistoryRecord[][] {
  const random = randomStream(seed);
  const draw = () => [random.normal(), random.normal(), random.normal(), random.normal()] as const;
  return Array.from({ length: sensors }, (_, i) =>
    seasonRecords({
      sensor: `Sensor ${i}`,
      draws: Array.from({ length: records }, draw),
      repeatability: 0.003 * unlike ** (2 * random.uniform() - 1),
      drift,
    }),
  );
}

const changed = (records: readonly HistoryRecord[], shared = {}) =>
  sensorHistory(records, shared).quantities.filter(({ trend }) => trend?.changed);

/** How many of the sensors have a change told of anything, and of how many it is told of the closed reading. */
function told(histories: readonly HistoryRecord[][], isShared = true) {
  const shared = isShared ? sharedScatter(histories) : {};
  const all = histories.map((records) => changed(records, shared));
  return {
    any: all.filter((one) => one.length > 0).length / sensors,
    closed: all.filter((one) => one.some(({ quantity }) => quantity === 'closed')).length / sensors,
  };
}

test.each([
  [3, 1],
  [4, 1.5],
  [6, 3],
  [10, 1.5],
])(
  '%i records each, repeating alike within a factor of %f: a change is told of at most 5 % of sensors that do not change',
  (records, unlike) => {
    const histories = seasons({ seed: 400 + records, records, unlike });
    const { any } = told(histories);
    const alone = told(histories, false);
    console.log(
      `${sensors} sensors, ${records} records: false change of any kind ${percent(any)} with each other's scatter, ${percent(alone.any)} by themselves (goal: at most 5 %)`,
    );
    expect(any).toBeLessThanOrEqual(0.05);
    // By itself it is 5 % but for the little that the correction for several quantities gives away: chance moves what so many sensors show.
    expect(alone.any).toBeLessThanOrEqual(0.05 + 2 * Math.sqrt((0.05 * 0.95) / sensors));
  },
);

test('a drift of three times the repeatability each season is found of at least 95 % by the fourth record', () => {
  const histories = seasons({ seed: 500, drift: 3 });
  const { closed } = told(histories);
  const alone = told(histories, false).closed;
  const five = told(seasons({ seed: 501, drift: 3, records: 5 }), false).closed;
  console.log(
    `${sensors} sensors, drift of 3 repeatabilities a season: found of ${percent(closed)} by the fourth record (goal: at least 95 %); of a sensor without others beside it ${percent(alone)} by the fourth, ${percent(five)} by the fifth`,
  );
  expect(closed).toBeGreaterThanOrEqual(0.95);
});

test('a supply, or a limiter, that is another in some seasons is no change', () => {
  const histories = seasons({ seed: 600, records: 5 });
  const others = histories.map((records) =>
    records.map((record, season) => (season < 3 ? record : scaled(record, 0.8))),
  );
  expect(told(others).any).toBeLessThanOrEqual(0.05);
});

/** The record as another hook-up of a lower supply would have given it. */
function scaled(record: HistoryRecord, by: number): HistoryRecord {
  const end = ({
    volts = 0,
    uncertainty = 0,
    low,
    high,
  }: NonNullable<HistoryRecord['closed']>) => ({
    volts: volts * by,
    uncertainty: uncertainty * by,
    low: low * by,
    high: high * by,
  });
  return {
    ...record,
    closed: end(record.closed!),
    open: end(record.open!),
    hysteresis: record.hysteresis! * by,
    noise: record.noise * by,
  };
}

test('noise of another recorder is no change', () => {
  const histories = seasons({ seed: 700, records: 5 });
  const others = histories.map((records) =>
    records.map((record, season) =>
      season < 2
        ? { ...record, noise: record.noise * 4, recorder: { interval: 1e-5, resolution: 0.02 } }
        : record,
    ),
  );
  const noise = others.map(
    (records) => sensorHistory(records).quantities.find(({ quantity }) => quantity === 'noise')!,
  );
  expect(new Set(noise.map(({ otherRecorder }) => otherRecorder))).toEqual(new Set([2]));
  expect(told(others).any).toBeLessThanOrEqual(0.05);
});

function percent(part: number): string {
  return `${(100 * part).toFixed(1)} %`;
}
