import { defineConfig } from 'vitest/config';

const project = (name: string, more: object = {}) => ({
  test: { name, include: [`tests/${name}/**/*.test.ts`], root: new URL('..', import.meta.url).pathname, ...more },
});

export default defineConfig({
  test: {
    projects: [project('unit'), project('published'), project('content')],
  },
});
