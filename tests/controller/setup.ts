import { controllerTools, hasHostCompiler } from './tools.js';

/** Finds or fetches the tools before any file of tests asks for them, and says why tests are skipped. */
export default function setup() {
  const tools = controllerTools();
  if ('why' in tools) console.warn(`Tests of the controllers' programs are skipped: ${tools.why}.`);
  if (!hasHostCompiler)
    console.warn('Tests of code shared by the controllers are skipped: no C compiler (cc).');
}
