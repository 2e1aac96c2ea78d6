import {
  type AbruptDeparture,
  checkText,
  type DeliberateTest,
  type Finding,
  formatQuantity,
  listOf,
  type Missing,
  type Stretch,
} from '@truesweep/core';
import type { ReadColumns } from '@truesweep/recordings';
import { count } from './count.js';
import { findingLabels } from './findings.js';
import { missingText } from './liveWords.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * What the command line says while a recording runs.
 *
 * @example
 * liveWords.opening // => 'opening'
 */
export const liveWords = {
  standardInput: 'standard input',
  findings: 'Findings',
  passesTo: 'looks, to',
  opening: 'opening',
  closing: 'closing',
  enough: 'Enough: all that is asked for is recorded.',
  keys: 'Keys: t flexing, h tapping, w warming, when you begin and when you end; q end and judge.',
  noKeys: 'Ctrl-C ends and judges.',
  testRuns: {
    sweep: 'A sweep is marked.',
    rest: 'A rest is marked.',
    'harness-flexed': 'Marked: flexing the harness. Hold the shaft still; press t when you end.',
    'housing-tapped': 'Marked: tapping the housing. Hold the shaft still; press h when you end.',
    warmed: 'Marked: warming the sensor. Hold the shaft still; press w when you end.',
  } satisfies Record<Stretch['kind'], string>,
} as const;

const testKeys: Readonly<Record<DeliberateTest, string>> = {
  'harness-flexed': 't',
  'housing-tapped': 'h',
  warmed: 'w',
};

/**
 * What a running recording still lacks.
 *
 * @param withKeys Whether the keys that mark a test are told.
 *
 * @example
 * missingSentence([{ missing: 'snaps', count: 1 }], false) // => 'Still asked for: 1 snap: open, let go.'
 */
export function missingSentence(missing: readonly Missing[], withKeys: boolean): string {
  listOf(() => {})(missing, 'missing');
  const parts = missing.map((one) => {
    const text = missingText(one);
    return one.missing === 'test' && withKeys ? say`${text} (press ${testKeys[one.test]})` : text;
  });
  return say`Still asked for: ${parts.join('; ')}.`;
}

/**
 * A finding of a running recording in a line.
 *
 * @example
 * findingLine({ start: 1.5, end: 1.51, depth: -2 }) // => 'abrupt departure at 1.500\u00a0s, −2.00\u00a0V'
 */
export function findingLine(finding: Finding | AbruptDeparture): string {
  return whole(finding, 'finding', () => {
    const at = formatQuantity(finding.start, 's', { digits: 4 });
    const depth = formatQuantity(finding.depth, 'V');
    if (!('kind' in finding)) return say`abrupt departure at ${at}, ${depth}`;
    const place = finding.unplaced
      ? ''
      : say`, ${formatQuantity(finding.travel, '%', { digits: 2 })} of the travel`;
    return say`${findingLabels[finding.kind]} at ${at}${place}, ${depth}`;
  });
}

/**
 * How a running recording stands.
 *
 * @example
 * const state = { source: '/dev/ttyACM0', baud: 500_000, isLost: false, samples: 1200, seconds: '1.20 s', damagedLines: 0, gaps: 0, isChecked: true };
 * runningSentence(state) // => '/dev/ttyACM0 at 500000 baud: 1200 samples, 1.20 s; the check of every line fits.'
 */
export function runningSentence(state: {
  readonly source: string;
  readonly baud?: number;
  readonly isLost: boolean;
  readonly samples: number;
  readonly seconds: string;
  readonly damagedLines: number;
  readonly gaps: number;
  readonly isChecked: boolean;
}): string {
  return whole(state, 'state', () => {
    const { source, baud, isLost, samples, seconds, damagedLines, gaps, isChecked } = state;
    const from = baud === undefined ? source : say`${source} at ${baud} baud`;
    const lines =
      damagedLines > 0
        ? say`; ${count(damagedLines, 'line')} damaged${isChecked ? ' and left out' : ''}`
        : isChecked
          ? '; the check of every line fits'
          : '';
    const pauses = gaps > 0 ? say`; ${count(gaps, 'gap')}` : '';
    const gone = isLost ? ' It is gone at the moment: plug it in again, or end.' : '';
    return say`${from}: ${count(samples, 'sample')}, ${seconds}${lines}${pauses}.${gone}`;
  });
}

