import {
  type CarriedReading,
  type Circuit,
  carryToBench,
  carryToVehicle,
  checkFields,
  type FieldRules,
  formatQuantity,
  type Hookup,
  type OutputSense,
  type Volts,
} from '@truesweep/core';
import {
  inverseWorkingWords,
  workingRules as rules,
  carryWorkingWords as words,
} from '@truesweep/wording/working';
import { checkLegs, findLegs, giveParts, marked } from '../circuit/legs.js';
import { findOutput } from '../circuit/output.js';
import { findPosition } from '../circuit/position.js';
import { call, difference, product, quotient } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';

/** A reading to carry, and where to. */
export interface ReadingToCarry {
  /** What was read, V; −10⁶ to 10⁶. */
  readonly volts: Volts;
  /** Where it shall be known. */
  readonly to: 'bench' | 'vehicle';
  /** Whether the output rises or falls as the throttle opens, for a scan tool's percent; `rising` when left out. */
  readonly sense?: OutputSense;
}

const readingRules: FieldRules = {
  volts: () => {},
  to: ['bench', 'vehicle'],
  'sense?': ['rising', 'falling'],
};

/**
 * What a reading of one hook-up is on another: by the wiper's place, which is the same on both. On the vehicle with the percent that a scan tool
 * shows.
 *
 * @param reading The reading, V, and where it is carried.
 * @param bench The bench circuit with the sensor.
 * @param vehicle The vehicle's hook-up.
 * @returns The answer is the carried reading, V.
 * @throws InputError as `carryToVehicle` does; `no-working` where no single place gives the reading, and for circuits whose ways don't all meet
 * at the wiper.
 *
 * @example
 * const bench = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const vehicle = { source: { volts: 5 }, limiter: 0, load: {} };
 * explainCarriedReading({ volts: 1, to: 'vehicle' }, bench, vehicle).answer.value // => ≈ 1
 */
export function explainCarriedReading(
  reading: ReadingToCarry,
  bench: Circuit,
  vehicle: Hookup,
): Working {
  checkFields(reading, 'reading', readingRules);
  const { volts, to, sense = 'rising' } = reading;
  const carry = to === 'vehicle' ? carryToVehicle : carryToBench;
  const carried: CarriedReading = carry({ volts }, bench, vehicle);
  checkLegs(bench, 'bench');
  checkLegs({ ...vehicle, sensor: bench.sensor }, 'vehicle');
  if (carried.kind !== 'carried')
    refuseWorking(
      'reading.volts',
      `is ${volts} V, which ${inverseWorkingWords.noPlace[carried.kind]}`,
    );
  const sides = {
    bench: { circuit: bench, marks: marked('b', words.bench) },
    vehicle: { circuit: { ...vehicle, sensor: bench.sensor }, marks: marked('v', words.vehicle) },
  };
  const from = to === 'vehicle' ? 'bench' : 'vehicle';
  const title = words.title(formatQuantity(volts, 'V', { digits: 4, trim: true }), to);
  return workOut(title, (sheet) => {
    const { circuit, marks } = sides[from];
    const given = sheet.give({
      symbol: marks.of('V'),
      meaning: words.reading(from),
      value: volts,
      unit: 'V',
    });
    const place = findPosition(sheet, giveParts(sheet, circuit, marks), given, marks);
    const there = sides[to];
    const parts = giveParts(sheet, there.circuit, there.marks);
    const legs = findLegs(sheet, parts, place, there.marks);
    const answer = findOutput(sheet, legs, 'thevenin', there.marks);
    if (to === 'vehicle') findPercent(sheet, answer, parts.source, sense);
    return { answer, conclusion: words.same };
  });
}

/** The byte and the percent of a scan tool (SAE J1979). */
function findPercent(sheet: Sheet, output: string, reference: string, sense: OutputSense): void {
  const plain = (symbol: string, meaning: string, formula: ReturnType<typeof call>) =>
    sheet.find({ symbol, meaning, unit: '1', formula, rule: rules.throttlePercent });
  sheet.find({
    symbol: 'r',
    meaning: words.ratio,
    unit: '%',
    formula: quotient(output, reference),
    rule: rules.ratio,
  });
  if (sense === 'falling')
    sheet.find({
      symbol: 'r_o',
      meaning: words.opening,
      unit: '%',
      formula: difference(1, 'r'),
      rule: rules.throttlePercent,
    });
  const ratio = sense === 'falling' ? 'r_o' : 'r';
  plain('N', words.count, call('round', product(255, call('min', 1, call('max', 0, ratio)))));
  sheet.find({
    symbol: 'p',
    meaning: words.percent,
    unit: '%',
    formula: quotient('N', 255),
    rule: rules.throttlePercent,
  });
}
