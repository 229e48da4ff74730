import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';

/** What the built page may load: its own files only. The development server needs inline scripts, so it goes without. */
const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self' data: blob:",
  "worker-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'self'",
].join('; ');

const contentPolicy: Plugin = {
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
};

export default defineConfig({
  plugins: [react(), contentPolicy],
  base: './',
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    chunkSizeWarningLimit: 1200,
    assetsInlineLimit: 0,
    rolldownOptions: {
      treeshake: {
        // Core and store do nothing when they are read in, so what a page does not use (validators, solids) stays out.
        moduleSideEffects: (id) =>
          !/\/src\/(core|store)\//.test(id) && !/\/node_modules\/(zod|yaml|manifold-3d)\//.test(id),
      },
    },
  },
});
