/** What a worklet's own scope has. */
declare const registerProcessor: (name: string, made: new () => object) => void;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}

/** So many samples go on together: 40 ms at common rates. */
const together = 2048;

/** Hands the samples of a sound input on to the port that it is given first. */
class SoundInput extends AudioWorkletProcessor {
  readonly #waiting: MessagePort[] = [];
  #block = new Float32Array(together);
  #filled = 0;

  constructor() {
    super();
    this.port.onmessage = ({ data }: MessageEvent<MessagePort>) => {
      this.#waiting.push(data);
    };
  }

  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    const to = this.#waiting[0];
    const samples = inputs[0]?.[0];
    if (!to || !samples) return true;
    for (const sample of samples) {
      this.#block[this.#filled++] = sample;
      if (this.#filled < together) continue;
      to.postMessage(this.#block, [this.#block.buffer]);
      this.#block = new Float32Array(together);
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor('sound-input', SoundInput);
