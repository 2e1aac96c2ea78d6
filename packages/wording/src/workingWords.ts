/** Headings of a working. */
export const workingLabels = {
  given: 'Given',
  restsOn: 'Rests on',
  show: 'Show the working',
  steps: 'Step by step',
} as const;

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
