import address from './soundInput.worklet.ts?worker&url';

/** A sound input that is listened to. */
export interface SoundInput {
  /** Where its samples come, a `Float32Array` at a time. */
  readonly samples: MessagePort;
  /** Samples a second. */
  readonly rate: number;
  readonly end: () => Promise<void>;
}

/**
 * Opens the sound input as it is: no filter that takes a voice for what is wanted and the rest for noise.
 *
 * @param onEnded Called where it is taken away.
 */
export async function listenToSound(onEnded: () => void): Promise<SoundInput> {
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
  });
  const context = new AudioContext();
  await context.audioWorklet.addModule(address);
  const input = new AudioWorkletNode(context, 'sound-input', {
    numberOfOutputs: 1,
    channelCount: 1,
    channelCountMode: 'explicit',
    channelInterpretation: 'discrete',
  });
  const { port1, port2 } = new MessageChannel();
  input.port.postMessage(port1, [port1]);
  context.createMediaStreamSource(stream).connect(input);
  // A node that leads nowhere is not run; nothing of it is heard.
  input.connect(context.destination);
  await context.resume();
  for (const track of stream.getTracks()) track.addEventListener('ended', onEnded);
  return {
    samples: port2,
    rate: context.sampleRate,
    async end() {
      for (const track of stream.getTracks()) track.stop();
      await context.close();
    },
  };
}
