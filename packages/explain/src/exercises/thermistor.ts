import {
  dividerOhms,
  dividerVolts,
  type Ohms,
  resistanceAt,
  type ThermistorLaw,
  temperatureAt,
  type Volts,
} from '@truesweep/core';
import {
  workingRules as rules,
  thermistorExerciseWords as words,
} from '@truesweep/wording/working';
import { call, difference, product, quotient, sum } from '../expression.js';
import { type Sheet, workOut } from '../workOut.js';
import { given } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, ExerciseLevel } from './exercise.js';
import { quantityPart } from './parts.js';

/** 0 °C, K. */
const zero = 273.15;

/** A thermistor on its pull-up: the voltage of its resistance, the resistance of a voltage, or the temperature of a voltage. */
export function thermistor(draw: Draws, level: ExerciseLevel): Draft | undefined {
  const supply = 5;
  const pullUp = draw.ohms('E12', 1000, 4700);
  const divider = { supply, pullUp };
  if (level === 'easy') return voltsOf(divider, draw.ohms('E24', 220, 15_000));
  const volts = draw.stepped(0.5, 4.5, 0.05);
  return level === 'medium' ? ohmsOf(divider, volts) : temperatureOf(draw, divider, volts);
}

type Divider = Readonly<Record<'supply' | 'pullUp', number>>;

const givenDivider = ({ supply, pullUp }: Divider) => ({
  supply: given(supply, 'V'),
  pullUp: given(pullUp, 'Ω'),
});

function voltsOf(divider: Divider, ohms: Ohms): Draft {
  const { supply, pullUp } = divider;
  return {
    question: words.ofOhms(givenDivider(divider), given(ohms, 'Ω')),
    hint: words.hintVolts,
    parts: [
      quantityPart(
        { id: 'volts', asks: words.asksVolts, unit: 'V', value: dividerVolts(divider, ohms) },
        [
          [(supply * pullUp) / (ohms + pullUp), words.mistakes.acrossPullUp],
          [(supply * ohms) / pullUp, words.mistakes.ratioForPart],
          [(supply * pullUp) / ohms, words.mistakes.ratioForPart],
          [supply, words.mistakes.supply],
        ],
      ),
    ],
    working: () =>
      workOut(words.titleVolts, (sheet) => {
        giveDivider(sheet, divider);
        sheet.give({ symbol: 'R', meaning: words.finds.R, value: ohms, unit: 'Ω' });
        sheet.find({
          symbol: 'V',
          meaning: words.finds.V,
          unit: 'V',
          formula: quotient(product('E', 'R'), sum('R', 'R_pu')),
          rule: rules.divider,
        });
        return {};
      }),
  };
}

function giveDivider({ give }: Sheet, { supply, pullUp }: Divider): void {
  give({ symbol: 'E', meaning: words.finds.E, value: supply, unit: 'V' });
  give({ symbol: 'R_pu', meaning: words.finds.R_pu, value: pullUp, unit: 'Ω' });
}

/** What the resistance is taken for, by whom mistakes the divider. */
function ohmsMistaken({ supply, pullUp }: Divider, volts: Volts) {
  return [
    [(pullUp * (supply - volts)) / volts, words.mistakes.turnedOver],
    [(pullUp * volts) / supply, words.mistakes.ofSupply],
    [pullUp, words.mistakes.pullUp],
  ] as const;
}

function ohmsOf(divider: Divider, volts: Volts): Draft {
  return {
    question: words.ofVolts(givenDivider(divider), given(volts, 'V')),
    hint: words.hintOhms,
    parts: [
      quantityPart(
        { id: 'ohms', asks: words.asksOhms, unit: 'Ω', value: dividerOhms(divider, volts) },
        ohmsMistaken(divider, volts),
      ),
    ],
    working: () =>
      workOut(words.titleOhms, (sheet) => {
        findOhms(sheet, divider, volts);
        return {};
      }),
  };
}

function findOhms(sheet: Sheet, divider: Divider, volts: Volts): void {
  giveDivider(sheet, divider);
  sheet.give({ symbol: 'V', meaning: words.finds.V, value: volts, unit: 'V' });
  sheet.find({
    symbol: 'R',
    meaning: words.finds.R,
    unit: 'Ω',
    formula: quotient(product('R_pu', 'V'), difference('E', 'V')),
    rule: rules.divider,
  });
}

function temperatureOf(draw: Draws, divider: Divider, volts: Volts): Draft | undefined {
  const b = draw.stepped(3300, 4000, 50);
  const law = {
    kind: 'b',
    b,
    ohms: draw.one([2000, 2200, 2500, 3000, 5000]),
    from: draw.one([20, 25]),
    to: 85,
    lowest: -20,
    highest: 120,
  } satisfies ThermistorLaw;
  const ohms = dividerOhms(divider, volts);
  if (ohms > resistanceAt(law, law.lowest) || ohms < resistanceAt(law, law.highest))
    return undefined;
  const celsiusOf = (at: Ohms) => inverse(law.from + zero, Math.log(at / law.ohms) / b) - zero;
  const ratio = Math.log(ohms / law.ohms);
  return {
    question: words.ofLaw(givenDivider(divider), given(volts, 'V'), {
      ohms: given(law.ohms, 'Ω'),
      from: given(law.from, '°C'),
      b: given(b, 'K'),
    }),
    hint: words.hintTemperature,
    parts: [
      quantityPart(
        {
          id: 'temperature',
          asks: words.asksTemperature,
          unit: '°C',
          value: temperatureAt(law, ohms),
        },
        [
          [celsiusOf(ohms) + zero, words.mistakes.leftInKelvins],
          [inverse(law.from, ratio / b), words.mistakes.celsiusInLaw],
          [inverse(law.from + zero, -ratio / b) - zero, words.mistakes.ratioTurnedOver],
          [inverse(law.from + zero, Math.log10(ohms / law.ohms) / b) - zero, words.mistakes.log10],
          ...ohmsMistaken(divider, volts).map(([at, mistake]) => [celsiusOf(at), mistake] as const),
        ],
      ),
    ],
    working: () =>
      workOut(words.titleTemperature, (sheet) => {
        findOhms(sheet, divider, volts);
        sheet.give({ symbol: 'R_1', meaning: words.finds.R_1, value: law.ohms, unit: 'Ω' });
        sheet.give({ symbol: 'T_1', meaning: words.finds.T_1, value: law.from + zero, unit: 'K' });
        sheet.give({ symbol: 'B', meaning: words.finds.B, value: b, unit: 'K' });
        sheet.give({ symbol: 'T_0', meaning: words.finds.T_0, value: zero, unit: 'K' });
        const inverted = quotient(call('ln', quotient('R', 'R_1')), 'B');
        sheet.find({
          symbol: 'T',
          meaning: words.finds.T,
          unit: 'K',
          formula: quotient(1, sum(quotient(1, 'T_1'), inverted)),
          rule: words.rules.bLaw,
        });
        sheet.find({
          symbol: 'ϑ',
          meaning: words.finds.ϑ,
          unit: '°C',
          formula: difference('T', 'T_0'),
          rule: words.rules.celsius,
        });
        return {};
      }),
  };
}

/** 1 / (1/T + more). */
const inverse = (temperature: number, more: number): number => 1 / (1 / temperature + more);
