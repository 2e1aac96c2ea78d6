import type { Recipe, Recipes } from './recipe.js';

const of = (...args: readonly unknown[]): Recipe => ({
  args: () => structuredClone(args),
  unknown: 'of facts only what is said is looked at',
});

const exchanged = {
  kind: 'exchanged-leads',
  connection: { supply: 'wiper', ground: 'bottom', signal: 'top' },
};

/** What workings say. */
export const workingWordingRecipes: Recipes = {
  'loadingWorkingWords.title': of('67 %'),
  'inverseWorkingWords.title': of('1.5 V'),
  'dirtWorkingWords.title': of('10 kΩ'),
  'windowWorkingWords.title': of('closed'),
  'windowWorkingWords.tolerance': of('source'),
  'windowWorkingWords.place': of('open'),
  'windowWorkingWords.atEnd': of('track'),
  'windowWorkingWords.says': of('310 mV', '480 mV'),
  'budgetWorkingWords.title': of('50 %'),
  'budgetWorkingWords.halfWidth': of('limiter'),
  'budgetWorkingWords.shareOf': of('openPosition'),
  'budgetWorkingWords.adds': of('pullUpVolts'),
  'mistakeWorkingWords.title': of(exchanged, '10 %'),
  'mistakeWorkingWords.titleAnywhere': of(exchanged),
  'mistakeWorkingWords.way': of('supply', 'wiper'),
  'mistakeWorkingWords.joined': of('ground'),
  'mistakeWorkingWords.wiperCurrent': of('signal'),
  'limiterWorkingWords.deciding': of(exchanged),
  'limiterWorkingWords.preferred': of('E24'),
  'limiterWorkingWords.does': of('510 Ω'),
  'limiterWorkingWords.doesOfPower': of('510 Ω', '49 mW'),
  'carryWorkingWords.title': of('420 mV', 'vehicle'),
  'carryWorkingWords.reading': of('bench'),
  'settingWorkingWords.title': of('500 mV'),
  'chanceWorkingWords.title': of('digital meter', '20 ms'),
  'thermistorWorkingWords.title': of('20.0 °C'),
  'thermistorWorkingWords.titleOhms': of('20.0 °C'),
  'thermistorWorkingWords.kelvinOf': of('First'),
  'fitWorkingWords.temperature': of(1),
  'fitWorkingWords.ohms': of(2),
  'fitWorkingWords.kelvins': of(3),
  'fitWorkingWords.logarithm': of(1),
  'fitWorkingWords.inverse': of(1),
  'fitWorkingWords.slope': of(2),
  'findingWorkingWords.title': of('dropout', '5.9 %'),
  'endWorkingWords.title': of('Closed reading'),
  'placeWorkingWords.title': of('5.9 %'),
  'placeWorkingWords.departure': of(1),
  'causesWorkingWords.before': of(['track']),
  'causesWorkingWords.form': of(['track', 'interference']),
  'causesWorkingWords.place': of(['connection']),
  'causesWorkingWords.weight': of(['track']),
  'causesWorkingWords.share': of('interference'),
  'causesWorkingWords.name': of(['track', 'interference']),
};
