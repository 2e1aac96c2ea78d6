import {
  boilingTemperature,
  coilCurrent,
  dividerVolts,
  fitThermistor,
  judgeReading,
  pressureRatio,
  resistanceAt,
  resistanceAtTemperature,
  selfHeating,
  standardPressure,
  starvedSupply,
  temperatureAt,
  timeInBath,
} from '@truesweep/core';
import type { FormulaGroup } from './formula.js';

/** Temperature sensors, pressure sensors and windings, and the air at the bench. */
export const otherSensorFormulas: FormulaGroup = {
  path: 'formulas/sensors',
  title: 'The other sensors',
  formulas: [
    {
      id: 'b-law',
      title: 'A thermistor by one B',
      tex: 'R(T) = R_1\\,\\exp\\!\\left(B\\left(\\frac{1}{T}-\\frac{1}{T_1}\\right)\\right)',
      where: [
        ['R_1', 'resistance at the first temperature, Ω'],
        ['T,\\;T_1', 'temperatures, K: 273.15 more than in °C'],
        ['B', 'constant of the part for two temperatures, K'],
      ],
      says: 'Right at the two temperatures that its B belongs to; between and beyond them it bends away from a real part by some kelvins. Rows of a table are joined by it, each two with a B of their own.',
      source: 'Standard law of thermistors’ data sheets (from memory).',
      functions: ['resistanceAt', 'temperatureAt', 'resistanceBand'],
      usedBy: [
        'calculators/temperature-now',
        'calculators/ice-and-boiling',
        'calculators/cold-soak',
        'lessons/temperature',
      ],
      worked: {
        given: '10 kΩ at 25 °C, B of 3435 K, at 85 °C',
        steps: [
          '10 kΩ · exp(3435 · (1 / (85 + 273.15) − 1 / (25 + 273.15)))',
          '10 kΩ · exp(−1.9301)',
        ],
        byLibrary: () => resistanceAt({ kind: 'b', b: 3435, ohms: 10_000, from: 25, to: 85 }, 85),
        unit: 'Ω',
      },
    },
    {
      id: 'steinhart-hart',
      title: 'Steinhart and Hart’s law',
      tex: '\\frac{1}{T} = A + B\\,\\ln R + C\\,(\\ln R)^3',
      where: [
        ['T', 'temperature, K'],
        ['R', 'resistance, Ω'],
        ['A,\\;B,\\;C', 'coefficients of the part, from three points or more'],
      ],
      says: 'Three points fix it; of more the sum of squared residuals is made smallest, and what one of them is off the others tells.',
      source: 'Steinhart and Hart’s law as data sheets quote it (from memory).',
      functions: ['temperatureAt', 'fitThermistor'],
      usedBy: ['calculators/fit-a-curve'],
      worked: {
        given: 'A = 0.00113, B = 0.000234, C = 8.78 · 10⁻⁸ and 5 kΩ, in K',
        steps: ['1 / (0.00113 + 0.000234 · ln(5 kΩ) + 0.0000000878 · ln(5 kΩ)³)', '1 / 0.0031773'],
        byLibrary: () =>
          temperatureAt(
            { kind: 'steinhart-hart', a: 1.13e-3, b: 2.34e-4, c: 8.78e-8, lowest: 0, highest: 100 },
            5000,
          ) + 273.15,
        digits: 4,
      },
    },
    {
      id: 'b-of-two-points',
      title: 'B of two measured points',
      tex: 'B = \\frac{\\ln(R_1/R_2)}{1/T_1-1/T_2}',
      where: [
        ['R_1,\\;R_2', 'resistances, Ω'],
        ['T_1,\\;T_2', 'their temperatures, K'],
      ],
      says: 'Two points make one B and leave nothing to check it by.',
      source: 'The law of one B, turned round.',
      functions: ['fitThermistor'],
      usedBy: ['calculators/fit-a-curve'],
      worked: {
        given: '6.02 kΩ at 0 °C, 176 Ω at 99.4 °C, in K',
        steps: ['ln(6.02 kΩ / 176 Ω) / (1 / 273.15 − 1 / (99.4 + 273.15))', '3.5323 / 0.00097677'],
        byLibrary: () => {
          const { law } = fitThermistor([
            { temperature: 0, ohms: 6020 },
            { temperature: 99.4, ohms: 176 },
          ]);
          return law.kind === 'b' ? law.b : Number.NaN;
        },
        digits: 4,
      },
    },
    {
      id: 'pull-up-divider',
      title: 'A thermistor on its pull-up',
      tex: 'V = V_\\mathrm{s}\\,\\frac{R}{R+R_\\mathrm{p}}',
      where: [
        ['V_\\mathrm{s}', 'what feeds the pull-up, V'],
        ['R_\\mathrm{p}', 'pull-up, Ω'],
        ['R', 'sensor, with the meter beside it, Ω'],
      ],
      says: 'A break shows the supply, a short 0 V. Cold is high, hot is low.',
      source: 'Voltage divider, Ohm’s law.',
      functions: ['dividerVolts', 'dividerOhms', 'pullUpFromPairs'],
      usedBy: [
        'calculators/temperature-now',
        'calculators/fit-a-curve',
        'calculators/trouble-code',
        'lessons/temperature',
      ],
      worked: {
        given: '2502 Ω on 1 kΩ from 5 V',
        steps: ['5 V · 2502 Ω / (2502 Ω + 1 kΩ)', '12510 / 3502'],
        byLibrary: () => dividerVolts({ supply: 5, pullUp: 1000 }, 2502),
        unit: 'V',
      },
    },
    {
      id: 'self-heating',
      title: 'A thermistor that its current warms',
      tex: '\\Delta T = \\frac{V^2}{R(T_0+\\Delta T)\\,\\delta}',
      where: [
        ['T_0', 'temperature around it, °C'],
        ['\\delta', 'dissipation constant in this medium, W/K'],
        ['V', 'voltage across it then, V'],
      ],
      says: 'Solved for the temperature that it comes to rest at; warmer, it has less resistance and takes another voltage.',
      source: 'Definition of the dissipation constant in data sheets.',
      functions: ['selfHeating'],
      usedBy: ['calculators/temperature-now'],
      worked: {
        given:
          '2502 Ω at 20 °C, B of 3640 K, on 1 kΩ from 5 V, 4 mW/K: 1.305 K warmer it has 2368.0629 Ω',
        steps: [
          '(5 V · 2368.0629 Ω / (2368.0629 Ω + 1 kΩ))² / (2368.0629 Ω · 0.004)',
          '3.51547² / 9.47225',
        ],
        byLibrary: () =>
          selfHeating(
            { kind: 'b', b: 3640, ohms: 2502, from: 20, to: 100 },
            { supply: 5, pullUp: 1000 },
            20,
            0.004,
          ).rise,
        digits: 4,
      },
    },
    {
      id: 'time-in-bath',
      title: 'How long to wait in a bath',
      tex: 't = \\tau\\,\\ln\\frac{|T_\\mathrm{bath}-T_0|}{\\varepsilon}',
      where: [
        ['\\tau', 'time constant in this medium, s'],
        ['T_0', 'where it comes from'],
        ['\\varepsilon', 'how near is near enough, K'],
      ],
      says: 'It comes nearer exponentially: 63 % of the way in the first time constant.',
      source: 'Definition of the time constant.',
      functions: ['timeInBath'],
      usedBy: ['calculators/temperature-now'],
      worked: {
        given: '20 s, from 5 °C to 21.5 °C, within 0.2 K',
        steps: ['20 s · ln((21.5 − 5) / 0.2)', '20 s · 4.41280'],
        byLibrary: () => timeInBath(20, 16.5, 0.2),
        unit: 's',
      },
    },
    {
      id: 'copper',
      title: 'A winding at its temperature',
      tex: '\\frac{R_2}{R_1} = \\frac{k+t_2}{k+t_1}',
      where: [
        ['t_1,\\;t_2', 'temperatures, °C'],
        ['k', '234.5 °C for copper'],
      ],
      says: 'Copper has 0.39 % more for each kelvin at 20 °C; a warm coil reads high and is right.',
      source: 'IEC 60034 as an ohmmeter’s manual quotes it; 234.5: UL, clause 49.8.',
      functions: ['resistanceAtTemperature', 'temperatureOfWinding'],
      usedBy: ['calculators/coil'],
      worked: {
        given: '935 Ω at 20 °C, at 68 °C',
        steps: ['935 Ω · (234.5 + 68) / (234.5 + 20)', '935 Ω · 1.18861'],
        byLibrary: () => resistanceAtTemperature({ ohms: 935 }, 68),
        unit: 'Ω',
        digits: 4,
      },
    },
    {
      id: 'kick',
      title: 'The kick of a coil that is opened',
      tex: 'U = L\\,\\frac{\\Delta I}{\\Delta t}',
      where: [
        ['L', 'inductance, H'],
        ['\\Delta I', 'current that is cut off, A'],
        ['\\Delta t', 'how quickly, s'],
      ],
      says: 'A caution and no forecast: an arc, the winding’s own capacitance or a diode limit it. Never open a fed coil by hand.',
      source: 'Law of induction.',
      functions: ['coilCurrent'],
      usedBy: ['calculators/coil'],
      worked: {
        given: '6 mH, 3 A in a microsecond',
        steps: ['0.006 · 3 A / 0.000001', '0.018 / 0.000001'],
        byLibrary: () =>
          coilCurrent({ ohms: 4, henries: 0.006, volts: 12, temperature: 20 }).stored?.kick ??
          Number.NaN,
        unit: 'V',
      },
    },
    {
      id: 'starved',
      title: 'What a resistor leaves a contactless sensor',
      tex: 'V = V_\\mathrm{s} - I\\,R',
      where: [
        ['V_\\mathrm{s}', 'what the resistor is fed from, V'],
        ['I', 'current that the sensor takes, A'],
        ['R', 'limiting resistor, Ω'],
      ],
      says: 'Below the supply that it needs it reads like a broken one.',
      source: 'Ohm’s law.',
      functions: ['starvedSupply'],
      usedBy: ['calculators/potentiometer-or-not'],
      worked: {
        given: '10 mA through 47 Ω from 5 V',
        steps: ['5 V − 10 mA · 47 Ω', '5 V − 0.47 V'],
        byLibrary: () => starvedSupply({ supply: 5, limiter: 47, current: 0.01, least: 4.5 }).left,
        unit: 'V',
      },
    },
    {
      id: 'conformance',
      title: 'How probable it is that a reading is right',
      tex: 'p = \\Phi\\!\\left(\\frac{b-x}{u}\\right)-\\Phi\\!\\left(\\frac{a-x}{u}\\right)',
      where: [
        ['x,\\;u', 'reading and its standard uncertainty'],
        ['a,\\;b', 'lowest and highest that is right'],
        ['\\Phi', 'normal distribution'],
      ],
      says: 'A reading inside by three standard uncertainties conforms all but surely, one just outside is marginal: read it again.',
      source: 'JCGM 106:2012, 7.2 (from memory).',
      functions: ['judgeReading'],
      usedBy: ['calculators/two-states', 'calculators/ice-and-boiling'],
      worked: {
        given:
          '1.39 V with 10 mV, at most 1.4 V: one standard uncertainty inside, Φ(1) = 0.841345 (from memory)',
        steps: ['1 − 0.158655', '0.841345'],
        byLibrary: () =>
          judgeReading({
            measured: 1.39,
            low: -100,
            high: 1.4,
            inputs: [{ name: 'meter', sensitivity: 1, uncertainty: 0.01 }],
          }).conformance,
        unit: '%',
      },
    },
    {
      id: 'standard-atmosphere',
      title: 'The pressure of the air at a height',
      tex: 'p = 101325\\,\\left(1-\\frac{0.0065\\,H}{288.15}\\right)^{5.25588}',
      where: [
        ['H', 'height above the sea, m'],
        ['p', 'pressure on an average day, Pa'],
      ],
      says: 'The weather leaves 3 kPa either way unknown (common practice, no source): a barometer at the bench tells it.',
      source: 'ISO 2533:1975, formula 12.',
      functions: ['standardPressure', 'stationPressure'],
      usedBy: ['calculators/ice-and-boiling', 'calculators/pressure-sensor'],
      worked: {
        given: '1000 m, in Pa',
        steps: ['101325 · (1 − 0.0065 · 1000 / 288.15)^5.255876', '101325 · 0.886994'],
        byLibrary: () => standardPressure(1000),
        digits: 5,
      },
    },
    {
      id: 'boiling',
      title: 'Where water boils',
      tex: 'T_\\mathrm{s} = \\frac{n_{10}+D-\\sqrt{(n_{10}+D)^2-4(n_9+n_{10}D)}}{2}',
      where: [
        ['D', 'a fraction of polynomials of p to the power 1/4, p in MPa'],
        ['n_9,\\;n_{10}', '−0.238556 K and 650.175 K'],
      ],
      says: 'Of pure water: salt and glycol raise it. 1 kPa less is some 0.28 K less near the sea.',
      source: 'IAPWS-IF97 (R7-97), equation 31.',
      functions: ['boilingTemperature'],
      usedBy: ['calculators/ice-and-boiling'],
      worked: {
        given: 'air of 101325 Pa, by which D = 373.12516 K: in K',
        steps: [
          '(650.17535 + 373.12516 − √((650.17535 + 373.12516)² − 4 · (−0.238556 + 650.17535 · 373.12516))) / 2',
          '(1023.30051 − 277.0548) / 2',
        ],
        byLibrary: () => boilingTemperature(101_325) + 273.15,
        digits: 5,
      },
    },
    {
      id: 'ratiometric',
      title: 'A pressure sensor’s output',
      tex: 'V = V_\\mathrm{s}\\,\\bigl(K_1\\,(p \\pm e) + K_2\\bigr)',
      where: [
        ['V_\\mathrm{s}', 'supply, measured at the sensor, V'],
        ['K_1,\\;K_2', 'slope, per kPa, and offset of the part'],
        ['p', 'pressure at the port, by the sensor’s reference, kPa'],
        ['e', 'error of a sound one, kPa'],
      ],
      says: 'The output is a part of the supply: who doesn’t measure the supply judges that. Points of a table are joined by straight lines.',
      source: 'Published data sheets of such parts.',
      functions: ['pressureRatio', 'pressureFromRatio'],
      usedBy: ['calculators/pressure-sensor'],
      worked: {
        given: '5.02 V, K₁ = 0.0088, K₂ = −0.085, at 100.9 kPa',
        steps: ['5.02 V · (0.0088 · 100.9 − 0.085)', '5.02 V · 0.80292'],
        byLibrary: () =>
          5.02 *
          pressureRatio(
            {
              reference: 'absolute',
              response: {
                kind: 'line',
                gain: 8.8e-6,
                offset: -0.085,
                lowest: 15_000,
                highest: 115_000,
              },
            },
            100_900,
          ).nominal,
        unit: 'V',
      },
    },
  ],
};
