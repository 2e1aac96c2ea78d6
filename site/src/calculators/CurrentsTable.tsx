import type { OperatingPoint, PartName } from '@truesweep/core';
import { partLabels, readingsWords } from '@truesweep/wording';
import { quantityText } from './quantityText.js';

const parts: readonly PartName[] = [
  'source',
  'limiter',
  'supplyLead',
  'trackAbove',
  'trackBelow',
  'groundLead',
  'contact',
  'pullDown',
  'pullUp',
];

/** The current in each part at both stops. */
export function CurrentsTable(props: {
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}) {
  const { closed, open } = props;
  const rows = parts.flatMap((part) => {
    const at = [closed.parts[part], open.parts[part]];
    return at.every((state) => state !== undefined) ? [{ part, at }] : [];
  });
  return (
    <table id="currents">
      <caption>{readingsWords.currents}</caption>
      <thead>
        <tr>
          <th scope="col">{readingsWords.part}</th>
          <th scope="col">{readingsWords.closed}</th>
          <th scope="col">{readingsWords.open}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ part, at }) => (
          <tr key={part}>
            <th scope="row">{part === 'pullDown' ? readingsWords.instrument : partLabels[part]}</th>
            {at.map(({ amps }, i) => (
              <td key={i === 0 ? 'closed' : 'open'}>{quantityText(amps, 'A')}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
