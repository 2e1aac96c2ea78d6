import { checkFields, checkText, formatQuantity, type Verdict } from '@truesweep/core';
import { count } from './count.js';
import { texts } from './rules.js';
import { number, say } from './say.js';
import { verdictLabels, verdictMeanings } from './verdicts.js';
import { whole } from './whole.js';

/** How many recordings of a batch came out how: counts, 0 or more each. */
export type BatchCounts = Readonly<Record<Verdict | 'not-judged', number>>;

/**
 * What became of a recording of a batch, as headings.
 *
 * @example
 * batchOutcomeLabels['not-judged'] // => 'Not judged'
 */
export const batchOutcomeLabels: Readonly<Record<keyof BatchCounts, string>> = {
  ...verdictLabels,
  'not-judged': 'Not judged',
};

/**
 * What that says of the sensors.
 *
 * @example
 * batchOutcomeMeanings['not-judged'].startsWith('These could not be read') // => true
 */
export const batchOutcomeMeanings: Readonly<Record<keyof BatchCounts, string>> = {
  ...verdictMeanings,
  'not-judged':
    'These could not be read or judged; each says why. Nothing is known of their sensors.',
};

/**
 * Words of the summary of a batch.
 *
 * @example
 * batchWords.closed // => 'Closed'
 */
export const batchWords = {
  kind: 'truesweep · summary of a batch',
  title: 'Recordings judged together',
  order:
    'What needs attention comes first, and among those alike what keeps the least from its limits or lies the farthest beyond them.',
  traces:
    'Each trace shows the whole recording from left to right; pale bands are the windows of the closed and the open stop, the broad stroke is the worst place. Readings stand with twice their standard uncertainty. Of the check nearest to its limit it is told how far inside it is: 100 % is amid two limits, or as far from one as that is from zero.',
  cause: 'Cause',
  sure: 'How sure',
  worst: 'Worst',
  ofTravel: 'of the travel',
  findings: 'Departures',
  closed: 'Closed',
  open: 'Open',
  hysteresis: 'Hand less spring',
  noise: 'Noise',
  deviation: '(standard deviation)',
  visible: 'Visible from',
  nearest: 'Nearest limit',
  results: 'Results',
  first: 'First to look at',
} as const;

/**
 * Headings of a batch's table, with their units.
 *
 * @example
 * batchColumns.closed // => 'closed (V)'
 */
export const batchColumns = {
  file: 'file',
  date: 'date',
  sensor: 'sensor',
  job: 'job',
  outcome: 'outcome',
  confidence: 'confidence (0 to 1)',
  cause: 'cause',
  causeWeight: 'weight of the cause (0 to 1)',
  closed: 'closed (V)',
  closedUncertainty: 'standard uncertainty of closed (V)',
  open: 'open (V)',
  openUncertainty: 'standard uncertainty of open (V)',
  hysteresis: 'closed by hand less by spring (V)',
  findings: 'departures (count)',
  worstKind: 'worst departure',
  worstTravel: 'travel of the worst (0 to 1)',
  worstDepth: 'depth of the worst (V)',
  noise: 'noise (V)',
  visible: 'smallest visible departure (V)',
  nearestCheck: 'check nearest to its limit',
  nearestMargin: 'margin of that check (1 is amid)',
  refusedCode: 'not judged (code)',
  refusedSentence: 'not judged because',
  note: 'note',
  bytes: 'size (bytes)',
  sha256: 'SHA-256',
  version: 'truesweep',
  key: 'key',
} as const;

const order = ['fail', 'inconclusive', 'not-judged', 'marginal', 'pass'] as const;

/**
 * How the recordings of a batch came out.
 *
 * @example
 * batchSentence({ fail: 1, inconclusive: 0, 'not-judged': 2, marginal: 0, pass: 9 }) // => '12 recordings: 1 fail, 2 not judged, 9 pass.'
 */
export function batchSentence(counts: BatchCounts): string {
  return whole(counts, 'counts', () => {
    const parts = order.map((outcome) => {
      number(counts[outcome], `counts.${outcome}`);
      return [outcome, counts[outcome]] as const;
    });
    const all = parts.reduce((sum, [, some]) => sum + some, 0);
    const told = parts
      .filter(([, some]) => some > 0)
      .map(([outcome, some]) => say`${some} ${batchOutcomeLabels[outcome].toLowerCase()}`);
    return all === 0 ? 'No recordings.' : say`${count(all, 'recording')}: ${told.join(', ')}.`;
  });
}

const lineRules = {
  done: numberRule,
  'total?': numberRule,
  kept: numberRule,
  'not-judged': numberRule,
  'seconds?': numberRule,
};

function numberRule(value: unknown, path: string): void {
  number(value, path);
}

