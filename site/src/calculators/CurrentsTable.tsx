import type { OperatingPoint, PartName } from '@truesweep/core';
import { partLabels, readingsWords } from '@truesweep/wording';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';

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
    const [atClosed, atOpen] = [closed.parts[part], open.parts[part]];
    if (!atClosed || !atOpen) return [];
    const label = part === 'pullDown' ? readingsWords.instrument : partLabels[part];
    return [[label, quantityText(atClosed.amps, 'A'), quantityText(atOpen.amps, 'A')]];
  });
  return (
    <DataTable
      id="currents"
      caption={readingsWords.currents}
      head={[readingsWords.part, readingsWords.closed, readingsWords.open]}
      rows={rows}
    />
  );
}
