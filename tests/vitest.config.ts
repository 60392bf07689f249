import { defineConfig } from 'vitest/config';

const root = new URL('..', import.meta.url).pathname;

const project = (name: string, more: object = {}): object => ({
  test: { name, root, include: [`tests/${name}/**/*.test.ts`], testTimeout: 30_000, ...more },
});

/** `browser` looks at the built site: it is built once, before, at the root and below a path. */
export default defineConfig({
  test: {
    root,
    projects: [
      project('unit'),
      project('published'),
      project('content'),
      project('browser', { globalSetup: 'tests/set-up.ts', testTimeout: 120_000, hookTimeout: 120_000 }),
    ],
  },
});
