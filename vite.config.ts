import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import { PAGE_POLICY } from './scripts/lib/web.mjs';

/** The development server needs inline scripts, so it goes without. */
const contentPolicy: Plugin = {
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: PAGE_POLICY.join('; ') },
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
