/**
 * Words of the page that judges recordings in a browser.
 *
 * @example
 * checkSweepWords.report // => 'The report'
 */
export const checkSweepWords = {
  files: 'A job and its recordings',
  demo: "Judge the demo's recordings",
  busy: 'Reading and judging …',
  download: 'Keep the report as one HTML file',
  report: 'The report',
  noJob:
    'There is no job among the files; add the .json file that describes sensor, hook-up and instrument.',
  twoJobs: 'There are two jobs among the files; choose one of them with its recordings.',
  noRecording: 'There is a job but no recording; choose the recordings together with it.',
} as const satisfies Record<string, string>;
