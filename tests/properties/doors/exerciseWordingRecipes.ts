import type { Recipe, Recipes } from './recipe.js';

const of = (...args: readonly unknown[]): Recipe => ({
  args: () => structuredClone(args),
  unknown: 'of facts only what is said is looked at',
});

const bench = { source: '5 V', limiter: '1 kΩ', track: '5 kΩ', position: '40 %' };
const divider = { supply: '5 V', pullUp: '1 kΩ' };

/** What workings and exercises say. */
export const exerciseWordingRecipes: Recipes = {
  'answerWords.right': of('2.5 V'),
  'answerWords.noUnit': of('2.5', '2.5 V'),
  'answerWords.noPercent': of('40'),
  'answerWords.noCount': of('three'),
  'answerWords.noOption': of('x', ['one', 'other']),
  'circuitWorkingWords.title': of('40 %'),
  'loadingExerciseWords.question': of({
    ...bench,
    load: '10 kΩ',
    pullUp: { ohms: '10 kΩ', volts: '5 V' },
  }),
  'meterExerciseWords.question': of(bench, 'A meter is put there.'),
  'meterExerciseWords.input': of('10 kΩ'),
  'meterExerciseWords.needle': of('10 V', '1 mA'),
  'meterExerciseWords.wanted': of('2 %'),
  'limiterExerciseWords.question': of({
    source: '5 V',
    inside: '100 Ω',
    track: '5 kΩ',
    wiper: ['1 mA', '5 mA'],
    rated: ['100 mW', '400 mW'],
  }),
  'limiterExerciseWords.conclusion': of('1 kΩ'),
  'windowExerciseWords.question': of({
    source: '5 V ± 2 %',
    limiter: '1 kΩ ± 5 %',
    track: '5 kΩ ± 20 %',
    load: '10 kΩ',
    stop: 'closed',
    place: '10 %',
    reach: '2 %',
  }),
  'windowExerciseWords.around': of('5 V', '2 %'),
  'windowExerciseWords.asks': of('lowest', 'closed'),
  'windowExerciseWords.title': of('lowest', 'closed'),
  'windowExerciseWords.toleranceOf': of('track'),
  'windowExerciseWords.endOf': of('track'),
  'visibilityExerciseWords.sampled': of('10 ms', '2 ms'),
  'visibilityExerciseWords.averaged': of({
    interval: '400 ms',
    aperture: '100 ms',
    share: '10 %',
    length: '20 ms',
  }),
  'visibilityExerciseWords.limits': of({
    source: '5 V',
    noise: '5 mV',
    resolution: '10 mV',
    span: '3.4 V',
    deviations: '5',
    steps: '3',
    part: '1.5 %',
  }),
  'visibilityExerciseWords.asksAll': of(3),
  'visibilityExerciseWords.titleAll': of(3),
  'visibilityExerciseWords.setBy': of('the noise'),
  'visibilityExerciseWords.notLargest': of('20 mV', '50 mV'),
  'traceExerciseWords.question': of({
    source: '5 V',
    limiter: '1 kΩ',
    track: '5 kΩ',
    load: '10 MΩ',
    snaps: true,
  }),
  'traceExerciseWords.notThat': of('A crack moves the signal'),
  'thermistorExerciseWords.ofOhms': of(divider, '2.5 kΩ'),
  'thermistorExerciseWords.ofVolts': of(divider, '3.5 V'),
  'thermistorExerciseWords.ofLaw': of(divider, '3.5 V', {
    ohms: '2.5 kΩ',
    from: '20 °C',
    b: '3500 K',
  }),
};
