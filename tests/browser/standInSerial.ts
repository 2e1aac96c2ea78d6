import type { Page } from 'playwright-core';

/** A serial port that a test writes to, as a page finds it. */
export interface StandInSerial {
  /** The rate at which it writes, baud; at another one nothing of it is text. */
  rate: number;
  write(text: string): void;
  /** Whether somebody reads it: what is written before is lost, as on a port that nobody has opened. */
  isRead(): boolean;
  /** Writes lines as time passes, `speed` times as fast as their stamps say; ends with the last one. */
  play(text: string, seconds: readonly number[], speed: number): Promise<void>;
  /** When lines were handed over: the stamp of the last one, s, and the page's clock, ms. */
  handedOver: (readonly [stamp: number, at: number])[];
  unplug(): void;
  plugIn(): void;
}

/** Puts a serial port in the place of the browser's own, by the interface of the Web Serial standard, before a page's scripts run. */
export async function standInSerial(page: Page): Promise<void> {
  await page.addInitScript(() => {
    type Controller = ReadableStreamDefaultController<Uint8Array>;
    class Port extends EventTarget {
      #stream: ReadableStream<Uint8Array> | undefined;
      controller: Controller | undefined;
      baudRate = 0;
      isOpen = false;
      isGone = false;
      /** While it is open a stream that was cancelled, or that failed, is followed by another one. */
      get readable() {
        if (!this.isOpen) return null;
        this.#stream ??= new ReadableStream({
          start: (controller) => {
            this.controller = controller;
          },
          cancel: () => this.drop(),
        });
        return this.#stream;
      }
      drop() {
        this.#stream = undefined;
        this.controller = undefined;
      }
      async open({ baudRate }: { baudRate: number }) {
        if (this.isGone) throw new DOMException('Failed to open serial port.', 'NetworkError');
        if (this.isOpen) throw new DOMException('It is open.', 'InvalidStateError');
        this.baudRate = baudRate;
        this.isOpen = true;
      }
      async close() {
        this.isOpen = false;
        this.drop();
      }
      getInfo = () => ({ usbVendorId: 1, usbProductId: 2 });
    }
    const port = new Port();
    const serial = new EventTarget() as EventTarget & { requestPort: () => Promise<Port> };
    serial.requestPort = async () => port;
    Object.defineProperty(navigator, 'serial', { value: serial, configurable: true });
    const encoder = new TextEncoder();
    const send = (bytes: Uint8Array) => {
      const { controller, baudRate } = port;
      if (!controller || bytes.length === 0) return;
      // At a wrong rate bits are taken for others.
      controller.enqueue(
        baudRate === standIn.rate ? bytes : bytes.map((byte, i) => (byte * 5 + i * 37) | 0x80),
      );
    };
    const standIn: StandInSerial = {
      rate: 115_200,
      handedOver: [],
      write: (text) => send(encoder.encode(text)),
      isRead: () => port.controller !== undefined,
      play: (text, seconds, speed) =>
        new Promise((done) => {
          const bytes = encoder.encode(text);
          const ends: number[] = [];
          for (const [i, byte] of bytes.entries()) if (byte === 0x0a) ends.push(i + 1);
          const begun = performance.now();
          let lines = 0;
          const timer = setInterval(() => {
            const now = ((performance.now() - begun) / 1000) * speed;
            const from = ends[lines - 1] ?? 0;
            while (lines < ends.length && (seconds[lines] ?? 0) <= now) lines++;
            send(bytes.slice(from, ends[lines - 1] ?? 0));
            standIn.handedOver.push([seconds[lines - 1] ?? 0, performance.now()]);
            if (lines < ends.length) return;
            clearInterval(timer);
            done();
          }, 5);
        }),
      unplug() {
        const { controller } = port;
        port.isGone = true;
        port.isOpen = false;
        port.drop();
        controller?.error(new DOMException('The device has been lost.', 'NetworkError'));
        port.dispatchEvent(new Event('disconnect', { bubbles: true }));
      },
      plugIn() {
        port.isGone = false;
        port.dispatchEvent(new Event('connect', { bubbles: true }));
      },
    };
    Object.assign(window, { standIn });
  });
}