/**
 * Said while the rate of a serial line is found out.
 *
 * @example
 * rateSentence('COM3', 9600) // => 'COM3: trying 9600 baud …'
 */
export function rateSentence(source: string, baud: number): string {
  checkText(source, 'source');
  return say`${source}: trying ${baud} baud …`;
}

/**
 * What was recorded and where it is, with what the verdict rests on beside the samples.
 *
 * @example
 * recordedSentence({ file: 'a.csv', job: 'a.job.json', samples: 2, damagedLines: 0, gaps: [], gapCount: 0, isChecked: false }) // => 'Saved: 2 samples in a.csv, with its job in a.job.json.'
 */
export function recordedSentence(recorded: {
  readonly file: string;
  readonly job: string;
  readonly samples: number;
  readonly damagedLines: number;
  readonly gaps: readonly {
    readonly kind: 'lost' | 'restarted';
    readonly start: number;
    readonly end: number;
  }[];
  readonly gapCount: number;
  readonly isChecked: boolean;
  readonly columns?: ReadColumns;
}): string {
  return whole(recorded, 'recorded', () => {
    const { file, job, samples, damagedLines, isChecked } = recorded;
    const saved = say`Saved: ${count(samples, 'sample')} in ${file}, with its job in ${job}.`;
    const damaged =
      damagedLines === 0
        ? ''
        : isChecked
          ? say` ${count(damagedLines, 'line')} whose check did not fit left out.`
          : say` ${count(damagedLines, 'line')} damaged on the way left out; the lines carry no check, so that others may have come wrong and be read as numbers.`;
    const units = unitsTakenText(recorded.columns);
    return say`${saved}${units === '' ? '' : say` ${units}`}${damaged}${gapsText(recorded)}`;
  });
}

const gapsShown = 5;

/**
 * From when to when nothing came of a recording; empty where there are no gaps.
 *
 * @example
 * gapsText({ gaps: [{ kind: 'restarted', start: 2, end: 3 }], gapCount: 1 }) // => ' 1 gap: 2.000\u00a0s to 3.000\u00a0s (the recorder began anew).'
 */
export function gapsText(recorded: {
  readonly gaps: readonly {
    readonly kind: 'lost' | 'restarted';
    readonly start: number;
    readonly end: number;
  }[];
  readonly gapCount: number;
}): string {
  return whole(recorded, 'recorded', () => {
    const { gaps, gapCount } = recorded;
    if (gapCount === 0) return '';
    const at = (value: number) => formatQuantity(value, 's', { digits: 4 });
    const told = gaps
      .slice(-gapsShown)
      .map(
        ({ kind, start, end }) =>
          say`${at(start)} to ${at(end)}${kind === 'restarted' ? ' (the recorder began anew)' : ''}`,
      );
    const latest = gapCount > told.length ? say`, the latest ${told.length}` : '';
    return say` ${count(gapCount, 'gap')}${latest}: ${told.join('; ')}.`;
  });
}

/**
 * Refused: no source named, and none or several serial ports plugged in.
 *
 * @example
 * noSourceSentence([]).includes('No serial port') // => true
 */
export function noSourceSentence(found: readonly string[]): string {
  listOf(checkText)(found, 'found');
  return found.length === 0
    ? 'No serial port is plugged in; name the port, a file that grows, or - for the standard input.'
    : say`Several serial ports are plugged in (${found.join(', ')}); name one.`;
}

/**
 * Refused: a serial port that does not open.
 *
 * @example
 * portFailedSentence('Permission denied').includes('the right to') // => true
 */
export function portFailedSentence(reason: string): string {
  checkText(reason, 'reason');
  return say`The port does not open (${reason}): look whether it is plugged in, whether another program has it, and whether this account has the right to it (on many systems that of a group such as “dialout”).`;
}

