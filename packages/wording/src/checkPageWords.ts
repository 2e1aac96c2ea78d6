/**
 * Words of the page on which recordings are judged.
 *
 * @example
 * checkPageWords.judged // => 'The judgement'
 */
export const checkPageWords = {
  files: 'Choose a recording',
  filesHint: 'or drop it here. With its job file if there is one; a report opens here too.',
  demo: "Try it with the demo's recordings",
  judged: 'The judgement',
  entries: 'Sensor, hook-up and instrument',
  useEntries: 'Judge by the entries instead',
  brokenOff:
    'Judging broke off; the recording may be too long for this browser. Close other pages, or use the command line.',
  noWorker:
    'Nothing can be judged: this browser starts no worker for this page. Use a newer browser, or the command line.',
  begins: 'Judging begins …',
  stop: 'Stop judging',
  stopped: 'You stopped the judging; there is no verdict.',
  judgeAgain: 'Judge again',
  demoOnly: 'An example, not yours: the recordings of the demo.',
  looks: 'Reading …',
  restsOn: 'What the verdict rests on',
  kept: 'Judged before, with the entries as they are now. Choose the recordings again for their traces, checks and report.',
  keptByJob:
    'Judged before by a job of its own, not by the entries. Choose job and recordings again for traces, checks and report.',
  struck:
    'Recordings were judged before, but the entries have changed since: that verdict no longer holds. Choose the recordings again.',
} as const satisfies Record<string, string>;

/**
 * Words of what a verdict rests on, besides those of a report.
 *
 * @example
 * restsOnWords.contact // => "Wiper's contact"
 */
export const restsOnWords = {
  pullUp: 'Resistor up to a voltage of its own',
  supplyLead: 'Supply lead',
  groundLead: 'Ground lead',
  contact: "Wiper's contact",
  resolution: 'Smallest step of a reading',
  uncertainty: "Recorder's standard uncertainty",
  range: "Recorder's range",
  signalUnit: 'Unit of the signal, as told here',
  timeUnit: 'Unit of the times, as told here',
  voltsPerUnit: 'Volts of one unit',
} as const satisfies Record<string, string>;
