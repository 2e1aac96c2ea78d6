import {
  absoluteThrottlePercent,
  carryToVehicle,
  closedSetting,
  independentLinearity,
  relativeThrottlePercent,
  supplyAndGroundDrop,
} from '@truesweep/core';
import type { FormulaGroup } from './formula.js';

/** From the bench to the vehicle, and the shape of the curve. */
export const vehicleFormulas: FormulaGroup = {
  path: 'formulas/vehicle',
  title: 'Vehicle and shape',
  formulas: [
    {
      id: 'carry',
      title: 'From the bench to the vehicle',
      tex: 'V_\\mathrm{v} = f_\\mathrm{v}\\bigl(f_\\mathrm{b}^{-1}(V_\\mathrm{b})\\bigr)',
      where: [
        ['V_\\mathrm{b},\\;V_\\mathrm{v}', 'readings on bench and vehicle, V'],
        ['f_\\mathrm{b},\\;f_\\mathrm{v}', 'reading over the wiper’s place in both circuits'],
      ],
      says: 'What stays the same is the wiper’s place, not the voltage: a ratio of the two feeds alone forgets the limiting resistor and the loads.',
      source: 'Own derivation from the circuit.',
      functions: ['carryToVehicle', 'carryToBench', 'positionAtOutput'],
      usedBy: ['calculators/bench-to-vehicle'],
      worked: {
        given: 'bench of 6 V, 1 kΩ, 5 kΩ that shows 1 V; vehicle of 5 V, no loads',
        steps: ['5 V · (1 V / (6 V · 5 kΩ / (1 kΩ + 5 kΩ)))', '5 V · 1 V / 5 V'],
        byLibrary: () => {
          const carried = carryToVehicle(
            { volts: 1 },
            { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} },
            { source: { volts: 5 }, limiter: 0, load: {} },
          );
          return carried.kind === 'carried' ? carried.volts : Number.NaN;
        },
        unit: 'V',
      },
    },
    {
      id: 'absolute-throttle',
      title: 'Absolute throttle position of a scan tool',
      tex: 'n = \\operatorname{round}(255\\,r),\\qquad A = \\tfrac{100}{255}\\,n\\ \\%',
      where: [
        ['r', 'signal as a fraction of the reference; 1 − r for a falling output'],
        ['n', 'the byte that is sent'],
        ['A', 'what the scan tool shows'],
      ],
      says: 'Right to one count, 0.4 %. The closed throttle does not show 0 %.',
      source: 'SAE J1979, parameter 0x11 (scaling; the complement is from memory).',
      functions: ['absoluteThrottlePercent', 'throttlePercentRatio'],
      usedBy: ['calculators/bench-to-vehicle'],
      worked: {
        given: '0.8 V of a reference of 5 V',
        steps: ['round(255 · 0.8 V / 5 V) / 255', '41 / 255'],
        byLibrary: () => absoluteThrottlePercent(0.8 / 5).percent / 100,
        unit: '%',
      },
    },
    {
      id: 'relative-throttle',
      title: 'Relative throttle position of a scan tool',
      tex: 'n = \\operatorname{round}\\bigl(255\\,(r-r_\\mathrm{c})\\bigr)',
      where: [['r_\\mathrm{c}', 'the closed signal that the control unit has learned']],
      says: 'The closed throttle shows 0 %, the open one therefore less than 100 %.',
      source: 'SAE J1979, parameter 0x45 (from memory).',
      functions: ['relativeThrottlePercent'],
      usedBy: ['calculators/bench-to-vehicle'],
      worked: {
        given: 'half of the reference, a tenth of it learned as closed',
        steps: ['round(255 · (0.5 − 0.1)) / 255', '102 / 255'],
        byLibrary: () => relativeThrottlePercent(0.5, 0.1).percent / 100,
        unit: '%',
      },
    },
    {
      id: 'drops',
      title: 'What drops in the leads do to the signal',
      tex: 'e_\\mathrm{bottom} = \\frac{V_\\mathrm{g}}{V_\\mathrm{ref}},\\qquad e_\\mathrm{top} = -\\frac{V_\\mathrm{ref}-V_\\mathrm{s}-V_\\mathrm{g}}{V_\\mathrm{ref}}',
      where: [
        ['V_\\mathrm{g}', 'sensor’s ground above the control unit’s, V'],
        ['V_\\mathrm{s}', 'reference at the sensor, its supply to its ground, V'],
        ['V_\\mathrm{ref}', 'reference at the control unit, V'],
      ],
      says: 'The ground drop lifts the bottom of the track, the supply drop lowers its top; between them it is a straight line. The unit does not see what lies between its own ground and the battery.',
      source: 'Kirchhoff’s voltage law.',
      functions: ['supplyAndGroundDrop'],
      usedBy: ['calculators/supply-and-ground-drop'],
      worked: {
        given: '5 V, 4.86 V at the sensor, 95 mV of ground drop: error at the bottom',
        steps: ['95 mV / 5 V'],
        byLibrary: () =>
          supplyAndGroundDrop({ reference: 5, referenceAtSensor: 4.86, sensorGround: 0.095 })
            .bottomError,
        unit: '%',
      },
    },
    {
      id: 'closed-setting',
      title: 'How far to turn for the closed reading',
      tex: '\\varphi = \\varphi_1\\,\\frac{V_\\mathrm{w}-V_0}{V_1-V_0}',
      where: [
        ['\\varphi', 'turn from the first place'],
        ['\\varphi_1', 'turn between the two readings'],
        ['V_0,\\;V_1', 'first and second reading, V'],
        ['V_\\mathrm{w}', 'the wanted reading, V'],
      ],
      says: 'A straight line through two readings; read again and repeat.',
      source: 'Linear interpolation.',
      functions: ['closedSetting'],
      usedBy: ['calculators/set-the-closed-position'],
      worked: {
        given: '620 mV, after 2° 700 mV, wanted 500 mV',
        steps: ['2° · (500 mV − 620 mV) / (700 mV − 620 mV)', '2° · (−120 mV) / 80 mV'],
        byLibrary: () => {
          const turn = closedSetting(0.62, 0.5, { kind: 'second-reading', degrees: 2, volts: 0.7 });
          return turn.kind === 'turn' ? turn.degrees : Number.NaN;
        },
        unit: '°',
      },
    },
    {
      id: 'independent-linearity',
      title: 'Independent linearity',
      tex: 'L = \\min_{a,b}\\ \\max_i \\bigl|\\,r_i - (a + b\\,\\theta_i)\\,\\bigr|',
      where: [
        ['r_i', 'reading as a fraction of the voltage across the end terminals'],
        ['\\theta_i', 'where the shaft stood'],
      ],
      says: 'The line that keeps the largest deviation smallest, not the line of least squares. Without a record of the shaft’s place it cannot be judged.',
      source:
        'Standard term of potentiometer data sheets; the source is named at `independentLinearity` in the library reference.',
      functions: ['independentLinearity', 'shapeOf'],
      usedBy: [],
      worked: {
        given: 'readings of 0, 0.4, 0.2, 0.6 at four even places: between the outermost parallels',
        // The best parallels have the slope 0.1 and pass through the 2nd and 3rd reading: half of 0.3.
        steps: ['((0.4 − 0.1 · 1) − (0.2 − 0.1 · 2)) / 2', '0.3 / 2'],
        byLibrary: () => {
          const found = independentLinearity({
            shaft: Float64Array.of(0, 1, 2, 3),
            ratio: Float64Array.of(0, 0.4, 0.2, 0.6),
          });
          return found.kind === 'judged' ? found.value : Number.NaN;
        },
        unit: '%',
      },
    },
  ],
};