/**
 * How a batch stands.
 *
 * @param state How many recordings are done, of how many where that is counted, how many of these were judged before and could not be judged, and about how
 * long it takes still, s; not told where left out.
 *
 * @example
 * batchProgressSentence({ done: 30, total: 120, kept: 10, 'not-judged': 1, seconds: 95 }) // => '30 of 120 recordings, 10 judged before, 1 not judged; about 1 min 35 s left'
 */
export function batchProgressSentence(state: {
  readonly done: number;
  readonly total?: number;
  readonly kept: number;
  readonly 'not-judged': number;
  readonly seconds?: number;
}): string {
  checkFields(state, 'state', lineRules);
  const { done, total, kept, seconds } = state;
  const refused = state['not-judged'];
  const of =
    total === undefined ? count(done, 'recording') : say`${done} of ${count(total, 'recording')}`;
  const before = kept > 0 ? say`, ${kept} judged before` : '';
  const not = refused > 0 ? say`, ${refused} not judged` : '';
  const left = seconds === undefined ? '' : say`; about ${durationText(seconds)} left`;
  return say`${of}${before}${not}${left}`;
}

function durationText(seconds: number): string {
  const left = Math.max(1, Math.round(seconds));
  const [hours, minutes] = [Math.floor(left / 3600), Math.floor((left % 3600) / 60)];
  if (hours > 0) return say`${hours} h ${minutes} min`;
  return minutes > 0 ? say`${minutes} min ${left % 60} s` : say`${left} s`;
}

/**
 * How far a check is from its limit.
 *
 * @param label The check's name.
 * @param margin 1 amid the limits, 0 at one of them, negative beyond.
 *
 * @example
 * marginSentence('Closed reading', 0.25) // => 'Closed reading, 25\u00a0% inside'
 * marginSentence('Departures', -8) // => 'Departures, outside'
 */
export function marginSentence(label: string, margin: number): string {
  checkText(label, 'label');
  number(margin, 'margin');
  if (margin < 0) return say`${label}, outside`;
  const part = formatQuantity(Math.min(1, margin), '%', { digits: 2, trim: true });
  return say`${label}, ${part} inside`;
}

/**
 * Stands below those that a page shows.
 *
 * @example
 * moreRecordingsSentence(200) // => '200 more recordings are not shown here; all stand in results.csv and results.jsonl.'
 */
export function moreRecordingsSentence(more: number): string {
  number(more, 'more');
  return say`${count(more, 'more recording')} ${more === 1 ? 'is' : 'are'} not shown here; all stand in results.csv and results.jsonl.`;
}

const reasons: Readonly<Record<string, string>> = {
  ENOSPC: 'The disk is full; make room',
  EFBIG: 'The file would be larger than this account may write; make the limit larger',
  EDQUOT: 'The quota of this account is used up; make room',
  EACCES: 'It may not be written to; choose another folder, or ask its owner for the right to',
  EPERM: 'It may not be written to; choose another folder, or ask its owner for the right to',
  EROFS: 'The disk is read-only; choose a folder on another one',
  EEXIST: 'There is a file of this name; choose another folder',
  ENOTDIR: 'A part of its path is a file, not a folder; choose another',
};

function reasonText(reason: string): string {
  checkText(reason, 'reason');
  return Object.hasOwn(reasons, reason)
    ? reasons[reason]!
    : say`The system refused it (${reason}); choose another folder`;
}

/**
 * Refused: a journal that takes no more.
 *
 * @param reason What the system says, such as `ENOSPC`.
 * @param kept How many results it holds.
 *
 * @example
 * journalSentence('ENOSPC', 12) // => 'The disk is full; make room, then give the same command again. 12 results are kept.'
 */
export function journalSentence(reason: string, kept: number): string {
  number(kept, 'kept');
  return say`${reasonText(reason)}, then give the same command again. ${count(kept, 'result')} ${kept === 1 ? 'is' : 'are'} kept.`;
}

/**
 * Refused: a folder that results can't be written to.
 *
 * @example
 * folderNotWrittenSentence('EROFS') // => 'The disk is read-only; choose a folder on another one. Nothing was judged.'
 */
export function folderNotWrittenSentence(reason: string): string {
  return say`${reasonText(reason)}. Nothing was judged.`;
}

/**
 * Refused: a folder that another batch writes to.
 *
 * @example
 * folderInUseSentence(4711, 'bench', 'out/batch.lock').includes('process 4711 on bench') // => true
 */
export function folderInUseSentence(id: number, host: string, lock: string): string {
  texts([host, lock], 'words');
  return say`Another batch writes to it (process ${id} on ${host}); wait until it is done, or choose another folder. If it surely runs no more, remove ${lock}.`;
}

/**
 * Refused: a folder that can't be gone through.
 *
 * @example
 * folderUnreadableSentence('EACCES').startsWith('What is in this folder is not known (EACCES)') // => true
 */
export function folderUnreadableSentence(reason: string): string {
  return say`What is in this folder is not known (${reason}); ask its owner for the right to read it, or leave it out.`;
}

