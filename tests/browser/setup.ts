import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { browserOptions } from './chromium.js';
import { serve } from './serve.js';

declare module 'vitest' {
  interface ProvidedContext {
    /** Where the tests reach the running browser. */
    browser: string;
    /** Address of the start page of the served site. */
    site: string;
  }
}

/** A browser whose fonts are missing measures every text as nothing, and each later check would be worthless. */
async function checkText(browser: Browser) {
  const page = await browser.newPage();
  await page.setContent('<span id="line">4.7 kΩ µs</span>');
  const box = await page.locator('#line').boundingBox();
  await page.close();
  if (!box || box.height < 5 || box.width < 20)
    throw new Error(
      'The browser draws no text: it finds no fonts. Set TRUESWEEP_BROWSER to another.',
    );
}

export default async function setup(project: TestProject) {
  const site = fileURLToPath(new URL('../../site/dist', import.meta.url));
  if (!existsSync(site))
    throw new Error('The site is not built; `npm test` builds it before the browser tests.');
  const host = await chromium.launchServer(await browserOptions()).catch((error: Error) => {
    throw new Error(
      `No browser started for the browser tests. Set TRUESWEEP_BROWSER to the path of a Chromium-based browser. ${error.message}`,
    );
  });
  const browser = await chromium.connect(host.wsEndpoint());
  process.stdout.write(`Browser: Chromium ${browser.version()}\n`);
  await checkText(browser);
  await browser.close();

  const { server, url } = await serve(site, '/truesweep/');
  project.provide('browser', host.wsEndpoint());
  project.provide('site', url);
  return async () => {
    server.close();
    await host.close();
  };
}
