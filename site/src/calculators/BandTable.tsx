import type { OutputUncertainty, ToleranceName } from '@truesweep/core';
import { bandPartLabels, readingsWords } from '@truesweep/wording';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';

/** What each part's tolerance adds to the doubt about the reading at both stops, the largest at the open stop first. */
export function BandTable(props: {
  readonly closed: OutputUncertainty;
  readonly open: OutputUncertainty;
}) {
  const { closed, open } = props;
  const added = ({ contributions }: OutputUncertainty, part: ToleranceName): string =>
    quantityText(contributions.find(({ name }) => name === part)?.uncertainty ?? 0, 'V');
  const parts = [
    ...new Set([...open.contributions, ...closed.contributions].map(({ name }) => name)),
  ];
  const { part, closed: atClosed, open: atOpen, band, together } = readingsWords;
  return (
    <DataTable
      id="band"
      caption={band}
      head={[part, atClosed, atOpen]}
      rows={[
        ...parts.map((name) => [bandPartLabels[name], added(closed, name), added(open, name)]),
        [together, quantityText(closed.uncertainty, 'V'), quantityText(open.uncertainty, 'V')],
      ]}
    />
  );
}
