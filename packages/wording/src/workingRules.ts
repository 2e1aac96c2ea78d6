/** What the steps of a working rest on, and where that is published. */
export const workingRules = {
  ohm: {
    name: 'Ohm’s law',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 2 (chapter from memory)',
  },
  series: {
    name: 'Resistances in series add up',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 5 (chapter from memory)',
  },
  parallel: {
    name: 'Conductances in parallel add up',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 5 (chapter from memory)',
  },
  divider: {
    name: 'Voltage divider',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 6 (chapter from memory)',
  },
  thevenin: {
    name: 'Thévenin’s theorem',
    source: 'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 10',
  },
  millman: {
    name: 'Millman’s theorem',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 10 (chapter from memory)',
  },
  kirchhoff: {
    name: 'Kirchhoff’s current law',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 6 (chapter from memory)',
  },
  joule: {
    name: 'Joule heat',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 2 (chapter from memory)',
  },
  comparison: { name: 'Comparison', source: 'definition' },
  kirchhoffVoltage: {
    name: 'Kirchhoff’s voltage law',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 6 (chapter from memory)',
  },
  criterion: { name: 'Limit of the criteria', source: 'common practice, no source' },
  throttlePercent: {
    name: 'Absolute throttle position, a byte of 100/255 % a count',
    source: 'SAE J1979, parameter 0x11',
  },
  threeSteps: { name: 'Three steps stand out', source: 'common practice, no source' },
  quantising: { name: 'Range over the number of codes', source: 'definition' },
  exponential: {
    name: 'Charging and discharging of a capacitor',
    source:
      'T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 16 (chapter from memory)',
  },
  poles: {
    name: 'Time constants of stages one after the other add up, nearly',
    source: 'common practice, no source',
  },
  bandwidth: { name: 'Low-pass of one pole', source: 'definition, τ = 1/(2πf)' },
  overlap: {
    name: 'Part of all phases in which dropout and readings overlap',
    source: 'own derivation: each phase is as likely as any other',
  },
  inARow: { name: 'Readings until a fault is set', source: 'definition' },
  independent: {
    name: 'Chances of independent passes',
    source: 'rules of probability',
  },
  celsius: { name: 'Celsius temperature', source: 'ISO 80000-5, 273.15 K at 0 °C' },
  thermistorB: {
    name: 'Law of one B',
    source: 'IEC 60539-1 (from memory)',
  },
  thermistorTable: {
    name: 'Straight line of ln R over 1/T between two rows',
    source: 'common practice, no source',
  },
  steinhartHart: {
    name: 'Steinhart and Hart’s law',
    source: 'I. S. Steinhart and S. R. Hart, Deep-Sea Research 15, 1968 (from memory)',
  },
  winding: {
    name: 'Resistance of a winding is proportional to k + t',
    source: 'IEC 60034 (its k of copper is 235; 234.5 and, of aluminium, 225 are from memory)',
  },
  standardAtmosphere: { name: 'Standard atmosphere', source: 'ISO 2533:1975' },
  ratiometric: {
    name: 'Output as a part of the supply',
    source: 'data sheets of such sensors state it so',
  },
  falseAlarms: {
    name: 'Chance of a false alarm, shared out over all samples and both sides',
    source: 'Bonferroni’s inequality (from memory)',
  },
  coverageFactor: { name: 'Coverage factor 2', source: 'JCGM 100:2008, 6.3' },
  normal: {
    name: 'Normal distribution of the error',
    source: 'JCGM 106:2012, 7.2 (from memory)',
  },
  limits: { name: 'Inside and outside', source: 'definition' },
  rejection: {
    name: 'Tolerance outside a limit',
    source:
      'guarded rejection, JCGM 106:2012, 8.3 (from memory); how much is common practice, no source',
  },
  fineEnough: {
    name: 'Limits four expanded uncertainties apart',
    source: 'common practice, no source',
  },
  mean: { name: 'Arithmetic mean', source: 'definition' },
  logarithm: { name: 'Odds from their logarithm', source: 'definition' },
  samples: { name: 'Duration over interval', source: 'definition' },
  bayes: {
    name: 'Bayes’ theorem, with tempered likelihoods',
    source:
      'R. E. Kass and A. E. Raftery, J. Am. Stat. Assoc. 90 (1995) (from memory); how much likelihoods are tempered is fitted to modelled recordings',
  },
  laplace: { name: 'Rule of succession', source: 'P. S. Laplace (from memory)' },
  preferred: { name: 'Preferred values of resistors', source: 'IEC 60063' },
  straightLine: { name: 'Straight line', source: 'common practice, no source' },
  derivative: { name: 'Derivative', source: 'rules of differential calculus' },
  extreme: {
    name: 'Where a difference is largest, both rise alike',
    source: 'rules of differential calculus',
  },
  quadratic: { name: 'Root of a quadratic', source: 'rules of algebra' },
  rootSumOfSquares: {
    name: 'Uncertainties add up as root of the sum of squares',
    source: 'JCGM 100:2008, equation 10',
  },
  rectangular: {
    name: 'Half-width of a tolerance over √3',
    source: 'JCGM 100:2008, 4.3.7',
  },
  corners: {
    name: 'Extremes lie where each part is at an end of its tolerance',
    source: 'own derivation: the reading is a quotient of straight lines in each resistance',
  },
  difference: { name: 'Difference', source: 'definition' },
  ratio: { name: 'Ratio', source: 'definition' },
} as const;
