import type { ExpectedWindows } from '@truesweep/core';
import { readingsWords } from '@truesweep/wording';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';

/** The windows for the readings at both stops. */
export function WindowsTable({ windows }: { readonly windows: ExpectedWindows }) {
  const { throttle, lowest, nominal, highest } = readingsWords;
  return (
    <DataTable
      id="windows"
      caption={readingsWords.windows}
      head={[throttle, lowest, nominal, highest]}
      rows={(['closed', 'open'] as const).map((stop) => {
        const window = windows[stop];
        return [
          readingsWords[stop],
          ...[window.low, window.nominal, window.high].map((volts) => quantityText(volts, 'V')),
        ];
      })}
    />
  );
}
