import {
  type Circuit,
  chooseLimiter,
  derated,
  dirtEffect,
  findPins,
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
  path: 'formulas/circuit',
  title: 'The bench circuit',
  formulas: [
    {
      id: 'contact-resistance',
      title: 'What lies between track and wiper’s terminal',
      tex: 'R_\\mathrm{c} = \\tfrac{1}{2}\\,(R_\\mathrm{aw}+R_\\mathrm{wb}-R_\\mathrm{ab})',
      where: [
        ['R_\\mathrm{ab}', 'ohmmeter’s reading between the ends of the track, Ω'],
        [
          'R_\\mathrm{aw},\\;R_\\mathrm{wb}',
          'its readings from each end to the wiper, the throttle unmoved, Ω',
        ],
      ],
      says: 'The pair whose reading stays while the throttle moves is the track; the third terminal is the wiper. The two readings to it make up the track, and go through the contact twice.',
      source: 'Kirchhoff’s laws; own derivation.',
      functions: ['findPins'],
      usedBy: ['calculators/find-the-terminals'],
      worked: {
        given: '5 kΩ between the ends, 1 kΩ and 4.6 kΩ to the wiper',
        steps: ['(1 kΩ + 4.6 kΩ − 5 kΩ) / 2', '600 Ω / 2'],
        byLibrary: () => {
          const reading = (a: string, b: string, at: 'closed' | 'open', ohms: number) => ({
            between: [a, b] as const,
            at,
            ohms,
          });
          const found = findPins(
            ['A', 'B', 'C'],
            [
              reading('A', 'B', 'closed', 5000),
              reading('A', 'B', 'open', 5000),
              reading('A', 'C', 'closed', 1000),
              reading('A', 'C', 'open', 4600),
              reading('B', 'C', 'closed', 4600),
              reading('B', 'C', 'open', 1000),
            ],
            { fraction: 0.01, ohms: 1 },
          );
          const track = found.kind === 'potentiometer' ? found.tracks[0] : undefined;
          return track?.series?.value ?? Number.NaN;
        },
        unit: 'Ω',
      },
    },
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
      usedBy: ['calculators/expected-readings', 'calculators/bench-to-vehicle'],
      worked: {
        given: 'stops at 10 % and 90 % of the track, throttle a quarter open',
        steps: ['10 % · (1 − 0.25) + 90 % · 0.25', '7.5 % + 22.5 %'],
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
      usedBy: [
        'calculators/expected-readings',
        'calculators/plan-the-hook-up',
        'concepts/loaded-divider',
        'lessons/divider',
      ],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 90 %',
        steps: ['5 V · 0.9 · 5 kΩ / (1 kΩ + 5 kΩ)', '5 V · 4.5 kΩ / 6 kΩ'],
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
      usedBy: [
        'calculators/expected-readings',
        'calculators/plan-the-hook-up',
        'calculators/make-dirt-visible',
        'concepts/loaded-divider',
      ],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 50 %, load of 10 kΩ to common',
        steps: [
          '(5 V / 3.5 kΩ + 0 V / 2.5 kΩ + 0 V / 10 kΩ) / (1 / 3.5 kΩ + 1 / 2.5 kΩ + 1 / 10 kΩ)',
          '1.429 mA / 0.7857 mS',
        ],
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
      usedBy: ['calculators/make-dirt-visible', 'concepts/loaded-divider', 'lessons/loading'],
      worked: {
        given: 'm = 1, at 68.9 % of the track, where it is largest',
        steps: ['1 · 0.689² · (1 − 0.689) / (1 + 1 · 0.689 · (1 − 0.689))', '0.1476 / 1.214'],
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
      usedBy: [
        'calculators/which-instrument',
        'concepts/loaded-divider',
        'lessons/loading',
        'lessons/meters',
      ],
      worked: {
        given: '1 kΩ, 5 kΩ, wiper at 50 %',
        steps: ['0.5 · 5 kΩ · ((1 − 0.5) · 5 kΩ + 1 kΩ) / (5 kΩ + 1 kΩ)', '2.5 kΩ · 3.5 kΩ / 6 kΩ'],
        byLibrary: () => sourceResistance(bench(1000, {}), 0.5),
        unit: 'Ω',
      },
    },
    {
      id: 'loaded-output',
      title: 'Reading with a load, and what the load takes',
      tex: 'V = V_0\\,\\frac{R_\\mathrm{L}}{R_\\mathrm{w}+R_\\mathrm{L}},\\qquad \\Delta V = V_0\\,\\frac{R_\\mathrm{w}}{R_\\mathrm{w}+R_\\mathrm{L}}',
      where: [
        ['V_0', 'reading without the load, V'],
        ['R_\\mathrm{w}', 'resistance that the load sees, Ω'],
        ['R_\\mathrm{L}', 'load from the wiper to common, Ω'],
        ['\\Delta V', 'by how much the load lowers the reading, V'],
      ],
      says: 'The whole hook-up is one source behind one resistance, and the load divides with it. It gives what Millman’s theorem gives.',
      source:
        'Thévenin’s theorem; T. R. Kuphaldt, Lessons in Electric Circuits, volume I (DC), chapter 10.',
      functions: ['operatingPoint', 'sourceResistance'],
      usedBy: ['calculators/expected-readings', 'concepts/loaded-divider', 'lessons/loading'],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 50 %, load of 10 kΩ to common: the reading',
        steps: [
          '(5 V · 0.5 · 5 kΩ / 6 kΩ) · 10 kΩ / (2.5 kΩ · 3.5 kΩ / 6 kΩ + 10 kΩ)',
          '2.083 V · 10 kΩ / (1.458 kΩ + 10 kΩ)',
        ],
        byLibrary: () => outputAt(bench(1000, { pullDown: 10e3 }), 0.5),
        unit: 'V',
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
      usedBy: ['calculators/make-dirt-visible', 'concepts/loaded-divider', 'lessons/dropout'],
      worked: {
        given: '5 V, 1 kΩ, 5 kΩ, wiper at 50 %, load of 10 MΩ, dirt of 10 kΩ',
        steps: [
          '−(5 V · 2.5 kΩ / 6 kΩ) · 10 MΩ / (2.5 kΩ · 3.5 kΩ / 6 kΩ + 10 MΩ) · 10 kΩ / (2.5 kΩ · 3.5 kΩ / 6 kΩ + 10 kΩ + 10 MΩ)',
          '−2.083 V · 10 kΩ / (1.458 kΩ + 10 kΩ + 10 MΩ)',
        ],
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
      usedBy: ['calculators/plan-the-hook-up', 'lessons/limiter'],
      worked: {
        given: '5 V, 5 mA',
        steps: ['5 V / 5 mA'],
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
      usedBy: ['calculators/plan-the-hook-up', 'calculators/make-dirt-visible', 'lessons/limiter'],
      worked: {
        given: 'E96, the value next above 1.01 kΩ (i = 1)',
        steps: ['10 Ω · round(100 · 10^(1 / 96))', '10 Ω · 102'],
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
      usedBy: [],
      worked: {
        given: '1 W up to 40 °C, nothing left at 135 °C, at 70 °C',
        steps: ['1 W · (135 °C − 70 °C) / (135 °C − 40 °C)', '1 W · 65 °C / 95 °C'],
        byLibrary: () => derated({ watts: 1, fullTo: 40, zeroAt: 135 }, 70),
        unit: 'W',
      },
    },
  ],
};
