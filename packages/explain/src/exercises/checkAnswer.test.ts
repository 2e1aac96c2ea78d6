import { describe, expect, test } from 'vitest';
import { checkAnswer } from './checkAnswer.js';
import type { AnswerUnit, Exercise, ExercisePart } from './exercise.js';
import { makeExercise } from './makeExercise.js';

const mistake = 'A mistake.';

/** An exercise that asks for one value, with one wrong answer that is known. */
function asking(unit: AnswerUnit, value: number, wrong: number, tolerance: number): Exercise {
  const part: ExercisePart = {
    id: 'it',
    kind: 'quantity',
    asks: 'What is it?',
    unit,
    value,
    tolerance,
    wrong: [{ value: wrong, tolerance, mistake }],
  };
  return { ...makeExercise('loading', 'easy', 1), parts: [part] };
}

const asked = {
  V: asking('V', 2.5, 3, 0.0125),
  Ω: asking('Ω', 2500, 5000, 12.5),
  '%': asking('%', 0.4, 0.6, 0.002),
  '°C': asking('°C', 40, 313.15, 0.5),
  '1': asking('1', 3, 6, 0.25),
} as const;

type Result = 'right' | 'mistake' | 'wrong' | 'unreadable';

const spellings: Readonly<Record<AnswerUnit, Readonly<Record<Result, readonly string[]>>>> = {
  V: {
    right: [
      ...['2.5 V', '2.5V', '2,5 V', '2,5V', '2.5 v', '2.5 volts', '2.5 Volt', '2.50 V', '2.500 V'],
      ...[
        '2500 mV',
        '2500mV',
        '2 500 mV',
        '2.5\u00a0V',
        '  2.5 V ',
        '+2.5 V',
        '2V5',
        '2v5',
        '2.5e0 V',
      ],
      ...[
        '2.5E0 V',
        '25e-1 V',
        '0.0025 kV',
        '2500000 µV',
        '2500000 uV',
        '2500000 μV',
        '2.51 V',
        '2.49 V',
      ],
      '2.4876 V',
    ],
    mistake: ['3 V', '3V', '3000 mV', '3,0 volts', '2.99 V', '3.01 V', '3V0'],
    wrong: [
      '2.4 V',
      '2.52 V',
      '0 V',
      '-2.5 V',
      '−2.5 V',
      '2.5 mV',
      '2.5 kV',
      '5 V',
      '25 V',
      '2.5 MV',
    ],
    unreadable: [
      ...[
        '2.5',
        '2,5',
        '2500',
        '2500m',
        '2.5 k',
        '1e3',
        '',
        '  ',
        'V',
        'two volts',
        '2.5 ohms',
        '2.5 A',
      ],
      ...[
        '2.5 %',
        '2.5 X',
        '2,500 V',
        '2.5.1 V',
        '2.5 V 3',
        'about 2.5 V',
        '2.5 V?',
        'NaN',
        '2500 mm',
        '2.5 °C',
      ],
    ],
  },
  Ω: {
    right: [
      ...[
        '2500 Ω',
        '2500Ω',
        '2500 ohms',
        '2500 ohm',
        '2500 Ohm',
        '2500R',
        '2.5 kΩ',
        '2,5 kΩ',
        '2.5k',
        '2.5 K',
      ],
      ...[
        '2k5',
        '2K5',
        '2k5 Ω',
        '2.5 kOhm',
        '2.5 kohms',
        '2 500 Ω',
        '0.0025 MΩ',
        '0.0025M',
        '2.51k',
        '2490 Ω',
      ],
      '2500 \u2126',
    ],
    mistake: ['5k', '5 kΩ', '5000 ohms', '5K0', '4.99 kΩ', '5010 Ω'],
    wrong: ['2.5 Ω', '2.5R', '25 kΩ', '2.5 MΩ', '2R5', '-2500 Ω', '2600 Ω', '0 Ω', '3k3'],
    unreadable: [
      '2500',
      '2 500',
      '2,5',
      '',
      'k',
      '2.5 V',
      '2.5 kV',
      '4E7',
      '2,500 Ω',
      '2k5k',
      'ohms',
      '2.5 kk',
    ],
  },
  '%': {
    right: [
      '40 %',
      '40%',
      '40.0 %',
      '40,0 %',
      '40 percent',
      '0.4',
      '0,4',
      '.4',
      '0.400',
      '0,400',
      '4e-1',
      '40.1 %',
      '39.9%',
    ],
    mistake: ['60 %', '0.6', '60 percent', '0,6'],
    wrong: ['4 %', '0.04', '400 %', '0', '1', '0.4 %', '41 %', '-40 %'],
    unreadable: ['40', '2', '-0.4', '', '%', '40 V', '0.4 V', 'forty'],
  },
  '°C': {
    right: [
      '40 °C',
      '40°C',
      '40 C',
      '40 degC',
      '40 celsius',
      '40,0 °C',
      '104 °F',
      '104 F',
      '313.15 K',
      '313 K',
      '40.4 °C',
      '40 ℃',
    ],
    mistake: ['313.15 °C', '313 °C', '586.3 K'],
    wrong: ['40 K', '40 °F', '-40 °C', '41 °C', '0 °C'],
    unreadable: ['40', '40 °', '', 'warm', '40 V', '40 kΩ', '4,000 °C'],
  },
  '1': {
    right: ['3', '3.0', ' 3 ', '3 passes', '3 times', '+3', '3 departures'],
    mistake: ['6', '6 passes'],
    wrong: ['2', '4', '0', '-3', '30', '3.5'],
    unreadable: ['three', '', '3 V', '3 %', '3 of 4', '3/4', '3 kΩ'],
  },
};

