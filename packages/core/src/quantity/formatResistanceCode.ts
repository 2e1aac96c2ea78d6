import { InputError } from '../errors.js';
import { shown } from '../guard.js';
import type { Ohms } from '../units.js';

const letters = ['R', 'K', 'M', 'G', 'T'];
const mostFigures = 4;

/**
 * Writes a resistance as a letter code in the manner of IEC 60062: the letter R, K, M, G or T stands
 * in the place of the decimal sign. At least two figures are written (`1K0`); zero is `0R`.
 *
 * A code is exact or it is refused: from 1 Ω up to four significant figures, below 1 Ω up to four
 * places after the R. Round first where rounding is meant.
 *
 * @param ohms Resistance in Ω, from 0 to below 10¹⁵.
 * @throws InputError `not-finite`, `negative`, `out-of-range`, or `not-exact` with the nearest code.
 *
 * @example
 * formatResistanceCode(0.47) // => 'R47'
 * formatResistanceCode(4700) // => '4K7'
 * formatResistanceCode(470) // => '470R'
 */
export function formatResistanceCode(ohms: Ohms): string {
  check(ohms);
  if (ohms === 0) return '0R';
  const [mantissa = '', exponent] = ohms.toExponential().split('e');
  const figures = mantissa.replace('.', '');
  const code =
    ohms < 1 ? codeBelowOne(figures, Number(exponent)) : codeFromOne(figures, Number(exponent));
  return code ?? refuse(ohms);
}

function codeBelowOne(figures: string, power: number): string | undefined {
  const places = -power - 1 + figures.length;
  if (places > mostFigures) return undefined;
  return `R${figures.padStart(places, '0').padEnd(2, '0')}`;
}

function codeFromOne(figures: string, power: number): string | undefined {
  if (figures.length > mostFigures) return undefined;
  const whole = (power % 3) + 1;
  const padded = figures.padEnd(Math.max(whole, 2), '0');
  return `${padded.slice(0, whole)}${letters[Math.floor(power / 3)]}${padded.slice(whole)}`;
}

function check(ohms: number): void {
  if (Number.isFinite(ohms) && ohms >= 0 && ohms < 1e15) return;
  const code = !Number.isFinite(ohms) ? 'not-finite' : ohms < 0 ? 'negative' : 'out-of-range';
  throw new InputError(
    code,
    'ohms',
    `A resistance of ${shown(ohms)} Ω has no letter code; it must be from 0 Ω to below 1e15 Ω.`,
  );
}

function refuse(ohms: number): never {
  const nearest = Number(ohms < 1 ? ohms.toFixed(mostFigures) : ohms.toPrecision(mostFigures));
  const code = nearest < 1e15 ? formatResistanceCode(nearest) : '999T9';
  throw new InputError(
    'not-exact',
    'ohms',
    `${ohms} Ω cannot be written exactly as a letter code of ${mostFigures} figures; the nearest is ${code}.`,
  );
}
