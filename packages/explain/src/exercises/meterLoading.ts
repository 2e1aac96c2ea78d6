import type { Amps, Ohms, Volts } from '@truesweep/core';
import {
  circuitWorkingWords,
  workingRules as rules,
  meterExerciseWords as words,
} from '@truesweep/wording/working';
import { findLegs, giveParts, unmarked } from '../circuit/legs.js';
import { findOutput } from '../circuit/output.js';
import { outputAt } from '../circuit/outputAt.js';
import { difference, product, quotient, sum } from '../expression.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { type DrawnBench, drawnBench, given, givenBench, sidesOf } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, ExerciseLevel } from './exercise.js';
import { quantityPart } from './parts.js';

/** What a meter's input takes away: in volts, as a part of the reading, or which input takes away no more than so much. */
export function meterLoading(draw: Draws, level: ExerciseLevel): Draft | undefined {
  const bench = drawnBench(draw, level !== 'easy');
  if (level === 'hard') return leastInput(bench, draw.one([0.01, 0.02, 0.03, 0.04, 0.05, 0.1]));
  return level === 'easy' ? voltsTaken(bench, draw) : partTaken(bench, draw);
}

/** What the reading is without a meter, and with one of an input resistance. */
function readings({ circuit, position }: DrawnBench, input: Ohms) {
  const bare = outputAt(circuit, position);
  return { bare, shown: outputAt({ ...circuit, load: { pullDown: input } }, position) };
}

/** What the meter sees: both sides of the wiper side by side, and what is taken for it by mistake; Ω. */
function seenBy({ circuit, position }: DrawnBench) {
  const { up, down } = sidesOf(circuit, position);
  const side = (one: Ohms) => (one * down) / (one + down);
  return {
    seen: side(up),
    mistaken: [
      [side(up - circuit.limiter), words.mistakes.forgotLimiter],
      [up + down, words.mistakes.added],
      [circuit.sensor.track, words.mistakes.wholeTrack],
      [down, words.mistakes.belowOnly],
    ] as const,
  };
}

/** A difference of two readings with three digits keeps too few of them below this part. */
const leastTaken = 0.1;

function voltsTaken(bench: DrawnBench, draw: Draws): Draft | undefined {
  const input = draw.one([5e3, 10e3, 20e3, 50e3]);
  const { bare, shown } = readings(bench, input);
  const { seen, mistaken } = seenBy(bench);
  const taken = bare - shown;
  if (taken < leastTaken * bare) return undefined;
  return {
    question: words.question(givenBench(bench), words.input(given(input, 'Ω'))),
    hint: words.hint,
    parts: [
      quantityPart(
        { id: 'taken', asks: words.asksVolts, unit: 'V', value: taken },
        [
          [shown, words.mistakes.shown],
          ...mistaken.map(([ohms, mistake]) => [(bare * ohms) / (ohms + input), mistake] as const),
          [(bare * seen) / input, words.mistakes.inputAlone],
        ],
        { extra: halfThirdDigit(bare) },
      ),
    ],
    working: () =>
      workOut(words.titleVolts, (sheet) => {
        const { output } = readingOn(sheet, bench, () =>
          sheet.give({ symbol: 'R_m', meaning: words.finds.R_m, value: input, unit: 'Ω' }),
        );
        sheet.find({
          symbol: 'ΔV',
          meaning: words.finds.ΔV,
          unit: 'V',
          formula: difference('V_0', output),
          rule: rules.difference,
        });
        return {};
      }),
  };
}

/** Who takes two readings of three digits from each other loses this much of a digit. */
const halfThirdDigit = (volts: Volts): Volts => 0.5 * 10 ** (Math.floor(Math.log10(volts)) - 2);