/**
 * Refused: files of a batch's results that no batch left.
 *
 * @example
 * otherResultsSentence('results.csv').includes('results.csv') // => true
 */
export function otherResultsSentence(name: string): string {
  return say`There is a ${name} in it that no batch left; choose another folder, or move it away. Nothing was judged.`;
}

/**
 * Refused: a folder among recordings with a recording's name.
 *
 * @example
 * folderNamedSentence.startsWith('This is a folder') // => true
 */
export const folderNamedSentence =
  'This is a folder named like a recording; recordings in it are judged by themselves. Give it another name.';

/**
 * Refused: a row of comma-separated values without an end.
 *
 * @example
 * openQuoteSentence.includes('quotation mark') // => true
 */
export const openQuoteSentence =
  'A quotation mark that opens here is not closed; close it, or write two of them for one.';

/**
 * Refused: a manifest's entry without a file.
 *
 * @example
 * manifestFileSentence.includes('“file”') // => true
 */
export const manifestFileSentence =
  'It names no file; a manifest has a column or field “file”, and may have “job”, “sensor”, “date” and “note”.';

/**
 * Refused: a line of a manifest that can't be read.
 *
 * @example
 * manifestLineSentence.includes('JSON object') // => true
 */
export const manifestLineSentence =
  'It is no JSON object in one line; write such as { "file": "port.csv", "sensor": "Port engine" }.';

/**
 * Refused: a value of a manifest that is no text.
 *
 * @example
 * manifestTextSentence('note') // => '“note” must be a text in quotation marks.'
 */
export function manifestTextSentence(name: string): string {
  return say`“${name}” must be a text in quotation marks.`;
}

/**
 * Refused: a recording that a manifest names again.
 *
 * @example
 * manifestTwiceSentence('port.csv').startsWith('It names port.csv a second time') // => true
 */
export function manifestTwiceSentence(file: string): string {
  return say`It names ${file} a second time; the first entry was taken. Keep the one that holds.`;
}

/**
 * Refused: a column or field that a manifest doesn't have.
 *
 * @param nearest The nearest that it may have; left out where none is near.
 *
 * @example
 * manifestFieldSentence('senor', ['file', 'sensor'], 'sensor') // => '“senor” is not known; it may be meant to be “sensor”.'
 */
export function manifestFieldSentence(
  name: string,
  known: readonly string[],
  nearest?: string,
): string {
  texts(known, 'known');
  const right =
    nearest === undefined
      ? say`a manifest has ${known.join(', ')}`
      : say`it may be meant to be “${nearest}”`;
  return say`“${name}” is not known; ${right}.`;
}

/**
 * Refused: a pattern that nothing matches.
 *
 * @example
 * nothingMatchesSentence('*.csv').includes('“*.csv”') // => true
 */
export function nothingMatchesSentence(pattern: string): string {
  return say`Nothing matches “${pattern}”; look at the folder's name and the pattern, or name the folder itself.`;
}

/**
 * Refused: nothing to judge.
 *
 * @example
 * nothingToBatchSentence.includes('--manifest') // => true
 */
export const nothingToBatchSentence =
  'No recording was found; name folders, files or patterns, or a list of them by --manifest. Of folders files with the endings csv, tsv, txt, dat, log, asc and wav are taken.';

/**
 * Refused: a recording without a job.
 *
 * @example
 * noJobNamedSentence.includes('--job') // => true
 */
export const noJobNamedSentence =
  'No job is named to judge it by; name one in the manifest, or for all by --job.';

/**
 * Said of a recording at which the program itself failed.
 *
 * @example
 * programFailedSentence('out of memory').includes('out of memory') // => true
 */
export function programFailedSentence(fault: string): string {
  return say`truesweep itself failed on it, the others were judged; report it with the recording (${fault}).`;
}

/**
 * Refused: no number of workers.
 *
 * @example
 * notWorkersSentence('many') // => '“many” is no number of workers; give one from 1 to 256, such as 2.'
 */
export function notWorkersSentence(text: string): string {
  return say`“${text}” is no number of workers; give one from 1 to 256, such as 2.`;
}

/**
 * Said of a batch that somebody ended.
 *
 * @example
 * batchStoppedSentence(12, 'out/journal.jsonl').startsWith('Stopped: 12 results are kept') // => true
 */
export function batchStoppedSentence(done: number, journal: string): string {
  checkText(journal, 'journal');
  return say`Stopped: ${count(done, 'result')} ${done === 1 ? 'is' : 'are'} kept in ${journal}; the same command goes on from there.`;
}

/**
 * Stands below the first of many recordings that could not be judged.
 *
 * @example
 * moreNotJudgedSentence(30, 'out/results.csv') // => '30 more could not be judged; why stands in out/results.csv.'
 */
export function moreNotJudgedSentence(more: number, table: string): string {
  checkText(table, 'table');
  return say`${more} more could not be judged; why stands in ${table}.`;
}
