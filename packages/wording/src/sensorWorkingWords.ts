import { say } from './say.js';

/** What the working of a thermistor on its pull-up says. */
export const thermistorWorkingWords = {
  title: (temperature: string): string => say`The voltage across the thermistor at ${temperature}`,
  titleOhms: (temperature: string): string =>
    say`The resistance of the thermistor at ${temperature}`,
  given: {
    t: 'temperature of the sensor',
    T_0: 'absolute temperature of 0 °C',
    B: 'constant of the material, for the two temperatures of its data sheet',
    R_1: 'resistance at the first temperature',
    t_1: 'first temperature',
    R_2: 'resistance at the next row of the table',
    t_2: 'temperature of that row',
    a: 'first coefficient of Steinhart and Hart',
    b: 'second coefficient',
    c: 'third coefficient',
    l: 'logarithm of the resistance in ohms that meets the law, found by the cubic’s solution',
    Ω: 'unit of the resistance in that law',
    U_s: 'voltage that the pull-up is fed with',
    R_pu: 'pull-up',
    R_m: 'input resistance of the meter',
  },
  kelvin: 'Absolute temperature',
  kelvinOf: (which: string): string => say`${which} absolute temperature`,
  first: 'First',
  second: 'Second',
  between: 'Slope of the logarithm over 1/T between the two rows',
  law: 'Resistance of the thermistor',
  met: 'Whether it meets the law: 1/T by the temperature and by the coefficients',
  inverse: 'One over the temperature',
  byLaw: 'The same by the coefficients',
  meets: 'It does.',
  meetsNot: 'It doesn’t: something is wrong with the numbers.',
  beside: 'Thermistor and meter side by side',
  volts: 'Voltage across the thermistor',
} as const;

/** What the working of a pressure sensor's output says. */
export const pressureWorkingWords = {
  title: 'What the open port must read',
  given: {
    H: 'height above the sea',
    p_0: 'pressure of the standard atmosphere at sea level',
    T_0: 'its temperature there',
    λ: 'by how much that falls with height',
    g: 'gravity of the standard atmosphere',
    R_a: 'gas constant of air',
    U_s: 'supply of the sensor, as measured',
    K_1: 'output for each pascal, as a part of the supply',
    K_2: 'output at 0 Pa, as a part of the supply',
    p_1: 'pressure of the table’s row below',
    p_2: 'pressure of the table’s row above',
    r_1: 'output at that pressure, as a part of the supply',
    r_2: 'output at that pressure, as a part of the supply',
    p: 'pressure of the air by the barometer on the bench',
    QNH: 'altimeter setting that is reported near by',
  },
  gauge: 'pressure at the port, which counts from the air around',
  exponent: 'Exponent of the pressure’s fall',
  fallen: 'Temperature at that height as a part of that at sea level',
  pressure: 'Pressure of the air on an average day',
  station: 'Pressure of the air at the bench today',
  ratio: 'Output as a part of the supply',
  output: 'Output',
  weather:
    'The weather moves the air’s pressure by up to 3 kPa either way (common practice, no source).',
} as const;

/** What the working of a coil's current says. */
export const coilWorkingWords = {
  title: 'What flows in the coil',
  given: {
    R_1: 'resistance of the winding at the first temperature',
    t_1: 'first temperature',
    t: 'temperature of the winding',
    k: 'temperature below 0 °C, without sign, at which its straight line would reach 0 Ω',
    U: 'voltage that it is fed with',
  },
  resistance: 'Resistance of the winding',
  current: 'Current once it has risen',
  heat: 'Heat in the winding',
} as const;

/** What the working of a law through measured points says. */
export const fitWorkingWords = {
  title: 'The law through the points',
  zero: 'absolute temperature of 0 °C',
  temperature: (point: number): string => say`temperature of point ${point}`,
  ohms: (point: number): string => say`resistance of point ${point}`,
  kelvins: (point: number): string => say`Absolute temperature of point ${point}`,
  b: 'B of the two points',
  unit: 'unit of the resistance in the law',
  logarithm: (point: number): string => say`Logarithm of the resistance of point ${point}`,
  inverse: (point: number): string => say`One over the temperature of point ${point}`,
  slope: (point: number): string => say`Slope from point 1 to point ${point}`,
  c: 'Third coefficient: how the slopes differ',
  second: 'Second coefficient',
  first: 'First coefficient',
} as const;
