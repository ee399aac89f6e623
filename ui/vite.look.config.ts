// The page without the shell, to look at it: commands are answered by src/fixtures. Never part of a release.
//   npx vite --config vite.look.config.ts      then open /look.html#<scene>
import { fileURLToPath } from 'node:url';
import { mergeConfig } from 'vite';
import base from './vite.config';

export default mergeConfig(base, {
  resolve: {
    alias: { '@tauri-apps/api/core': fileURLToPath(new URL('./src/fixtures/core.ts', import.meta.url)) },
  },
  server: { port: 5199 },
  build: {
    outDir: 'dist-look',
    rolldownOptions: { input: fileURLToPath(new URL('./look.html', import.meta.url)) },
  },
});
