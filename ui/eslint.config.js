import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

export default ts.config(
  { ignores: ['dist/', 'node_modules/', 'src/bindings/', 'fixtures/'] },
  js.configs.recommended,
  ...ts.configs.strict,
  ...svelte.configs.recommended,
  ...svelte.configs.prettier,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      // TypeScript knows undefined names better than eslint does.
      'no-undef': 'off',
      eqeqeq: 'error',
      'no-console': ['error', { allow: ['error'] }],
      'svelte/no-at-html-tags': 'error',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig } },
    rules: {
      // A style="..." literal is refused by the content policy; style:property goes through the object model and works.
      'no-restricted-syntax': [
        'error',
        {
          selector: 'SvelteAttribute[key.name="style"]',
          message: 'A style attribute is refused by the content policy: use a class, or style:property.',
        },
      ],
    },
  },
  {
    // One file talks to the shell, so that every screen can be tested without a window.
    files: ['src/**/*.ts', 'src/**/*.svelte'],
    ignores: ['src/lib/bridge.ts', 'src/lib/bridge.test.ts'],
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              group: ['@tauri-apps/*'],
              message: 'Only src/lib/bridge.ts talks to the shell: call a function of it.',
            },
          ],
        },
      ],
      'no-restricted-globals': [
        'error',
        { name: '__TAURI_INTERNALS__', message: 'Only src/lib/bridge.ts talks to the shell.' },
      ],
    },
  },
  { files: ['scripts/**'], rules: { 'no-console': 'off' } },
);