const table = (Object.keys(spellings) as AnswerUnit[]).flatMap((unit) =>
  (Object.keys(spellings[unit]) as Result[]).flatMap((result) =>
    spellings[unit][result].map((text): [AnswerUnit, string, Result] => [unit, text, result]),
  ),
);

test('the table holds spellings of every kind', () => {
  expect(table.length).toBeGreaterThan(180);
});

test.each(table)('asked in %s, “%s” is %s', (unit, text, result) => {
  const told = checkAnswer(asked[unit], text);
  expect(told.result).toBe(result === 'mistake' ? 'wrong' : result);
  if (told.result === 'wrong')
    expect(told.mistake).toBe(result === 'mistake' ? mistake : undefined);
  expect(told.sentence).toMatch(/\.$/);
});

describe('what is said', () => {
  test.each<[AnswerUnit, string, string]>([
    ['V', '2.5', '“2.5” has no unit; give it as well, such as 2.5 V or 250 mV.'],
    ['Ω', '2500', '“2500” has no unit; give it as well, such as 470 Ω or 4.7 kΩ.'],
    [
      '°C',
      '40',
      '“40” has no unit; write a temperature with its unit, such as 20 °C, 68 °F or 293 K.',
    ],
    ['V', '2.5 A', '“2.5 A” is in A, not in V; write a voltage such as 5 V or 500 mV.'],
    ['1', 'three', '“three” is no plain number; a count is asked for, such as 3.'],
    ['V', '2.50 V', 'Right: 2.500\u00a0V.'],
    ['1', '3', 'Right: 3.'],
    ['V', '3 V', mistake],
    ['V', '1 V', 'That is not it yet. The hint says where to begin.'],
  ])('asked in %s, to “%s”', (unit, text, sentence) => {
    expect(checkAnswer(asked[unit], text).sentence).toBe(sentence);
  });

  test('of a fraction both spellings are told', () => {
    expect(checkAnswer(asked['%'], '40').sentence).toContain(
      'such as 40 %, or the fraction, such as 0.4',
    );
  });
});

describe('a choice', () => {
  const exercise = makeExercise('trace', 'easy', 1);
  const [part] = exercise.parts;
  const options = part?.kind === 'choice' ? part.options : [];

  test.each(options)('$id is taken by name and by its words', ({ id, text }) => {
    const results = [id, text, text.toUpperCase(), ` ${text.replaceAll(' ', '  ')} `].map(
      (answer) => checkAnswer(exercise, answer).result,
    );
    const right = part?.kind === 'choice' && part.right === id;
    expect(new Set(results)).toEqual(new Set([right ? 'right' : 'wrong']));
  });

  test('what is none of them is unreadable, and they are named', () => {
    const told = checkAnswer(exercise, 'the moon');
    expect(told.result).toBe('unreadable');
    expect(told.sentence).toContain(options[0]!.text);
  });
});

test.each<[string, () => unknown, string]>([
  ['a part that isn’t there', () => checkAnswer(asked.V, '1 V', 'other'), 'part'],
  ['an answer that is no text', () => checkAnswer(asked.V, 1 as never), 'answer'],
  ['no exercise', () => checkAnswer(undefined as never, '1 V'), 'exercise'],
  [
    'a value that is none',
    () => checkAnswer({ ...asked.V, parts: [{ ...asked.V.parts[0], value: NaN }] } as never, '1 V'),
    'exercise.parts[0].value',
  ],
  [
    'a part of another kind',
    () =>
      checkAnswer({ ...asked.V, parts: [{ ...asked.V.parts[0], kind: 'essay' }] } as never, '1 V'),
    'exercise.parts[0].kind',
  ],
  [
    'a choice without options',
    () =>
      checkAnswer({ ...asked.V, parts: [{ ...asked.V.parts[0], kind: 'choice' }] } as never, '1 V'),
    'exercise.parts[0].unit',
  ],
  [
    'parts that are none',
    () => checkAnswer({ ...asked.V, parts: [] } as never, '1 V'),
    'exercise.parts',
  ],
  ['a topic that isn’t there', () => makeExercise('other' as never, 'easy', 1), 'exercise.topic'],
  ['a level that isn’t there', () => makeExercise('loading', 'mild' as never, 1), 'exercise.level'],
  ['a seed that isn’t whole', () => makeExercise('loading', 'easy', 0.5), 'exercise.seed'],
  ['a seed below 0', () => makeExercise('loading', 'easy', -1), 'exercise.seed'],
  [
    'a seed that is missing',
    () => makeExercise('loading', 'easy', undefined as never),
    'exercise.seed',
  ],
])('%s is refused at its place', (_, make, path) => {
  expect(make).toThrow(expect.objectContaining({ name: 'InputError', path }));
});
