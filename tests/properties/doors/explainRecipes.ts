import {
  type Circuit,
  defaultCriteria,
  expectation,
  type Finding,
  scoreSweep,
  simulateSweep,
} from '@truesweep/core';
import { explainOperatingPoint, makeExercise } from '@truesweep/explain';
import type { Recipes } from './recipe.js';

const circuit = (): Circuit => ({
  source: { volts: 5, ohms: 1 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9, contact: 20 },
  load: { pullDown: 10e3 },
});
const expected = expectation(circuit());
const { sweep } = simulateSweep({
  circuit: circuit(),
  movements: [1, 0, 1, 0].flatMap((to) => [
    { kind: 'turn' as const, to, seconds: 0.5 },
    { kind: 'hold' as const, seconds: 0.2 },
  ]),
  faults: [{ kind: 'worn-spot', travel: 0.4, width: 0.02, ohms: 1e9 }],
  recorder: { interval: 0.002, noise: 0.002 },
  seed: 1,
});
const judged = scoreSweep(sweep, expected);
const score = () => structuredClone(judged);
const finding = (): Finding => score().findings[0]!;
const logger = {
  kind: 'logger',
  name: 'Logger',
  inputOhms: 1e6,
  range: { low: 0, high: 5 },
  bits: 12,
  interval: 0.01,
  filter: 0.001,
};
const working = () => structuredClone(explainOperatingPoint(circuit(), 0.5));
const line = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15_000, highest: 115_000 };

/** What is looked at of a result that another package made, or of a working, is what is written of it. */
const result = { unknown: 'of a result only what is written is looked at' } as const;

/** Results worked out step by step, and exercises. */
export const explainRecipes: Recipes = {
  explainOperatingPoint: { args: () => [circuit(), 0.5, 'millman'] },
  explainLoadingError: { args: () => [circuit()] },
  explainPosition: { args: () => [circuit(), 1.5] },
  explainDirt: { args: () => [circuit(), 0.5, 10e3] },
  explainTrack: { args: () => [{ ends: 5000, toWiper: 1000, fromWiper: 4600 }] },
  explainWindow: {
    args: () => [circuit(), { source: 0.02, closedPosition: 0.01 }, 'closed'],
    weight: 0.5,
  },
  explainUncertainty: { args: () => [circuit(), { source: 0.02, track: 0.1 }, 0.5] },
  explainMistake: {
    args: () => [
      circuit(),
      {
        kind: 'exchanged-leads',
        connection: { supply: 'wiper', ground: 'bottom', signal: 'top' },
      },
      0.1,
    ],
  },
  explainLimiter: {
    args: () => [circuit(), { wiper: { amps: 0.001, shortTerm: 0.001 } }, { series: 'E24' }],
    weight: 0.02,
  },
  explainCarriedReading: {
    args: () => [
      { volts: 1.5, to: 'vehicle', sense: 'rising' },
      circuit(),
      { source: { volts: 5 }, limiter: 0, load: { pullDown: 100e3 } },
    ],
  },
  explainSupplyDrop: {
    args: () => [{ reference: 5, referenceAtSensor: 4.85, sensorGround: 0.1 }, 0.01],
  },
  explainClosedSetting: {
    args: () => [0.62, 0.5, { kind: 'second-reading', degrees: 2, volts: 0.7 }, 0.005],
  },
  explainDropoutChance: {
    args: () => [logger, { seconds: 0.02, from: 2.5, to: 0, fall: 1e-4, recovery: 1e-4 }, 3],
  },
  explainThermistor: {
    args: () => [
      { supply: 5, pullUp: 1000, meter: 1e7 },
      { kind: 'b', b: 3640, ohms: 2044, from: 20, to: 100 },
      25,
    ],
  },
  explainThermistorFit: {
    args: () => [
      [
        { temperature: -25, ohms: 87_041 },
        { temperature: 0, ohms: 27_326 },
        { temperature: 25, ohms: 10_000 },
      ],
    ],
  },
  explainOpenPort: {
    args: () => [
      { reference: 'absolute', response: line },
      { kind: 'altimeter-setting', setting: 102_000, uncertainty: 50, altitude: 500 },
      5,
    ],
  },
  explainCoil: {
    args: () => [{ ohms: 4, volts: 12, temperature: 20, conductor: { kind: 'copper' } }],
  },
  explainVisible: { args: () => [score().quality, 4, { ...defaultCriteria }], ...result },
  explainFinding: { args: () => [finding(), score().quality], ...result },
  explainPlace: {
    args: () => [score().spots[0], score().findings, { sameTravel: 0.03 }],
    ...result,
  },
  explainCauses: { args: () => [score().explanations], ...result },
  explainLimits: {
    args: () => [
      {
        outcome: 'conforms',
        unit: 'V',
        measured: 0.5,
        lowLimit: 0.4,
        highLimit: 0.6,
        uncertainty: 0.01,
      },
      'Closed reading',
      { kind: 'end', span: 4, part: 0.025 },
    ],
    ...result,
  },
  explainScore: {
    args: () => [score(), structuredClone(expected), { ...defaultCriteria }],
    ...result,
    weight: 0.2,
  },
  workingText: { args: () => [working()] },
  workingHtml: { args: () => [working()] },
  workingLatex: { args: () => [working()] },
  whereWritten: { args: () => [working], open: 'what makes a working throws what it throws' },
  makeExercise: { args: () => ['loading', 'easy', 7], weight: 0.3 },
  checkAnswer: { args: () => [makeExercise('loading', 'easy', 7), '2.5 V'], ...result },
};
