import {
  adcCount,
  chanceAllMissed,
  chanceInPasses,
  chanceOfSamples,
  inputCorner,
  integratorRejection,
  movementOf,
  moveNeedle,
  riseTime,
  settlingTime,
} from '@truesweep/core';
import type { FormulaGroup } from './formula.js';

/** What an instrument shows, and what a recording can show. */
export const instrumentFormulas: FormulaGroup = {
  path: 'formulas/instruments',
  title: 'Instruments and recordings',
  formulas: [
    {
      id: 'chance-of-a-sample',
      title: 'Chance that a dropout leaves a sample',
      tex: 'p = \\min\\!\\left(1,\\ \\frac{d}{\\Delta t}\\right)',
      where: [
        ['d', 'length of the dropout, s'],
        ['\\Delta t', 'interval between samples, s'],
      ],
      says: 'The dropout begins at any moment of an interval. A recording whose interval is longer than the dropout shows it by luck only.',
      source: 'Geometry of a uniformly placed stretch; no further source.',
      functions: ['chanceOfSamples', 'chanceOfReading'],
      usedBy: [
        'calculators/which-instrument',
        'calculators/check-a-sweep',
        'concepts/what-an-instrument-shows',
        'concepts/evidence-and-verdict',
      ],
      worked: {
        given: '2 ms of dropout, a sample every 5 ms',
        steps: ['min(1, 2 ms / 5 ms)'],
        byLibrary: () =>
          chanceOfSamples(
            Float64Array.from({ length: 101 }, (_, i) => i / 200),
            0.002,
          ),
        unit: '%',
      },
    },
    {
      id: 'chance-in-passes',
      title: 'Chance that at least one of several passes shows it',
      tex: 'p_n = 1-(1-p)^n',
      where: [
        ['p', 'chance of each pass'],
        ['n', 'number of passes'],
      ],
      says: 'For passes that are independent of each other.',
      source: 'Elementary probability.',
      functions: ['chanceInPasses', 'shortestShown'],
      usedBy: [
        'calculators/which-instrument',
        'calculators/check-a-sweep',
        'concepts/what-an-instrument-shows',
        'concepts/evidence-and-verdict',
      ],
      worked: {
        given: '40 % in each of 3 passes',
        steps: ['1 − (1 − 0.4)³', '1 − 0.216'],
        byLibrary: () => chanceInPasses(0.4, 3),
        unit: '%',
      },
    },
    {
      id: 'all-missed',
      title: 'Chance that a spot seen before is missed on every pass',
      tex: 'p = \\prod_{j=1}^{k} \\frac{n-s+j}{n+1+j}',
      where: [
        ['s', 'passes that showed it, of n'],
        ['k', 'further passes'],
      ],
      says: 'From a uniform prior for the chance of a pass; for one pass more it is Laplace’s rule of succession. It says whether a spot that vanished after cleaning may only have been missed.',
      source: 'P.-S. Laplace, 1774 (from memory).',
      functions: ['chanceAllMissed', 'compareSweeps'],
      usedBy: ['concepts/evidence-and-verdict'],
      worked: {
        given: 'seen on 6 of 6 passes, 6 passes more',
        steps: ['1 / 8 · 2 / 9 · 3 / 10 · 4 / 11 · 5 / 12 · 6 / 13', '720 / 1235520'],
        byLibrary: () => chanceAllMissed(6, 6, 6),
        unit: '%',
      },
    },
    {
      id: 'rejection',
      title: 'Hum that an integrating meter lets through',
      tex: 'g = \\left|\\frac{\\sin \\pi f T}{\\pi f T}\\right|',
      where: [
        ['f', 'frequency of the hum, Hz'],
        ['T', 'time that the meter integrates over, s'],
      ],
      says: 'Nothing where the time holds whole cycles; that is why meters integrate over cycles of the mains, and why short dropouts vanish in their mean.',
      source:
        'Fourier transform of a rectangular window; the 60 dB of data sheets is this at ± 0.1 % of line frequency.',
      functions: ['integratorRejection', 'digitalDisplay'],
      usedBy: ['calculators/which-instrument', 'concepts/what-an-instrument-shows'],
      worked: {
        given: '60 Hz over 20 ms',
        steps: ['|sin(π · 60 Hz · 20 ms) / (π · 60 Hz · 20 ms)|', '|sin(3.77) / 3.77|'],
        byLibrary: () => integratorRejection(60, 0.02).passed,
        unit: '%',
      },
    },
    {
      id: 'needle',
      title: 'How a needle moves',
      tex: '\\ddot y + 2\\zeta\\omega_0\\,\\dot y + \\omega_0^2\\,y = \\omega_0^2\\,u',
      where: [
        ['y', 'deflection'],
        ['u', 'what it would show at rest'],
        ['\\omega_0', 'natural frequency, rad/s'],
        ['\\zeta', 'damping'],
      ],
      says: 'Solved exactly for an input that changes evenly. It follows a hand, and swings past.',
      source:
        'Second-order movement; IEC 60268-17 states such a movement by 99 % in 300 ms and an overshoot of 1 % to 1.5 %.',
      functions: ['moveNeedle', 'movementOf', 'needleDisplay'],
      usedBy: ['calculators/which-instrument', 'concepts/what-an-instrument-shows'],
      worked: {
        given: 'a step, 300 ms after it, for 99 % in 300 ms and 1.25 % of overshoot',
        steps: [
          '1 − exp(−3.2944083) · (cos(2.3618498) + 1.3948424 · sin(2.3618498))',
          '1 − 0.03709 · (−0.7109 + 0.981)',
        ],
        byLibrary: () =>
          moveNeedle(movementOf(0.3, 0.0125), { deflection: 0, speed: 0 }, [1, 1], 0.3).deflection,
        unit: '%',
      },
    },
    {
      id: 'corner',
      title: 'Corner frequency of input and cable',
      tex: 'f_\\mathrm{c} = \\frac{1}{2\\pi R C}',
      where: [
        ['R', 'source and input resistance in parallel, Ω'],
        ['C', 'capacitance of input and cable, F'],
      ],
      says: 'Above it the input no longer follows.',
      source: 'First-order low-pass; the library’s tests compare a published instrument manual.',
      functions: ['inputCorner', 'probedInput'],
      usedBy: ['concepts/what-an-instrument-shows'],
      worked: {
        given: '500 kΩ, 150 pF',
        steps: ['1 / (2 · π · 500 kΩ · 150 pF)', '1 / 471.2 µs'],
        byLibrary: () => inputCorner(500e3, 150e-12),
        unit: 'Hz',
      },
    },
    {
      id: 'rise-time',
      title: 'Rise time of a bandwidth',
      tex: 't_\\mathrm{r} = \\frac{\\ln 9}{2\\pi B} \\approx \\frac{0.35}{B}',
      where: [['B', 'bandwidth, Hz']],
      says: 'From 10 % to 90 % of a step, for one pole.',
      source: 'Step response of one pole; the rule 0.35/B is from memory.',
      functions: ['riseTime'],
      usedBy: [],
      worked: {
        given: '20 MHz',
        steps: ['ln(9) / (2 · π · 20 MHz)', '2.197 / 125.7 MHz'],
        byLibrary: () => riseTime(20e6),
        unit: 's',
      },
    },
    {
      id: 'settling',
      title: 'Time that a sampling input needs',
      tex: 't = R\\,C\\,\\ln 2^{\\,N+1}',
      where: [
        ['R', 'resistance that fills the sampling capacitor, Ω'],
        ['C', 'the sampling capacitor, F'],
        ['N', 'bits'],
      ],
      says: 'Until the capacitor is within half a step of the final value.',
      source: 'Charging of a capacitor; half a step as usual in data sheets.',
      functions: ['settlingTime', 'settlingError'],
      usedBy: [],
      worked: {
        given: '10 kΩ, 14 pF, 10 bit',
        steps: ['10 kΩ · 14 pF · ln(2¹¹)', '140 ns · 7.625'],
        byLibrary: () => settlingTime(10e3, 14e-12, 10),
        unit: 's',
      },
    },
    {
      id: 'converter-count',
      title: 'Count of a converter',
      tex: 'n = \\left\\lfloor 2^N r \\right\\rfloor \\quad\\text{or}\\quad n = \\operatorname{round}\\bigl((2^N-1)\\,r\\bigr)',
      where: [
        ['r', 'signal as a fraction of the reference'],
        ['N', 'bits'],
      ],
      says: 'Two conventions: steps between the codes, or full scale at the highest code. Data says which; half a step lies between them.',
      source: 'Both from memory.',
      functions: ['adcCount', 'adcRatio'],
      usedBy: [],
      worked: {
        given: 'half of the reference, 10 bit, counted in steps',
        steps: ['⌊2¹⁰ · 0.5⌋'],
        byLibrary: () => adcCount(0.5, 10, 'steps').count,
      },
    },
  ],
};
