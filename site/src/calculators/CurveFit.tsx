import { ThermistorDrawing } from '@truesweep/drawings';
import { curveWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { measureText } from '../forms/measureText.js';
import { quantityText } from '../forms/quantityText.js';
import { curveFit, curveFitForm, type CurveFit as Fitted } from './curveFit.js';

/** The calculator: measured points in; the law through them with its residuals out. */
export function CurveFit({ keeping }: CalculatorProps) {
  return <Calculator form={curveFitForm} show={show} workings={workings} keeping={keeping} />;
}

const words = curveWords;

const workings = () => import('../workings/curveFit.js');

function show(values: Parameters<typeof curveFit>[0]): ShownResult {
  const fitted = curveFit(values);
  const { fit, points, drawn } = fitted;
  return {
    sentences: sentencesOf(fitted),
    drawing: (
      <ThermistorDrawing
        id="thermistor"
        // No band is known: the curve alone.
        points={drawn.map(({ temperature, ohms }) => ({
          temperature,
          low: ohms,
          nominal: ohms,
          high: ohms,
        }))}
        readings={points.map(({ temperature, ohms }, i) => ({
          temperature,
          ohms,
          outcome: fit.outlier?.point === i ? ('marginal' as const) : ('not-judged' as const),
        }))}
      />
    ),
    below: (
      <>
        <DataTable
          id="law"
          caption={words.coefficients}
          head={[words.coefficient, words.value]}
          rows={coefficientRows(fitted)}
        />
        <DataTable
          id="residuals"
          caption={words.residuals}
          head={[words.point, words.temperature, words.ohms, words.ofCurve, words.off]}
          rows={points.map(({ point, temperature, ohms }, i) => {
            const off = fit.residuals[i] ?? 0;
            return [
              `${point}`,
              measureText(temperature, '°C'),
              quantityText(ohms, 'Ω'),
              measureText(temperature + off, '°C'),
              measureText(off, 'K'),
            ];
          })}
        />
      </>
    ),
  };
}

/** A sum of squares that scatters about its degrees of freedom is hardly ever so much more, in its standard deviations of √(2·freedom). */
const farOff = 3;

function sentencesOf({
  fit,
  points,
  lowest,
  highest,
  foundPullUp,
  chosenPullUp,
}: Fitted): readonly string[] {
  const { law, residuals, degreesOfFreedom, chiSquare, outlier } = fit;
  const [from, to] = [measureText(lowest, '°C'), measureText(highest, '°C')];
  const worst = Math.max(...residuals.map(Math.abs));
  return [
    law.kind === 'b'
      ? words.oneB(kelvins(law.b), from, to)
      : degreesOfFreedom === 0
        ? words.threePoints
        : words.fitted(points.length, measureText(worst, 'K')),
    ...(outlier
      ? [words.outlier(points[outlier.point]?.point ?? 0, chanceText(outlier.chance))]
      : []),
    ...(chiSquare !== undefined && degreesOfFreedom > 0
      ? [
          words.chiSquare(chiSquare.toPrecision(2), degreesOfFreedom),
          ...(chiSquare > degreesOfFreedom + farOff * Math.sqrt(2 * degreesOfFreedom)
            ? [words.tooFar]
            : []),
        ]
      : []),
    words.range(from, to),
    ...(foundPullUp
      ? [
          words.foundPullUp(
            quantityText(foundPullUp.ohms, 'Ω'),
            quantityText(foundPullUp.low, 'Ω'),
            quantityText(foundPullUp.high, 'Ω'),
          ),
        ]
      : []),
    ...(chosenPullUp
      ? [
          words.chosenPullUp(
            quantityText(chosenPullUp.ohms, 'Ω'),
            quantityText(chosenPullUp.slope, 'V'),
          ),
        ]
      : []),
  ];
}

/** Digits that a law's coefficients are written with, so that a hundredth of a kelvin comes back. */
const digits = 7;

function coefficientRows({ fit: { law } }: Fitted): readonly (readonly string[])[] {
  if (law.kind === 'b')
    return [
      [words.oneBRow, kelvins(law.b)],
      [words.atFirst, quantityText(law.ohms, 'Ω')],
    ];
  if (law.kind === 'table') return [];
  return (['a', 'b', 'c'] as const).map((name) => [
    words[name],
    law[name].toExponential(digits - 1),
  ]);
}

const kelvins = (value: number) => `${value.toFixed(0)}\u00a0K`;

function chanceText(chance: number): string {
  return chance < 1e-4 ? 'fewer than 0.01\u00a0%' : `${(100 * chance).toPrecision(2)}\u00a0%`;
}
