import { readdir, stat } from 'node:fs/promises';
import { InputError } from '@truesweep/core';
import type { DelimitedOptions } from '@truesweep/recordings';
import { folderSentence, noSourceSentence } from '@truesweep/wording';
import { standardInput } from '../inputPieces.js';
import { growingFile } from './growingFile.js';
import type { LiveSource } from './liveSource.js';
import { programOutput } from './programOutput.js';
import { serialPort } from './serialPort.js';

/** A source and what it is called. */
export interface ChosenSource {
  readonly name: string;
  readonly source: LiveSource;
  /** Whether its first line may be half of one. */
  readonly fromMiddle: boolean;
}

/** Serial ports by their names: of the systems that keep devices in folders, and of those that number them. */
const portNames = /^(\/dev\/(tty|cu|pts\/|serial\/|rfcomm).*|COM\d+|\\\\\.\\COM\d+)$/i;
/** What adapters and controllers on a bus are called in /dev. Common practice, no source. */
const pluggedIn = /^(ttyUSB|ttyACM|rfcomm|cu\.usb|tty\.usb)/;

/**
 * The source that a name stands for: a serial port, the standard input for `-`, a named pipe, or a file; the only serial port that is plugged in
 * where no name is given.
 *
 * @throws InputError `missing` where none or several are plugged in, `unreadable-file` for a name that is none of these.
 */
export async function chooseSource(
  name: string | undefined,
  rate: number | undefined,
  options: DelimitedOptions,
): Promise<ChosenSource> {
  if (name === undefined) {
    const found = await portsPluggedIn();
    const [only] = found;
    if (only === undefined || found.length > 1) {
      throw new InputError('missing', 'source', noSourceSentence(found));
    }
    return { name: only, source: serialPort(only, rate, options), fromMiddle: true };
  }
  if (name === standardInput) return { name, source: programOutput(), fromMiddle: false };
  const there = await stat(name).catch(() => undefined);
  if (portNames.test(name) || there?.isCharacterDevice()) {
    return { name, source: serialPort(name, rate, options), fromMiddle: true };
  }
  if (there?.isDirectory()) throw new InputError('unreadable-file', name, folderSentence);
  if (there?.isFIFO()) return { name, source: programOutput(name), fromMiddle: false };
  return { name, source: growingFile(name), fromMiddle: false };
}

/** Serial ports that are plugged in, where devices are in a folder. */
async function portsPluggedIn(): Promise<readonly string[]> {
  const names = await readdir('/dev').catch(() => []);
  return names.filter((one) => pluggedIn.test(one)).map((one) => `/dev/${one}`);
}
