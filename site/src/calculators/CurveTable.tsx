import type { Curve } from '@truesweep/core';
import { readingsWords } from '@truesweep/wording';
import { quantityText } from './quantityText.js';

/** The curve in numbers, at each tenth of travel. */
export function CurveTable({ curve }: { readonly curve: Curve }) {
  const tenths = Array.from(curve.travel, (travel, i) => ({ travel, volts: curve.volts[i] ?? 0 }));
  const step = (tenths.length - 1) / 10;
  return (
    <table id="curve">
      <caption>{readingsWords.curve}</caption>
      <thead>
        <tr>
          <th scope="col">{readingsWords.travel}</th>
          <th scope="col">{readingsWords.reading}</th>
        </tr>
      </thead>
      <tbody>
        {tenths
          .filter((_, i) => i % step === 0)
          .map(({ travel, volts }) => (
            <tr key={travel}>
              <th scope="row">{quantityText(travel, '%')}</th>
              <td>{quantityText(volts, 'V')}</td>
            </tr>
          ))}
      </tbody>
    </table>
  );
}
