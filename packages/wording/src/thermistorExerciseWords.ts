import { say } from './say.js';
import { whole } from './whole.js';

/** What feeds the sensor, as it stands in a question. */
interface GivenDivider {
  readonly supply: string;
  readonly pullUp: string;
}

const divider = (fed: GivenDivider): string =>
  whole(
    fed,
    'fed',
    () =>
      say`The coolant sensor of an outboard, a thermistor, lies from its input to ground; a pull-up of ${fed.pullUp} feeds it from ${fed.supply}.`,
  );

/** Exercises on a thermistor on its pull-up. */
export const thermistorExerciseWords = {
  ofOhms: (fed: GivenDivider, ohms: string): string =>
    say`${divider(fed)} In a bath it has ${ohms}.`,
  ofVolts: (fed: GivenDivider, volts: string): string =>
    say`${divider(fed)} Across the sensor ${volts} are measured.`,
  ofLaw: (
    fed: GivenDivider,
    volts: string,
    law: Readonly<Record<'ohms' | 'from' | 'b', string>>,
  ): string =>
    whole(
      law,
      'law',
      () =>
        say`${divider(fed)} Across the sensor ${volts} are measured. Its data sheet gives ${law.ohms} at ${law.from} and B = ${law.b}.`,
    ),
  asksVolts: 'What is the voltage across the sensor?',
  asksOhms: 'What is the resistance of the sensor?',
  asksTemperature: 'How warm is the sensor, in °C?',
  hintVolts: 'Sensor and pull-up share the supply; the sensor has the lower part of it.',
  hintOhms:
    'The same current runs through both: the pull-up has what the sensor leaves of the supply.',
  hintTemperature:
    'Find the resistance first. In the law of one B every temperature is in kelvins.',
  titleVolts: 'The voltage across the sensor',
  titleOhms: 'The resistance of the sensor',
  titleTemperature: 'The temperature of the sensor',
  finds: {
    E: 'Voltage that feeds the pull-up',
    R_pu: 'Pull-up',
    R: 'Resistance of the sensor',
    V: 'Voltage across the sensor',
    R_1: 'Resistance at the data sheet’s temperature',
    T_1: 'The data sheet’s temperature',
    B: 'B of the sensor',
    T_0: '0 °C, in kelvins',
    T: 'Temperature of the sensor, in kelvins',
    ϑ: 'Temperature of the sensor',
  },
  rules: {
    bLaw: { name: 'Law of one B: R = R₁·exp(B(1/T − 1/T₁))', source: 'IEC 60539-1 (from memory)' },
    celsius: { name: 'Celsius temperatures count from 273.15 K', source: 'ISO 80000-5' },
  },
  mistakes: {
    acrossPullUp:
      'That is the voltage across the pull-up. The sensor lies between input and ground.',
    ratioForPart:
      'You divided one resistance by the other. The sensor’s share is its resistance over both together.',
    supply: 'That is what feeds the pull-up; the sensor and the pull-up share it.',
    turnedOver:
      'You turned the ratio over: that would be right if the voltage had been measured across the pull-up.',
    ofSupply:
      'You compared with the whole supply. The pull-up has only what the sensor leaves of it.',
    pullUp: 'You took the pull-up for the sensor. They are equal only at half the supply.',
    leftInKelvins: 'That is in kelvins. Take 273.15 K off for °C.',
    celsiusInLaw: 'You put °C into the law. Its temperatures are in kelvins: add 273.15 K first.',
    ratioTurnedOver:
      'You turned the ratio of the resistances over. A thermistor with less resistance is warmer.',
    log10: 'You took the logarithm to base ten. The law has the natural one.',
  },
} as const;
