import { say } from './say.js';

/**
 * Words of the shelf: sensors and hook-ups that are kept in the browser.
 *
 * @example
 * shelfWords.closed // => 'Closed reading'
 */
export const shelfWords = {
  empty: 'nothing there yet',
  emptyLong:
    'Nothing stands here yet. Judge a recording or go through the guided way, and keep the sensor; or open a shelf that was saved as a file.',
  unnamed: 'Sensor without a name',
  judge: 'Judge a recording of it',
  results: 'Results, the newest first',
  noResults: 'No recording of it was judged yet.',
  at: 'Judged',
  recording: 'Recording',
  verdict: 'Verdict',
  closed: 'Closed reading',
  open: 'Open reading',
  findings: 'Findings',
  seasons: 'End readings over the seasons',
  compare: 'Compared with the one before',
  remove: 'Take it off the shelf',
  removeSure: 'Sure? Its results go with it. Take it off',
  save: 'Save the shelf as a file',
  openFile: 'Open a saved shelf',
  change: 'Change what it is told by',
  damaged:
    'An entry that can’t be read. It is left as it is; save it as a file before you take it off.',
  saveDamaged: 'Save it as a file',
  changedElsewhere: 'Another tab changed the shelf; it is shown as it is now.',
} as const satisfies Record<string, string>;

/**
 * What each field of a sensor on the shelf is called.
 *
 * @example
 * shelfFieldLabels.serial // => 'Serial number'
 */
export const shelfFieldLabels: Readonly<Record<'name' | 'serial' | 'machine' | 'note', string>> = {
  name: 'Name',
  serial: 'Serial number',
  machine: 'Machine',
  note: 'Note',
};

/**
 * What each field of a sensor on the shelf means, in one line.
 *
 * @example
 * shelfFieldHints.machine // => 'What it belongs to, such as the engine and its owner.'
 */
export const shelfFieldHints: Readonly<Record<keyof typeof shelfFieldLabels, string>> = {
  name: 'As you call it, such as “port engine, spare”.',
  serial: 'From its housing or the machine’s plate; leave empty if there is none.',
  machine: 'What it belongs to, such as the engine and its owner.',
  note: 'Whatever else is to be remembered.',
};

/**
 * Why the shelf could not be read or written, and what to do.
 *
 * @example
 * shelfTroubleSentences.full.startsWith('There is no room left') // => true
 */
export const shelfTroubleSentences: Readonly<Record<'blocked' | 'full' | 'newer', string>> = {
  blocked:
    'This browser keeps nothing for this page, as in a private window: save what you entered by its link or as a file.',
  full: 'There is no room left in this browser’s storage: nothing was changed. Save the shelf as a file, then take off what is old.',
  newer:
    'This shelf was written by a newer version of these pages: nothing was changed. Load this page anew.',
};

/**
 * Why a file is no shelf.
 *
 * @example
 * shelfRefusals['not-a-shelf'].startsWith('This file holds no shelf') // => true
 */
export const shelfRefusals: Readonly<Record<'not-a-shelf' | 'newer', string>> = {
  'not-a-shelf': 'This file holds no shelf; choose one that was saved on this page.',
  newer: 'This shelf was saved by a newer version of this page; nothing of it was read.',
};

/**
 * Said when a shelf was opened from a file.
 *
 * @param sensors How many sensors were taken, and how many `damaged` entries were not.
 *
 * @example
 * shelfOpenedSentence(3, 0) // => '3 sensors were taken from the file.'
 */
export function shelfOpenedSentence(sensors: number, damaged: number): string {
  const taken =
    sensors === 1
      ? '1 sensor was taken from the file.'
      : say`${sensors} sensors were taken from the file.`;
  if (damaged === 0) return taken;
  return say`${taken} Damaged, and not taken: ${damaged}. The file was left as it is.`;
}
