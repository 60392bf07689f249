// @ts-check
import process from 'node:process';
import mdx from '@astrojs/mdx';
import { defineConfig } from 'astro/config';

/** Packages with compiled code or data files of their own: Node loads them, the bundler leaves them alone. */
const loadedByNode = ['@myriaddreamin/typst-ts-node-compiler', 'pagefind', 'piscina', 'subset-font'];

/** A script fetched later has no style sheet to wait for: Vite's helper for that (0.7 KB) gives way to a bare import. */
const plainImports = {
  name: 'plain-imports',
  enforce: /** @type {const} */ ('pre'),
  load: (/** @type {string} */ id) =>
    id === '\0vite/preload-helper.js' ? 'export const __vitePreload = (load) => load();' : undefined,
};

export default defineConfig({
  output: 'static',
  // Canonical links of pages only; forms carry a fixed address of their own.
  ...(process.env.SITE_URL ? { site: process.env.SITE_URL } : {}),
  base: process.env.BASE_PATH ?? '/',
  trailingSlash: 'always',
  server: { port: Number(process.env.PORT ?? 4321) },
  integrations: [mdx()],
  // Highlighted code would come with style attributes, which the policy below refuses.
  markdown: { syntaxHighlight: false },
  // A line break in a template stays a space, as in HTML: the formatter may wrap lines anywhere.
  compressHTML: true,
  devToolbar: { enabled: false },
  build: { format: 'directory', inlineStylesheets: 'never' },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'self'",
      ],
      // The search index is WebAssembly.
      scriptDirective: { resources: ["'self'", "'wasm-unsafe-eval'"] },
    },
  },
  vite: {
    plugins: [plainImports],
    // An inlined script could no longer import the search index by its own address.
    build: { assetsInlineLimit: 0 },
    // The worker that makes forms fetches each format when it is asked for.
    worker: { format: 'es' },
    ssr: { external: loadedByNode },
    // Found only at the first mistyped look-up otherwise, and the development server would answer that one late.
    optimizeDeps: { include: ['damerau-levenshtein'] },
  },
});
