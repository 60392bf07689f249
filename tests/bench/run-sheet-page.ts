import { launchChromium } from '../chromium.ts';
import { serveFolder } from '../serve.ts';
import { requireLibrary } from '../../src/library/load.ts';

const usage = `node tests/bench/run-sheet-page.ts [DIR]

Times the page of run sheets of a built site (default "dist") in Chromium, its processor slowed to a quarter: from a
choice to the new sheet in the page, the planner and the making of the sheet included. Each stock examination is chosen
several times; the least and the middle time are printed in milliseconds. Nothing else should run on the machine.`;

/** How much slower than this machine a phone is taken to be. */
const slower = 4;
const turns = 9;

interface Times {
  least: number;
  middle: number;
}

async function main(folder: string): Promise<void> {
  const forms = requireLibrary('content').forms.map(({ id }) => id);
  const site = await serveFolder(folder, '/');
  const browser = await launchChromium();
  const page = await browser.newPage({ viewport: { width: 412, height: 915 } });
  await page.goto(`${site.url}plan/`);
  await page.locator('run-sheet-maker .act-now').first().waitFor();
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  for (const form of forms) {
    const times: number[] = [];
    for (let turn = 0; turn < turns; turn++) times.push(await choose(form));
    const { least, middle } = timesOf(times);
    console.log(
      `${form.padEnd(24)} least ${least.toFixed(0).padStart(4)} ms, middle ${middle.toFixed(0).padStart(4)} ms`,
    );
  }
  await browser.close();
  await site.close();

  /** Chooses another examination first, so that the sheet is a new one, and reads the page's own record of times. */
  async function choose(form: string): Promise<number> {
    const select = page.locator('select[name=form]');
    for (const value of [forms.find((other) => other !== form) ?? form, form]) {
      await page.evaluate('performance.clearMeasures()');
      await select.selectOption(value);
      await page.waitForFunction(() => performance.getEntriesByName('run-sheet').length > 0);
    }
    return page.evaluate<number>('performance.getEntriesByName("run-sheet").at(-1).duration');
  }
}

function timesOf(times: readonly number[]): Times {
  const sorted = times.toSorted((a, b) => a - b);
  return { least: sorted[0] ?? NaN, middle: sorted[Math.floor(sorted.length / 2)] ?? NaN };
}

if (process.argv.includes('--help')) console.log(usage);
else await main(process.argv[2] ?? 'dist');
