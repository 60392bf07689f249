import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect } from 'vitest';
import { launchChromium } from '../chromium.ts';
import { serveFolder, type Served } from '../serve.ts';
import { editions, siteFolder, type Edition } from '../site.ts';

/** Names of the editions, for `describe.each`. */
export const editionNames = Object.keys(editions) as Edition[];

/** How a page is met. */
export interface Manner {
  /** Pixels of the window; default 1280. */
  width?: number;
  dark?: boolean;
  scripts?: boolean;
}

/** Both editions, served and open in one browser for as long as a test file runs. */
export interface OpenSites {
  /** Address of an edition's root, which ends in a slash. */
  url(edition: Edition): string;
  /**
   * Opens a page in a fresh profile, hands it over and closes it. Fails on an error of the page or its console, on a
   * breach of its policy, on an answer of 400 or more, and on any request that leaves the base path; such requests are
   * refused, so that none reaches a network.
   */
  visit<T>(edition: Edition, path: string, manner: Manner, see: (page: Page) => Promise<T>): Promise<T>;
  /** Opens pages one after another in one window, which is quicker; gives all that was amiss, each with its page. */
  tour(edition: Edition, paths: readonly string[], see: (page: Page) => Promise<void>): Promise<string[]>;
}

/** Opens the sites before the tests of the file that calls this and closes them after. To be called once, at its top. */
export function openSites(): OpenSites {
  const served = new Map<Edition, Served>();
  let browser: Browser | undefined;
  beforeAll(async () => {
    for (const edition of editionNames) served.set(edition, await serveFolder(siteFolder(edition), editions[edition]));
    browser = await launchChromium();
  });
  afterAll(async () => {
    await browser?.close();
    for (const site of served.values()) await site.close();
  });
  const url = (edition: Edition): string => served.get(edition)?.url ?? '';
  return {
    url,
    async visit(edition, path, manner, see) {
      if (browser === undefined) throw new Error('The browser is not open.');
      const { context, amiss } = await watched(browser, url(edition), manner);
      try {
        const page = await context.newPage();
        await open(page, url(edition) + path);
        return await see(page);
      } finally {
        await context.close();
        if (amiss.length > 0) expect.fail(`Amiss at /${path}:\n${amiss.join('\n')}`);
      }
    },
    async tour(edition, paths, see) {
      if (browser === undefined) throw new Error('The browser is not open.');
      const { context, amiss } = await watched(browser, url(edition), {});
      const page = await context.newPage();
      const all: string[] = [];
      for (const path of paths) {
        await open(page, url(edition) + path);
        await see(page);
        // What a page does late is told of it before the next is opened.
        await page.evaluate('new Promise((done) => requestIdleCallback(() => setTimeout(done)))');
        if (path === paths.at(-1)) await page.waitForLoadState('networkidle');
        all.push(...amiss.splice(0).map((what) => `/${path}: ${what}`));
      }
      await context.close();
      return all;
    },
  };
}

async function open(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.evaluate('document.fonts.ready');
  // A live part that is still at work says so.
  await page.locator('[aria-busy=true]').waitFor({ state: 'detached' });
}

interface Watched {
  context: BrowserContext;
  /** Everything that must not happen, in words. */
  amiss: string[];
}

/** Tells a breach of the page's policy before anything else in the page runs. */
const tellBreaches = `addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sourceFile }) =>
  tellBreach(\`policy: \${effectiveDirective} \${blockedURI} \${sourceFile}\`))`;

async function watched(browser: Browser, root: string, manner: Manner): Promise<Watched> {
  const { width = 1280, dark = false, scripts = true } = manner;
  const context = await browser.newContext({
    viewport: { width, height: 844 },
    colorScheme: dark ? 'dark' : 'light',
    javaScriptEnabled: scripts,
    acceptDownloads: true,
  });
  const amiss: string[] = [];
  const inside = (url: string): boolean => url.startsWith(root) || /^(data|blob):/.test(url);
  await context.exposeBinding('tellBreach', (_source, breach: string) => amiss.push(breach));
  await context.addInitScript(tellBreaches);
  await context.route(
    ({ href }) => !inside(href),
    (route) => route.abort(),
  );
  context.on('request', (request) => inside(request.url()) || amiss.push(`outside: ${request.url()}`));
  context.on(
    'response',
    (response) => response.status() < 400 || amiss.push(`${response.status()}: ${response.url()}`),
  );
  context.on('weberror', (error) => amiss.push(`error: ${error.error().message}`));
  context.on('console', (message) => message.type() === 'error' && amiss.push(`console: ${message.text()}`));
  context.on('page', (page) => page.on('websocket', (socket) => amiss.push(`socket: ${socket.url()}`)));
  return { context, amiss };
}
