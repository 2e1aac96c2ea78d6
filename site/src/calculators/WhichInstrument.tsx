import { SettingPicture } from '@truesweep/drawings';
import { instrumentSentences, instrumentWords } from '@truesweep/wording';
import { Calculator, type CalculatorProps, type ShownResult } from '../forms/Calculator.js';
import { DataTable } from '../forms/DataTable.js';
import { adviceAndDisplays, askAdvice } from './displays.js';
import { InstrumentDisplays } from './InstrumentDisplays.js';
import { type SoughtValues, whichInstrumentForm } from './whichInstrument.js';

/** The calculator: a worn spot and a hook-up in; which instrument shows it, and how to set one, out. */
export function WhichInstrument(props: CalculatorProps) {
  return (
    <Calculator
      form={whichInstrumentForm}
      show={show}
      workings={workings}
      ask={ask}
      isPlayed
      {...props}
    />
  );
}

const workings = () => import('../workings/whichInstrument.js');

const show = (values: SoughtValues) => shownOf(adviceAndDisplays(values));
const ask = async (values: SoughtValues) => shownOf(await askAdvice(values));

function shownOf({ advice, displays }: ReturnType<typeof adviceAndDisplays>): ShownResult {
  const { sought, shownBy, rows, assumed, digits, setting, meterOnly } =
    instrumentSentences(advice);
  const [head = [], ...instruments] = rows;
  return {
    sentences: [shownBy, sought],
    picture: <SettingPicture id="setting-picture" setting={advice.setting} />,
    below: (
      <>
        <DataTable
          id="instruments"
          caption={instrumentWords.comparison}
          head={head}
          rows={instruments}
        />
        <p>{assumed}</p>
        <InstrumentDisplays displays={displays} />
        <SettingPicture id="setting" setting={advice.setting} />
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
