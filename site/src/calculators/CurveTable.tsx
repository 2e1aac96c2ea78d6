import type { Curve } from '@truesweep/core';
import { readingsWords } from '@truesweep/wording';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';

/** The curve in numbers, at each tenth of travel. */
export function CurveTable({ curve }: { readonly curve: Curve }) {
  const points = Array.from(curve.travel, (travel, i) => ({ travel, volts: curve.volts[i] ?? 0 }));
  const step = (points.length - 1) / 10;
  return (
    <DataTable
      id="curve"
      caption={readingsWords.curve}
      head={[readingsWords.travel, readingsWords.reading]}
      rows={points
        .filter((_, i) => i % step === 0)
        .map(({ travel, volts }) => [quantityText(travel, '%'), quantityText(volts, 'V')])}
    />
  );
}