/**
 * Refused: serial ports where their library was not installed.
 *
 * @example
 * noSerialSentence('not found').includes('@serialport/bindings-cpp') // => true
 */
export function noSerialSentence(reason: string): string {
  checkText(reason, 'reason');
  return say`Serial ports need the package @serialport/bindings-cpp, which was not installed or does not fit this system (${reason}); install it, or pipe what another program reads of the port into “truesweep live -”.`;
}

/**
 * Refused or ended: a recording that can't be written.
 *
 * @param saved Bytes that are saved.
 *
 * @example
 * cannotSaveSentence('EEXIST', 0) // => 'Nothing was written. There is a file of this name already; choose another name by --out.'
 */
export function cannotSaveSentence(reason: string, saved: number): string {
  checkText(reason, 'reason');
  const kept =
    saved === 0
      ? 'Nothing was written.'
      : say`${saved} bytes are saved, whole lines; what came later is not.`;
  const why: Readonly<Record<string, string>> = {
    EEXIST: 'There is a file of this name already; choose another name by --out.',
    ENOSPC: 'The disk is full; make room or write to another one.',
    ENOENT: 'Its folder does not exist; make it first, or choose another by --out.',
    EACCES: 'The folder may not be written to; choose another by --out.',
    EROFS: 'The disk is read-only; write to another one by --out.',
  };
  return say`${kept} ${why[reason] ?? say`The system refused it (${reason}); write to another place by --out.`}`;
}

/**
 * Refused: a source that gave nothing to judge.
 *
 * @example
 * nothingCameSentence(0, false).includes('Nothing came') // => true
 */
export function nothingCameSentence(damagedLines: number, isRateTold: boolean): string {
  if (damagedLines === 0) {
    return 'Nothing came that could be recorded; look whether the recorder writes, and whether its plug is the right one.';
  }
  const rate = isRateTold
    ? ' If the rate is wrong, leave --baud out: then the usual ones are tried.'
    : '';
  return say`No line could be read as a row of numbers (${count(damagedLines, 'line')}): each must hold a time and a reading.${rate}`;
}

/**
 * Refused: what is no rate of a serial line.
 *
 * @example
 * notARateSentence('fast', 50, 12_000_000) // => '--baud is "fast"; it must be a whole number of baud from 50 to 12000000, such as 115200.'
 */
export function notARateSentence(text: string, slowest: number, fastest: number): string {
  checkText(text, 'text');
  return say`--baud is ${JSON.stringify(text)}; it must be a whole number of baud from ${slowest} to ${fastest}, such as 115200.`;
}

/**
 * Refused: a time that is none to wait or to record for.
 *
 * @example
 * notADurationSentence('--for', '0s') // => '--for is "0s"; it must be a time above 0, such as 60 s.'
 */
export function notADurationSentence(option: string, text: string): string {
  checkText(option, 'option');
  checkText(text, 'text');
  return say`${option} is ${JSON.stringify(text)}; it must be a time above 0, such as 60 s.`;
}

/**
 * Refused: a folder as the source of a recording.
 *
 * @example
 * folderSentence.includes('folder') // => true
 */
export const folderSentence =
  'This is a folder; name a serial port, a file that grows, or - for what another program prints.';

/**
 * What nobody told of the lines and was taken for granted; empty where everything was told.
 *
 * @example
 * unitsTakenText({ signal: { index: 1, name: '', chosenFrom: 'place', unit: 'V', unitFrom: 'assumed' } }) // => 'Nothing told the unit: the signal was taken for V.'
 */
export function unitsTakenText(columns: ReadColumns | undefined): string {
  if (columns === undefined) return '';
  return whole(columns, 'columns', () => {
    const taken = (['time', 'signal', 'supply', 'second'] as const).flatMap((role) => {
      const column = columns[role];
      return column?.unitFrom === 'assumed' ? [say`the ${role} was taken for ${column.unit}`] : [];
    });
    return taken.length === 0 ? '' : say`Nothing told the unit: ${taken.join(', ')}.`;
  });
}
