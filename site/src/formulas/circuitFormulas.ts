import {
  type Circuit,
  chooseLimiter,
  derated,
  dirtEffect,
  loadingErrors,
  operatingPoint,
  positionAt,
  preferredValue,
  sourceResistance,
} from '@truesweep/core';
import type { FormulaGroup } from './formula.js';

const bench = (limiter: number, load: Circuit['load']): Circuit => ({
  source: { volts: 5 },
  limiter,
  sensor: { track: 5000 },
  load,
});
const outputAt = (circuit: Circuit, position: number): number =>
  operatingPoint(circuit, position).output as number;

const largestLoading = () => loadingErrors(bench(0, { pullDown: 5000 })).fromUnloaded;

/** The bench circuit and its parts. */
export const circuitFormulas: FormulaGroup = {
  title: 'The bench circuit',
  formulas: [
    {
      id: 'wiper-position',
      title: "The wiper's place on the track",
      tex: 'x = x_\\mathrm{c}\\,(1-s) + x_\\mathrm{o}\\,s',
      where: [
        ['x', "the wiper's place, a fraction of the track from its bottom end"],
        ['s', 'travel of the throttle, 0 closed to 1 open'],
        [
          'x_\\mathrm{c},\\;x_\\mathrm{o}',
          'the places at the closed and at the open stop; the wiper need not reach the ends of the track',
        ],
      ],
      says: 'A straight line, as for a track whose resistance grows evenly with the angle.',
      source: 'Common practice, no source.',
      functions: ['positionAt'],
      worked: {
        given: 'stops at 10 % and 90 % of the track, throttle a quarter open',
        byFormula: () => 0.1 * 0.75 + 0.9 * 0.25,
        byLibrary: () => positionAt({ track: 5000, closedPosition: 0.1, openPosition: 0.9 }, 0.25),
        unit: '%',
      },
    },
    {
      id: 'unloaded-output',
      title: 'Reading without load',
      tex: 'V = E\\,\\frac{x\\,R_\\mathrm{t}}{R_\\mathrm{s}+R_\\mathrm{t}}',
      where: [
        ['V', 'reading at the wiper, V'],
        ['E', 'source voltage, V'],
        ['R_\\mathrm{t}', 'track resistance, Ω'],
        ['R_\\mathrm{s}', 'limiting resistor, Ω'],
      ],
      says: 'The limiting resistor takes its part: the open reading is lower than the one stated for a vehicle, where there is none.',
      source:
        'Voltage divider; T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 6 (chapter from memory).',
      functions: ['operatingPoint', 'expectedCurve'],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 90 %',
        byFormula: () => (5 * 0.9 * 5000) / 6000,
        byLibrary: () => outputAt(bench(1000, {}), 0.9),
        unit: 'V',
      },
    },
    {
      id: 'millman',
      title: 'Reading with any load: Millman’s theorem',
      tex: 'V = \\frac{\\sum_k E_k / R_k}{\\sum_k 1 / R_k}',
      where: [
        ['E_k', 'voltage behind each way that meets at the wiper, V'],
        ['R_k', 'resistance of that way, Ω'],
      ],
      says: 'Up through track and limiting resistor to the source, down through the track to common, through the instrument to common: the mean of what is behind them, weighed with their conductances. Networks with more inner nodes are taken apart node by node the same way (star-mesh transformation).',
      source:
        'L. Rosen, "A new network theorem", Journal of the IEE 62, 1924; Millman’s theorem is its one-node case.',
      functions: ['operatingPoint', 'expectedCurve', 'expectedWindows'],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 50 %, load of 10 kΩ to common',
        byFormula: () => 5 / 3500 / (1 / 3500 + 1 / 2500 + 1 / 10e3),
        byLibrary: () => outputAt(bench(1000, { pullDown: 10e3 }), 0.5),
        unit: 'V',
      },
    },
    {
      id: 'loading-error',
      title: 'What a load bends, without a limiting resistor',
      tex: '\\frac{\\Delta V}{E} = \\frac{m\\,x^2(1-x)}{1+m\\,x(1-x)},\\qquad m=\\frac{R_\\mathrm{t}}{R_\\mathrm{L}}',
      where: [
        ['\\Delta V', 'by how much the reading is lower than without the load, V'],
        ['R_\\mathrm{L}', 'load from the wiper to common, Ω'],
      ],
      says: 'For a light load it is largest at two thirds of the travel, about 15 % of m. With a limiting resistor the ends move too: then the whole circuit is computed.',
      source: 'I. E. Irodov, Problems in General Physics, problem 3.180.',
      functions: ['loadingErrors'],
      worked: {
        given: 'm = 1, at 68.9 % of the track, where it is largest',
        byFormula: () => {
          const x = largestLoading().position;
          return (x ** 2 * (1 - x)) / (1 + x * (1 - x));
        },
        byLibrary: () => largestLoading().volts / 5,
        unit: '%',
      },
    },
    {
      id: 'source-resistance',
      title: 'Resistance that the instrument sees',
      tex: 'R_\\mathrm{w} = \\frac{x R_\\mathrm{t}\\,\\bigl((1-x)R_\\mathrm{t}+R_\\mathrm{s}\\bigr)}{R_\\mathrm{t}+R_\\mathrm{s}}',
      where: [['R_\\mathrm{w}', 'resistance between wiper and common with the source shorted, Ω']],
      says: 'With the input and its cable it makes a low-pass filter, and with the input resistance the loading error. It is largest where the ways up and down are equal.',
      source:
        'Thévenin’s theorem; T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 10.',
      functions: ['sourceResistance'],
      worked: {
        given: '1 kΩ, 5 kΩ, wiper at 50 %',
        byFormula: () => (2500 * 3500) / 6000,
        byLibrary: () => sourceResistance(bench(1000, {}), 0.5),
        unit: 'Ω',
      },
    },
    {
      id: 'dirt',
      title: 'What dirt under the wiper moves',
      tex: '\\Delta V = -V\\,\\frac{R_\\mathrm{d}}{R_\\mathrm{w}+R_\\mathrm{d}+R_\\mathrm{L}}',
      where: [
        ['R_\\mathrm{d}', 'resistance of the dirt, Ω'],
        ['V', 'the clean reading with its load, V'],
        ['R_\\mathrm{L}', 'load to common, Ω'],
      ],
      says: 'With an input of 10 MΩ dirt of 10 kΩ moves the reading by a thousandth only: a heavier load makes it show. A wiper that lifts lets the reading go where the load pulls it.',
      source: 'Voltage divider of dirt and load; no further source.',
      functions: ['dirtEffect', 'chooseBenchLoad'],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 50 %, load of 10 MΩ, dirt of 10 kΩ',
        byFormula: () => {
          const behind = (2500 * 3500) / 6000;
          const clean = ((5 * 2500) / 6000) * (10e6 / (behind + 10e6));
          return (-clean * 10e3) / (behind + 10e3 + 10e6);
        },
        byLibrary: () => {
          const { dirty } = dirtEffect(bench(1000, { pullDown: 10e6 }), 0.5, 10e3);
          return dirty.kind === 'change' ? dirty.volts : Number.NaN;
        },
        unit: 'V',
      },
    },
    {
      id: 'smallest-limiter',
      title: 'Smallest limiting resistor for the wiper',
      tex: 'R_\\mathrm{s} \\ge \\frac{E}{I_\\mathrm{w}}',
      where: [['I_\\mathrm{w}', 'largest current that the wiper may bear, A']],
      says: 'The worst mistake feeds the wiper’s terminal while the wiper stands at the grounded end: then nothing but the limiting resistor limits. The library goes through all mistakes, places and ratings.',
      source: 'Ohm’s law; the list of mistakes is common practice, no source.',
      functions: ['chooseLimiter', 'wrongConnections'],
      worked: {
        given: '5 V, 5 mA',
        byFormula: () => 5 / 0.005,
        byLibrary: () => {
          const rated = { amps: 0.005, shortTerm: 0.005 };
          const choice = chooseLimiter(bench(0, {}), { wiper: rated });
          return choice.kind === 'impossible' ? Number.NaN : choice.smallest;
        },
        unit: 'Ω',
      },
    },
    {
      id: 'preferred-values',
      title: 'Preferred values',
      tex: 'R = \\operatorname{round}_3\\bigl(100\\cdot 10^{\\,i/N}\\bigr),\\qquad i = 0\\ldots N-1',
      where: [['N', 'number of values in a decade: 48, 96 or 192']],
      says: 'Three figures; the standard’s one exception is 920, which the formula makes 919. E3 to E24 are a table of their own.',
      source: 'IEC 60063.',
      functions: ['preferredValues', 'preferredValue'],
      worked: {
        given: 'E96, the value next above 1.01 kΩ (i = 1)',
        byFormula: () => 10 * Math.round(100 * 10 ** (1 / 96)),
        byLibrary: () => preferredValue(1010, 'E96', 'up'),
        unit: 'Ω',
      },
    },
    {
      id: 'derating',
      title: 'Power in a warm place',
      tex: 'P = P_0\\,\\frac{T_\\mathrm{z}-T}{T_\\mathrm{z}-T_\\mathrm{f}}',
      where: [
        ['P_0', 'rated power, W, up to the temperature T_f'],
        ['T', 'surroundings, °C, between T_f and T_z'],
        ['T_\\mathrm{z}', 'temperature at which nothing is left, °C'],
      ],
      says: 'A straight line between the two temperatures of the data sheet; full power below, none above.',
      source:
        'Straight-line derating as data sheets state it; the library’s tests compare published ones.',
      functions: ['derated'],
      worked: {
        given: '1 W up to 40 °C, nothing left at 135 °C, at 70 °C',
        byFormula: () => (135 - 70) / (135 - 40),
        byLibrary: () => derated({ watts: 1, fullTo: 40, zeroAt: 135 }, 70),
        unit: 'W',
      },
    },
  ],
};