function partTaken(bench: DrawnBench, draw: Draws): Draft | undefined {
  const range = draw.one([5, 10, 15]);
  const current: Amps = draw.one([250e-6, 500e-6, 1e-3]);
  const input = range / current;
  const { bare, shown } = readings(bench, input);
  const { seen, mistaken } = seenBy(bench);
  const { volts } = bench.circuit.source;
  const partOf = (ohms: Ohms, of: Ohms) => ohms / (ohms + of);
  const part = 1 - shown / bare;
  if (bare > range || part < leastTaken) return undefined;
  return {
    question: words.question(
      givenBench(bench),
      words.needle(given(range, 'V'), given(current, 'A')),
    ),
    hint: words.hintNeedle,
    parts: [
      quantityPart(
        { id: 'part', asks: words.asksPart, unit: '%', value: part },
        [
          [(bare - shown) / volts, words.mistakes.ofSource],
          [partOf(seen, bare / current), words.mistakes.readingForRange],
          [bare / shown - 1, words.mistakes.ofShown],
          ...mistaken.map(([ohms, mistake]) => [partOf(ohms, input), mistake] as const),
        ],
        { extra: halfThirdDigit(bare) / bare },
      ),
    ],
    working: () =>
      workOut(words.titlePart, (sheet) => {
        const { output } = readingOn(sheet, bench, () => {
          sheet.give({ symbol: 'U_r', meaning: words.finds.U_r, value: range, unit: 'V' });
          sheet.give({ symbol: 'I_r', meaning: words.finds.I_r, value: current, unit: 'A' });
          sheet.find({
            symbol: 'R_m',
            meaning: words.finds.R_m,
            unit: 'Ω',
            formula: quotient('U_r', 'I_r'),
            rule: rules.ohm,
          });
          return 'R_m';
        });
        sheet.find({
          symbol: 'p',
          meaning: words.finds.p,
          unit: '%',
          formula: quotient(difference('V_0', output), 'V_0'),
          rule: rules.ratio,
        });
        return {};
      }),
  };
}

/** Works out the reading with a meter; says its symbol. */
function readingOn(sheet: Sheet, { circuit, position }: DrawnBench, input: () => string) {
  const parts = giveParts(sheet, circuit, unmarked);
  const x = giveX(sheet, position);
  const pullDown = input();
  const legs = findLegs(sheet, { ...parts, pullDown }, x, unmarked);
  return { output: findOutput(sheet, legs, 'thevenin', unmarked) };
}

const giveX = (sheet: Sheet, position: number): string =>
  sheet.give({ symbol: 'x', meaning: circuitWorkingWords.given.x, value: position, unit: '%' });

function leastInput(bench: DrawnBench, part: number): Draft {
  const { seen, mistaken } = seenBy(bench);
  const inputFor = (ohms: Ohms) => (ohms * (1 - part)) / part;
  return {
    question: words.question(givenBench(bench), words.wanted(given(part, '%'))),
    hint: words.hintInput,
    parts: [
      quantityPart({ id: 'input', asks: words.asksInput, unit: 'Ω', value: inputFor(seen) }, [
        ...mistaken.map(([ohms, mistake]) => [inputFor(ohms), mistake] as const),
        [seen / part, words.mistakes.inputAlone],
        [seen * part, words.mistakes.timesPart],
      ]),
    ],
    working: () => inputWorking(bench, part),
  };
}

function inputWorking({ circuit, position }: DrawnBench, part: number): Working {
  return workOut(words.titleInput, (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    const x = giveX(sheet, position);
    sheet.give({ symbol: 'p', meaning: words.finds.p, value: part, unit: '%' });
    const { up, down } = findLegs(sheet, parts, x, unmarked);
    sheet.find({
      symbol: 'R_w',
      meaning: words.finds.R_w,
      unit: 'Ω',
      formula: quotient(product(up, down), sum(up, down)),
      rule: rules.thevenin,
    });
    sheet.find({
      symbol: 'R_m',
      meaning: words.finds.R_m,
      unit: 'Ω',
      formula: quotient(product('R_w', difference(1, 'p')), 'p'),
      rule: rules.divider,
    });
    return {};
  });
}
