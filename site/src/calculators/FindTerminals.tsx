import type { PinFinding } from '@truesweep/core';
import { TerminalsPicture } from '@truesweep/drawings';
import { pinFindingSentences, pinTableWords, pinWords } from '@truesweep/wording';
import { useMemo } from 'preact/hooks';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { quantityText } from '../forms/quantityText.js';
import {
  findTerminals,
  findTerminalsForm,
  hasNoReading,
  ownTerminalsForm,
} from './findTerminals.js';

/** The calculator: an ohmmeter's readings in; wiper, ends, track resistance and stops out. */
export function FindTerminals({ keeping }: CalculatorProps) {
  return <Calculator form={findTerminalsForm} show={show} workings={workings} keeping={keeping} />;
}

/** The same on the guided way, where nothing is said before something was measured. */
export function OwnTerminals(props: CalculatorProps) {
  const stop = props.asks?.some((name) => name.endsWith('open')) ? 'open' : 'closed';
  const show = useMemo(
    () => (values: Readings) => ({
      ...showOwn(values),
      picture: <TerminalsPicture id="terminals-picture" stop={stop} />,
    }),
    [stop],
  );
  return <Calculator form={ownTerminalsForm} show={show} {...props} />;
}

type Readings = Parameters<typeof findTerminals>[0];

function showOwn(values: Readings): ShownResult {
  return hasNoReading(values) ? { sentences: [pinWords.noReadings] } : show(values);
}

const workings = () => import('../workings/findTerminals.js');

function show(values: Readings): ShownResult {
  const found = findTerminals(values);
  const rows = rowsOf(found);
  const { what, lowest, likeliest, highest, caption } = pinTableWords;
  return {
    sentences: pinFindingSentences(found),
    below: rows.length > 0 && (
      <DataTable
        id="track"
        caption={caption}
        head={[what, lowest, likeliest, highest]}
        rows={rows}
      />
    ),
  };
}

function rowsOf(found: PinFinding): readonly (readonly string[])[] {
  if (found.kind !== 'potentiometer' && found.kind !== 'two-tracks') return [];
  const isOne = found.tracks.length === 1;
  return found.tracks.flatMap(({ track, series, closedPosition, openPosition }, i) =>
    (
      [
        ['track', track, 'Ω'],
        ['series', series, 'Ω'],
        ['closed', closedPosition, '%'],
        ['open', openPosition, '%'],
      ] as const
    ).flatMap(([name, estimate, unit]) =>
      estimate === undefined
        ? []
        : [
            [
              isOne ? pinTableWords[name] : `${i + 1}: ${pinTableWords[name]}`,
              ...[estimate.low, estimate.value, estimate.high].map((one) =>
                quantityText(one, unit),
              ),
            ],
          ],
    ),
  );
}
