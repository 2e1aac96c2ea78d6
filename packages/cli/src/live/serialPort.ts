import { stat } from 'node:fs/promises';
import { InputError, type Seconds } from '@truesweep/core';
import { type DelimitedOptions, isTextOf, rateFinder, usualRates } from '@truesweep/recordings';
import { noSerialSentence, portFailedSentence } from '@truesweep/wording';
import { type LiveSource, now } from './liveSource.js';
import { pause } from './pause.js';

/** What is used of a port of the library. */
interface OpenPort {
  read(buffer: Buffer, offset: number, length: number): Promise<{ readonly bytesRead: number }>;
  update(options: { readonly baudRate: number }): Promise<void>;
  /** Drops what came and was not read. */
  flush(): Promise<void>;
  close(): Promise<void>;
}
interface Ports {
  open(options: {
    readonly path: string;
    readonly baudRate: number;
    readonly hupcl?: boolean;
  }): Promise<OpenPort>;
}

const bufferBytes = 2 ** 14;
/** A rate is listened at for so long; where text comes, a meter of a few rows a second has time for its rows: s. */
const [patience, patienceForText]: readonly [Seconds, Seconds] = [2, 12];
/** After so long nothing comes of the rate before, ms. */
const settling = 50;
/** How often a port that is gone is looked for, ms. */
const every = 200;

/**
 * A serial port: eight bits, no parity, one stop bit. Where no rate is given the usual ones are tried until lines of a recorder come. Once its lines were read a port
 * that goes away is waited for.
 *
 * @param rate Baud; found out when left out.
 * @param options How its lines are written, as far as it is known.
 */
export function serialPort(
  path: string,
  rate: number | undefined,
  options: DelimitedOptions,
): LiveSource {
  return async function* (stopped) {
    const ports = await loadPorts(path);
    const buffer = Buffer.alloc(bufferBytes);
    let known = rate;
    let port: OpenPort | undefined;
    const close = async (): Promise<void> => {
      const closing = port;
      port = undefined;
      await closing?.close().catch(() => {});
    };
    stopped.addEventListener('abort', close, { once: true });
    const read = async (): Promise<Uint8Array | undefined> => {
      try {
        const { bytesRead } = await port!.read(buffer, 0, bufferBytes);
        return Uint8Array.from(buffer.subarray(0, bytesRead));
      } catch {
        await close();
        return undefined;
      }
    };
    /** The next bytes, or nothing where none come for a while. The read goes on meanwhile. */
    let reading: Promise<Uint8Array | undefined> | undefined;
    const nextWithin = async (milliseconds: number) => {
      reading ??= read();
      const waited = new AbortController();
      const end = (): void => waited.abort();
      stopped.addEventListener('abort', end, { once: true });
      const came = await Promise.race([
        reading,
        pause(milliseconds, waited.signal).then(() => 'none' as const),
      ]);
      stopped.removeEventListener('abort', end);
      end();
      if (came !== 'none') reading = undefined;
      return came;
    };
    let device: number | undefined;
    const open = async (baud: number): Promise<OpenPort> => {
      const opened = await ports.open({ path, baudRate: baud, hupcl: false });
      device = await deviceOf(path);
      return opened;
    };
    /** Lets go of a port that is there no more: of one that hung up some systems read nothing, again and again, without an error. */
    const leaveGone = async (): Promise<void> => {
      if (device !== undefined && (await deviceOf(path)) !== device) await close();
    };

    /** Listens at a rate: what came, and whether it is right; nothing of a port that goes away. */
    const listenAt = async (baud: number) => {
      await port!.update({ baudRate: baud });
      // What was on its way came at the rate before.
      await pause(settling, stopped);
      await port?.flush().catch(() => {});
      await nextWithin(0);
      const heard: Uint8Array[] = [];
      const isRight = rateFinder(options);
      const isText = isTextOf();
      const began = now();
      let until = began + patience;
      while (port && now() < until && !stopped.aborted) {
        const came = await nextWithin(100);
        if (came === undefined) break;
        if (came === 'none') {
          await leaveGone();
          continue;
        }
        heard.push(came);
        // What is text but comes slowly is waited for.
        if (isText(came)) until = began + patienceForText;
        const verdict = isRight(came);
        if (verdict !== undefined) return { heard, isRight: verdict };
      }
      return { heard, isRight: false };
    };

    try {
      port = await open(known ?? usualRates[0]!).catch((error: Error) => {
        throw new InputError('unreadable-file', path, portFailedSentence(error.message));
      });
      for (let at = 0; !stopped.aborted; ) {
        if (!port) {
          yield { kind: 'lost' };
          while (!port && !stopped.aborted) {
            await pause(every, stopped);
            port = await open(known ?? usualRates[0]!).catch(() => undefined);
          }
          if (port) yield { kind: 'back' };
        } else if (known === undefined) {
          const baud = usualRates[at++ % usualRates.length]!;
          yield { kind: 'trying', baud };
          const { heard, isRight } = await listenAt(baud);
          if (!isRight) continue;
          known = baud;
          yield { kind: 'rate', baud };
          for (const bytes of heard) yield { kind: 'bytes', bytes, arrived: now() };
        } else {
          const came = await nextWithin(500);
          if (came === 'none') await leaveGone();
          else if (came) yield { kind: 'bytes', bytes: came, arrived: now() };
        }
      }
    } finally {
      stopped.removeEventListener('abort', close);
      await close();
    }
  };
}

/** The number of a port's device, where systems have such. */
async function deviceOf(path: string): Promise<number | undefined> {
  if (process.platform === 'win32') return undefined;
  return (await stat(path).catch(() => undefined))?.rdev;
}

/** The library of serial ports, which is there where its installation worked. */
async function loadPorts(path: string): Promise<Ports> {
  try {
    const { autoDetect } = await import('@serialport/bindings-cpp');
    return autoDetect();
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new InputError('unreadable-file', path, noSerialSentence(reason));
  }
}
