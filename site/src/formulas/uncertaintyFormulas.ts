import {
  combineUncertainties,
  expectedWindows,
  fitTrend,
  outputUncertainty,
} from '@truesweep/core';
import type { FormulaGroup } from './formula.js';

const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };

/** Tolerances, windows and uncertainty. */
export const uncertaintyFormulas: FormulaGroup = {
  path: 'formulas/uncertainty',
  title: 'Windows and uncertainty',
  formulas: [
    {
      id: 'window',
      title: 'Window of a sound reading',
      tex: '\\bigl[V_\\mathrm{low},\\,V_\\mathrm{high}\\bigr] = \\Bigl[\\min_{p\\in P} V(p),\\ \\max_{p\\in P} V(p)\\Bigr]',
      where: [
        ['p', 'the values of all parts together'],
        ['P', 'every value within its tolerance'],
      ],
      says: 'A resistive network’s output is a quotient of two straight lines in each resistance, so the extremes lie at the corners: all corners are computed, nothing is approximated.',
      source: 'Own derivation; checked against random draws within the tolerances.',
      functions: ['expectedWindows', 'expectedBand'],
      usedBy: [
        'calculators/expected-readings',
        'calculators/check-a-sweep',
        'concepts/evidence-and-verdict',
        'lessons/verdict',
      ],
      worked: {
        given: '5 V ± 2 %, nothing else in doubt: highest open reading',
        steps: ['5 V · (1 + 2 %)'],
        byLibrary: () => expectedWindows(circuit, { source: 0.02 }).open.high,
        unit: 'V',
      },
    },
    {
      id: 'root-sum-of-squares',
      title: 'Uncertainty that the parts make together',
      tex: 'u_\\mathrm{c} = \\sqrt{\\sum_i \\left(\\frac{\\partial V}{\\partial p_i}\\,u_i\\right)^{2}}',
      where: [
        ['u_\\mathrm{c}', 'combined standard uncertainty, V'],
        ['u_i', 'standard uncertainty of each part'],
        ['\\partial V/\\partial p_i', 'how the reading answers to that part'],
      ],
      says: 'For parts that are independent of each other.',
      source: 'JCGM 100:2008 (GUM), equation 10.',
      functions: ['outputUncertainty', 'combineUncertainties'],
      usedBy: ['calculators/expected-readings'],
      worked: {
        given: 'two parts that move the reading by 30 mV and 40 mV',
        steps: ['√((30 mV)² + (40 mV)²)'],
        byLibrary: () =>
          combineUncertainties([
            { name: 'one', sensitivity: 1, uncertainty: 0.03 },
            { name: 'other', sensitivity: 1, uncertainty: 0.04 },
          ]).uncertainty,
        unit: 'V',
      },
    },
    {
      id: 'rectangular',
      title: 'Standard uncertainty of a tolerance',
      tex: 'u = \\frac{a}{\\sqrt{3}}',
      where: [['a', 'half of the whole range: the ± of a data sheet']],
      says: 'Where nothing is known but the limits, every value within them is taken as equally likely.',
      source: 'JCGM 100:2008 (GUM), 4.3.7.',
      functions: ['outputUncertainty'],
      usedBy: ['calculators/expected-readings'],
      worked: {
        given: '5 V ± 2 % at the open stop, straight from the source',
        steps: ['5 V · 2 % / √(3)', '100 mV / 1.732'],
        byLibrary: () => outputUncertainty(circuit, { source: 0.02 }, 1).uncertainty,
        unit: 'V',
      },
    },
    {
      id: 'degrees-of-freedom',
      title: 'Effective degrees of freedom',
      tex: '\\nu_\\mathrm{eff} = \\frac{u_\\mathrm{c}^{4}}{\\sum_i u_i^{4}/\\nu_i}',
      where: [
        ['u_i', 'what each input adds to the result'],
        ['\\nu_i', 'its degrees of freedom: readings less one'],
      ],
      says: 'Few readings make a wider interval: Student’s distribution with these degrees of freedom.',
      source: 'Welch–Satterthwaite; JCGM 100:2008 (GUM), equation G.2b.',
      functions: ['combineUncertainties'],
      usedBy: [],
      worked: {
        given: 'two inputs of the same size, each from five readings',
        steps: ['(√(2) · 10 mV)⁴ / ((10 mV)⁴ / 4 + (10 mV)⁴ / 4)', '4 / (1 / 4 + 1 / 4)'],
        byLibrary: () =>
          combineUncertainties([
            { name: 'one', sensitivity: 1, uncertainty: 0.01, degreesOfFreedom: 4 },
            { name: 'other', sensitivity: 1, uncertainty: 0.01, degreesOfFreedom: 4 },
          ]).degreesOfFreedom ?? Number.NaN,
      },
    },
    {
      id: 'slope-over-time',
      title: 'Uncertainty of a slope over time',
      tex: 'u_b = \\frac{s}{\\sqrt{\\sum_i \\left(t_i - \\bar t\\right)^{2}}},\\qquad s = \\sqrt{\\frac{\\sum_i \\left(y_i - \\bar y - b\\,(t_i - \\bar t)\\right)^{2}}{n-2}}',
      where: [
        ['b', 'slope of the straight line of least squares'],
        ['s', 'how far the values scatter about it'],
        ['t_i', 'when a value was recorded'],
        ['y_i', 'the value'],
        ['n', 'how many values'],
      ],
      says: 'A change is told where the slope exceeds its expanded uncertainty: Student’s factor times this. What is known of the scatter from other sensors is joined with s, and s is never less than the stated uncertainties.',
      source: 'JCGM 100:2008 (GUM), H.3.',
      functions: ['fitTrend'],
      usedBy: ['history'],
      worked: {
        given:
          '512 mV, 518 mV, 524 mV and 531 mV, one a year: 0.2 mV, 0.1 mV, 0.4 mV and 0.3 mV from their line; what its slope of 6.3 mV a year is in doubt by',
        steps: [
          '√(((0.2 mV)² + (0.1 mV)² + (0.4 mV)² + (0.3 mV)²) / 2) / √(1.5² + 0.5² + 0.5² + 1.5²)',
          '0.3873 mV / 2.236',
        ],
        byLibrary: () =>
          fitTrend([0.512, 0.518, 0.524, 0.531].map((value, at) => ({ at, value })))
            ?.slopeUncertainty ?? Number.NaN,
        unit: 'V',
      },
    },
  ],
};
