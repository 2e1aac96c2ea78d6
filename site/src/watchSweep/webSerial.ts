/** A serial port of the Web Serial standard, as far as it is used here. */
export interface WebSerialPort extends EventTarget {
  readonly readable: ReadableStream<Uint8Array<ArrayBuffer>> | null;
  open(options: { readonly baudRate: number; readonly bufferSize: number }): Promise<void>;
  close(): Promise<void>;
  getInfo(): { readonly usbVendorId?: number; readonly usbProductId?: number };
}

/** Where a page gets serial ports from. */
export interface WebSerial extends EventTarget {
  requestPort(): Promise<WebSerialPort>;
}

/** The browser's serial ports; undefined where it opens none. */
export function webSerial(): WebSerial | undefined {
  return (navigator as Navigator & { readonly serial?: WebSerial }).serial;
}
