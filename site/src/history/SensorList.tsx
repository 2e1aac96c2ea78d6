import {
  historyPageWords,
  historyQuantityNames,
  historyWords,
  verdictLabels,
} from '@truesweep/wording';
import { VerdictSign } from '../checkSweep/VerdictSign.js';
import type { ListedSensor } from './listedSensors.js';

/** The sensors, a row each; where one can be chosen its name is a button. */
export function SensorList(props: {
  readonly sensors: readonly ListedSensor[];
  readonly chosen?: string | undefined;
  readonly onChoose?: (sensor: string) => void;
}) {
  const { sensors, chosen, onChoose } = props;
  return (
    <table class="lists history-list">
      <caption>{historyPageWords.sensors}</caption>
      <thead>
        <tr>
          {(['sensor', 'records', 'from', 'to', 'verdict', 'changes'] as const).map((name) => (
            <th key={name} scope="col">
              {historyWords[name]}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {sensors.map(({ sensor, records, from, to, verdict, changed }) => (
          <tr key={sensor} class={sensor === chosen ? 'chosen' : undefined}>
            <th scope="row">
              {onChoose ? (
                <button
                  type="button"
                  class="quiet"
                  aria-pressed={sensor === chosen}
                  onClick={() => onChoose(sensor)}
                >
                  {sensor}
                </button>
              ) : (
                sensor
              )}
            </th>
            <td data-label={historyWords.records}>{records}</td>
            <td data-label={historyWords.from}>{from ?? historyWords.noDate}</td>
            <td data-label={historyWords.to}>{to ?? historyWords.noDate}</td>
            <td data-label={historyWords.verdict} class={`verdict-line ${verdict}`}>
              <span>
                <VerdictSign verdict={verdict} /> {verdictLabels[verdict]}
              </span>
            </td>
            <td
              data-label={historyWords.changes}
              class={changed.length > 0 ? 'changed' : undefined}
            >
              {changed.map((one) => historyQuantityNames[one]).join(', ') || historyWords.none}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
