import type { ExpectedWindows } from '@truesweep/core';
import { readingsWords } from '@truesweep/wording';
import { quantityText } from './quantityText.js';

/** The windows for the readings at both stops. */
export function WindowsTable({ windows }: { readonly windows: ExpectedWindows }) {
  return (
    <table id="windows">
      <caption>{readingsWords.windows}</caption>
      <thead>
        <tr>
          <th scope="col">{readingsWords.throttle}</th>
          <th scope="col">{readingsWords.lowest}</th>
          <th scope="col">{readingsWords.nominal}</th>
          <th scope="col">{readingsWords.highest}</th>
        </tr>
      </thead>
      <tbody>
        {(['closed', 'open'] as const).map((stop) => (
          <tr key={stop}>
            <th scope="row">{readingsWords[stop]}</th>
            <td>{quantityText(windows[stop].low, 'V')}</td>
            <td>{quantityText(windows[stop].nominal, 'V')}</td>
            <td>{quantityText(windows[stop].high, 'V')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
