// Adds so many records, each in a transaction of its own: node writeRecords.mjs <file> <sensor> <count>; prints a line for each that is kept.
import { openHistory } from '@truesweep/history/node';

const [path = '', sensor = '', count] = process.argv.slice(2);
const history = await openHistory(path);
for (let i = 0; i < Number(count); i++) {
  history.add([
    {
      kind: 'truesweep-record',
      form: 1,
      sensor,
      recording: i.toString(16).padStart(64, '0'),
      date: '2026-05-03',
      dateFrom: 'told',
      file: `${sensor} ${i}.csv`,
      verdict: 'pass',
      noise: 0.001,
      visible: 0.02,
      roughness: 0,
      findings: 0,
      recorder: { interval: 0.001, resolution: 0.001 },
    },
  ]);
  process.stdout.write(`${i}\n`);
}
history.close();
