import { instrumentSentences, instrumentWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { displaysOf } from './displays.js';
import { InstrumentDisplays } from './InstrumentDisplays.js';
import { type SoughtValues, whichInstrument, whichInstrumentForm } from './whichInstrument.js';

/** The calculator: a worn spot and a hook-up in; which instrument shows it, and how to set one, out. */
export function WhichInstrument({ keeping }: CalculatorProps) {
  return <Calculator form={whichInstrumentForm} show={show} keeping={keeping} />;
}

function show(values: SoughtValues): ShownResult {
  const { sought, shownBy, rows, assumed, digits, setting, meterOnly } = instrumentSentences(
    whichInstrument(values),
  );
  const [head = [], ...instruments] = rows;
  return {
    sentences: [shownBy, sought],
    below: (
      <>
        <DataTable
          id="instruments"
          caption={instrumentWords.comparison}
          head={head}
          rows={instruments}
        />
        <p>{assumed}</p>
        <InstrumentDisplays displays={displaysOf(values)} />
        <dl>
          <dt>{instrumentWords.digits}</dt>
          <dd class="digits">{digits}</dd>
          <dt>{instrumentWords.setting}</dt>
          <dd>{setting}</dd>
          <dt>{instrumentWords.meterOnly}</dt>
          {meterOnly.map((sentence) => (
            <dd key={sentence}>{sentence}</dd>
          ))}
        </dl>
      </>
    ),
  };
}
