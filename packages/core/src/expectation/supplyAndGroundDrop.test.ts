import { describe, expect, test } from 'vitest';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { type DropReadings, type LeadCurrent, supplyAndGroundDrop } from './supplyAndGroundDrop.js';

const supply = 6;
const ground = 4;
const track = 2000;

/** The voltages of a sensor behind poor leads, as the model has them, with a resistor across its terminals. */
function readings(across = Number.POSITIVE_INFINITY): DropReadings {
  const total = 1 / (1 / track + 1 / across);
  const { nodes } = operatingPoint(
    {
      source: { volts: 5 },
      limiter: 0,
      leads: { supply, ground },
      sensor: { track: total },
      load: {},
    },
    0,
  );
  const top = nodes.top as number;
  const bottom = nodes.bottom as number;
  return { reference: 5, referenceAtSensor: top - bottom, sensorGround: bottom };
}

describe('supplyAndGroundDrop', () => {
  test('the errors at both ends of the track are those of the circuit', () => {
    const { bottomError, topError } = supplyAndGroundDrop(readings());
    for (const [position, error] of [
      [0, bottomError],
      [1, topError],
      [0.25, bottomError * 0.75 + topError * 0.25],
    ] as const) {
      const { output } = operatingPoint(
        {
          source: { volts: 5 },
          limiter: 0,
          leads: { supply, ground },
          sensor: { track },
          load: {},
        },
        position,
      );
      expect((output as number) / 5 - position).toBeCloseTo(error, 12);
    }
  });

  test('it matters above the criterion only', () => {
    const drop = { reference: 5, referenceAtSensor: 4.9, sensorGround: 0.04 };
    expect(supplyAndGroundDrop(drop).worstError).toBeCloseTo(0.012, 12);
    expect(supplyAndGroundDrop(drop).matters).toBe(true);
    expect(supplyAndGroundDrop(drop, 0.02).matters).toBe(false);
  });

  test("what lies between the unit's ground pin and the battery is a meter's error, not the unit's", () => {
    const drop = { reference: 5, referenceAtSensor: 5, sensorGround: 0, unitGround: 0.2 };
    const found = supplyAndGroundDrop(drop);
    expect(found.worstError).toBe(0);
    expect(found.matters).toBe(false);
    expect(found.seenFromBattery).toBeCloseTo(0.04, 12);
  });

  test('no current, no ohms', () => {
    expect(supplyAndGroundDrop(readings()).groundLead).toEqual({
      kind: 'not-determined',
      reason: 'current-unknown',
    });
  });

  test('a measured current tells the ohms', () => {
    const current: LeadCurrent = { kind: 'amps', amps: 5 / (track + supply + ground) };
    const found = supplyAndGroundDrop(readings(), 0.01, current);
    expect(found.supplyLead).toMatchObject({ kind: 'ohms', ohms: expect.closeTo(supply, 9) });
    expect(found.groundLead).toMatchObject({ kind: 'ohms', ohms: expect.closeTo(ground, 9) });
  });

  test('so does a second, known load, whatever the sensor takes', () => {
    const current: LeadCurrent = { kind: 'second-load', ohms: 470, readings: readings(470) };
    const found = supplyAndGroundDrop(readings(), 0.01, current);
    expect(found.supplyLead).toMatchObject({ kind: 'ohms', ohms: expect.closeTo(supply, 9) });
    expect(found.groundLead).toMatchObject({ kind: 'ohms', ohms: expect.closeTo(ground, 9) });
  });

  test('their uncertainty is that of the voltages through the derivatives', () => {
    const uncertainty = 0.001;
    const first = { ...readings(), uncertainty };
    const second = { ...readings(470), uncertainty };
    const amps = supplyAndGroundDrop(first, 0.01, { kind: 'amps', amps: 0.0025 });
    expect(amps.groundLead).toMatchObject({ uncertainty: expect.closeTo(0.4, 9) });
    expect(amps.supplyLead).toMatchObject({ uncertainty: expect.closeTo(0.4 * Math.sqrt(3), 9) });
    const load = supplyAndGroundDrop(first, 0.01, {
      kind: 'second-load',
      ohms: 470,
      readings: second,
    });
    expect(load.groundLead).toMatchObject({
      uncertainty: expect.closeTo(
        470 * uncertainty * Math.hypot(1 / first.referenceAtSensor, 1 / second.referenceAtSensor),
        9,
      ),
    });
  });

  test('a resistance below nothing is nothing within twice the uncertainty, else a contradiction', () => {
    const drop = { reference: 5, referenceAtSensor: 5, sensorGround: -0.001 };
    const current: LeadCurrent = { kind: 'amps', amps: 0.001 };
    expect(supplyAndGroundDrop(drop, 0.01, current).groundLead).toEqual({
      kind: 'not-determined',
      reason: 'contradictory',
    });
    const unsure = { ...drop, uncertainty: 0.001 };
    expect(supplyAndGroundDrop(unsure, 0.01, current).groundLead).toMatchObject({ ohms: 0 });
  });

  const good = { reference: 5, referenceAtSensor: 5, sensorGround: 0 };
  test.each([
    [undefined, 0.01, undefined, 'readings'],
    [{ ...good, reference: 0 }, 0.01, undefined, 'readings.reference'],
    [{ ...good, reference: 101 }, 0.01, undefined, 'readings.reference'],
    [{ ...good, referenceAtSensor: -1 }, 0.01, undefined, 'readings.referenceAtSensor'],
    [{ ...good, sensorGround: Number.NaN }, 0.01, undefined, 'readings.sensorGround'],
    [{ ...good, unitGround: 200 }, 0.01, undefined, 'readings.unitGround'],
    [{ ...good, uncertainty: -1 }, 0.01, undefined, 'readings.uncertainty'],
    [good, 2, undefined, 'criterion'],
    [good, 0.01, { kind: 'amps', amps: 0 }, 'current.amps'],
    [good, 0.01, { kind: 'second-load', ohms: 0, readings: good }, 'current.ohms'],
    [good, 0.01, { kind: 'second-load', ohms: 100 }, 'current.readings'],
    [good, 0.01, { kind: 'guess' }, 'current.kind'],
  ])('refuses (%#) by path', (at, criterion, current, path) => {
    expect(() =>
      supplyAndGroundDrop(at as DropReadings, criterion, current as LeadCurrent),
    ).toThrow(expect.objectContaining({ name: 'InputError', path }));
  });
});
