import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

const places = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** Nothing but the page under test may use the network. */
const quiet = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-gpu',
  '--disable-quic',
  '--disable-sync',
  '--no-first-run',
  '--no-sandbox',
];

/** Path of a Chromium on this machine: `CHROMIUM` when set, else the usual places. */
export function findChromium(): string | undefined {
  const named = process.env['CHROMIUM'];
  return named !== undefined && named !== '' ? named : places.find((path) => existsSync(path));
}

/** Starts Chromium without any traffic of its own. Throws when there is none. */
export function launchChromium(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === undefined)
    throw new Error('No Chromium found. Run "npm test", which installs one or says how.');
  return chromium.launch({ executablePath, args: quiet });
}
