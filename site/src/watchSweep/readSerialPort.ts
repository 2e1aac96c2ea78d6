import type { Seconds } from '@truesweep/core';
import { usualRates } from '@truesweep/recordings';
import type { WebSerial, WebSerialPort } from './webSerial.js';

/** What is told while a port is read. */
export interface PortListener {
  /** A rate is tried: what comes from now on belongs to it. */
  readonly onTry: (baud: number) => void;
  /** The port is read at a rate; what comes from now on is recorded. */
  readonly onRate: (baud: number) => void;
  /** The next bytes, and when they came, s. */
  readonly onBytes: (bytes: Uint8Array<ArrayBuffer>, arrived: Seconds) => void;
  /** Bytes were lost here. */
  readonly onGap: () => void;
  /** The port is gone, or back. */
  readonly onPresent: (isPresent: boolean) => void;
  /** It can't be read: it does not open, or at no rate came what can be read. */
  readonly onFailed: (
    why: { readonly kind: 'closed'; readonly reason: string } | { readonly kind: 'no-rate' },
  ) => void;
}

/** A port that is read. */
export interface ReadPort {
  /** Says whether the rate that is tried is right. */
  readonly judgeRate: (isRight: boolean) => void;
  readonly end: () => Promise<void>;
}

/** So many bytes may wait for the page. */
const bufferSize = 2 ** 16;
/** Many a controller begins anew when its port is opened, and then writes nothing for so long: ms. */
const silence = 2500;
/** Once something comes at a rate it is listened to for so long, ms: headings may come once a second only. */
const patience = 1500;
/** A port that comes back is not ready at once, ms. */
const settles = 300;
const reopenings = 10;

/**
 * Reads a serial port until it is told to end, also when it is unplugged and plugged in again.
 *
 * @param rate Baud; found among the usual ones when left out.
 */
export function readSerialPort(
  serial: WebSerial,
  port: WebSerialPort,
  rate: number | undefined,
  listener: PortListener,
): ReadPort {
  const ending = new AbortController();
  let judge: (isRight: boolean) => void = () => {};
  let open = port;
  const running = run();

  async function run(): Promise<void> {
    try {
      const baud = rate ?? (await readAtFoundRate());
      if (baud === undefined) {
        if (!ending.signal.aborted) listener.onFailed({ kind: 'no-rate' });
        return;
      }
      if (rate !== undefined) {
        await open.open({ baudRate: rate, bufferSize });
        listener.onRate(rate);
        await pump(open, ending.signal, listener.onBytes, listener.onGap);
      }
      for (;;) {
        // Waited for before it is let go: a plug may be back sooner.
        const back = isBack(baud);
        back.catch(() => {});
        await open.close().catch(() => {});
        if (ending.signal.aborted) return;
        listener.onGap();
        listener.onPresent(false);
        open = await back;
        listener.onPresent(true);
        await pump(open, ending.signal, listener.onBytes, listener.onGap);
      }
    } catch (error) {
      if (ending.signal.aborted) return;
      const reason = error instanceof Error ? error.message || error.name : String(error);
      listener.onFailed({ kind: 'closed', reason });
    }
  }

  /** Reads at the first usual rate at which lines come, until the port is gone; returns that rate. */
  async function readAtFoundRate(): Promise<number | undefined> {
    for (const baud of usualRates) {
      await open.open({ baudRate: baud, bufferSize });
      listener.onTry(baud);
      const trial = new AbortController();
      let isRight = false;
      let timer = setTimeout(() => trial.abort(), silence);
      let isFirst = true;
      judge = (isSo) => {
        clearTimeout(timer);
        judge = () => {};
        if (!isSo) return trial.abort();
        // Read on as it is: a stream that is closed takes with it what waits in it.
        isRight = true;
        listener.onRate(baud);
      };
      await pump(
        open,
        AbortSignal.any([trial.signal, ending.signal]),
        (bytes, arrived) => {
          listener.onBytes(bytes, arrived);
          if (!isFirst) return;
          isFirst = false;
          clearTimeout(timer);
          timer = setTimeout(() => trial.abort(), patience);
        },
        () => isRight && listener.onGap(),
      );
      clearTimeout(timer);
      if (isRight) return baud;
      await open.close();
      if (ending.signal.aborted) return undefined;
    }
    return undefined;
  }

  /** The same port, once it is plugged in again and open. */
  async function isBack(baud: number): Promise<WebSerialPort> {
    for (;;) {
      const found = await new Promise<WebSerialPort>((done, fail) => {
        const stop = new AbortController();
        ending.signal.addEventListener('abort', () => fail(ending.signal.reason), stop);
        const take = ({ target }: Event): void => {
          const other = target === serial ? undefined : (target as WebSerialPort | null);
          if (!other || !isAlike(other, port)) return;
          stop.abort();
          done(other);
        };
        // A port tells by itself that it is back; one that the browser takes for another is told by its ports.
        serial.addEventListener('connect', take, stop);
        port.addEventListener('connect', take, stop);
      });
      for (let attempt = 0; attempt < reopenings; attempt++) {
        await new Promise((done) => setTimeout(done, settles));
        try {
          await found.open({ baudRate: baud, bufferSize });
          return found;
        } catch {
          // It may still be settling, or be gone again.
        }
      }
    }
  }

  return {
    judgeRate: (isRight) => judge(isRight),
    async end() {
      ending.abort();
      await running;
      await open.close().catch(() => {});
    },
  };
}

/** Hands out what a port reads until a signal, or until it is gone. */
async function pump(
  port: WebSerialPort,
  signal: AbortSignal,
  onBytes: PortListener['onBytes'],
  onGap: () => void,
): Promise<void> {
  while (port.readable && !signal.aborted) {
    const reader = port.readable.getReader();
    const stop = (): void => void reader.cancel().catch(() => {});
    signal.addEventListener('abort', stop);
    try {
      for (;;) {
        const { value, done } = await reader.read();
        if (done) return;
        if (!signal.aborted) onBytes(value, performance.now() / 1000);
      }
    } catch {
      // Such as a byte without its stop bit: the port hands out another stream, and none where it is gone.
      onGap();
    } finally {
      signal.removeEventListener('abort', stop);
      reader.releaseLock();
    }
  }
}

function isAlike(one: WebSerialPort, other: WebSerialPort): boolean {
  if (one === other) return true;
  const [a, b] = [one.getInfo(), other.getInfo()];
  return a.usbVendorId === b.usbVendorId && a.usbProductId === b.usbProductId;
}
