import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compileProgram, type ProgramOptions, runTool } from './compileProgram.js';
import { controllerTools, hasHostCompiler } from './tools.js';

interface Emulation extends ProgramOptions {
  /** From reset on, s. */
  readonly seconds: number;
  /** Voltage of the wiper at a time from reset, s, in V from 0 to 5: the controller's own supply is 5 V. */
  readonly signalVolts: (t: number) => number;
  /** Voltage across the sensor's end terminals, V from 0 to 5. */
  readonly supplyVolts: number;
}

/** From reset to the moment of the first signal's sample, s: the time at which the first stamp is told. */
export const firstSampleAt = 0.000598;

/** Why nothing can be emulated on this machine, if so. */
export function whyNoEmulation(): string | undefined {
  const tools = controllerTools();
  if ('why' in tools) return tools.why;
  return hasHostCompiler ? undefined : 'no C compiler (cc) to build the emulator with';
}

/** What the 8-bit program sends on its serial line while its inputs are at these voltages. */
export async function emulate(emulation: Emulation): Promise<Uint8Array> {
  const { seconds, signalVolts, supplyVolts } = emulation;
  const tools = controllerTools();
  if ('why' in tools) throw new Error(tools.why);
  const folder = mkdtempSync(join(tmpdir(), 'truesweep-controller-'));
  try {
    const program = compileProgram('core8.elf', folder, emulation);
    const source = fileURLToPath(new URL('emulator.c', import.meta.url));
    const emulator = join(folder, 'emulator');
    const strict = ['-O2', '-Wall', '-Wextra', '-Werror'];
    runTool('cc', [...strict, '-o', emulator, source, ...tools.emulatorFlags]);
    const points = Float64Array.from({ length: Math.ceil(seconds * 1e5) + 2 }, (_, i) =>
      signalVolts(i / 1e5),
    );
    const args = [program, String(seconds), String(supplyVolts)];
    return runTool(emulator, args, new Uint8Array(points.buffer));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
