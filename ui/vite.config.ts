import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const repository = fileURLToPath(new URL('..', import.meta.url));

export default defineConfig({
  plugins: [svelte(), svelteTesting()],
  resolve: {
    alias: {
      $lib: fileURLToPath(new URL('./src/lib', import.meta.url)),
      $locales: fileURLToPath(new URL('../locales', import.meta.url)),
    },
  },
  clearScreen: false,
  server: {
    port: 5173,
    strictPort: true,
    // The sentences (locales/) stand beside ui/, so that paper and screens read the same ones.
    fs: { allow: [repository] },
  },
  build: {
    // The oldest web view that the shell opens in: WebKitGTK 2.40 and macOS 13 are both Safari 16.
    target: 'safari16',
    // The content policy forbids data: addresses and inline scripts, so everything stays a file of its own.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  test: {
    environment: 'happy-dom',
    include: ['src/**/*.test.ts'],
    restoreMocks: true,
  },
});
