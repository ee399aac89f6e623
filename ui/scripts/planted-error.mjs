// svelte-check has been seen to pass because it looked at nothing. This plants known type errors and requires that
// both checkers find them, so that a green check means something.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const ui = fileURLToPath(new URL('..', import.meta.url));

/** Runs one checker on the planted files and returns what is missing from its answer. */
function missing(name, args, expected) {
  const script = fileURLToPath(new URL(`../node_modules/${args[0]}`, import.meta.url));
  const run = spawnSync(process.execPath, [script, ...args.slice(1)], { cwd: ui, encoding: 'utf8' });
  if (run.error) return [`${name} did not start: ${run.error.message}`];
  const output = `${run.stdout}${run.stderr}`;
  const faults = [];
  if (run.status === 0) faults.push(`${name} passed on files with planted errors`);
  for (const text of expected) {
    if (!output.includes(text)) faults.push(`${name} did not report "${text}":\n${output}`);
  }
  return faults;
}

const faults = [
  ...missing(
    'svelte-check',
    ['svelte-check/bin/svelte-check', '--workspace', 'fixtures/planted', '--tsconfig', 'tsconfig.json'],
    ["Type 'string' is not assignable to type 'number'", "Property 'missing' does not exist"],
  ),
  ...missing(
    'tsc',
    ['typescript/bin/tsc', '--noEmit', '--project', 'fixtures/planted/tsconfig.json'],
    ["planted.ts(2,14): error TS2322: Type 'string' is not assignable to type 'number'"],
  ),
];

if (faults.length > 0) {
  console.error(faults.join('\n'));
  process.exit(1);
}
console.log('planted type errors: found by svelte-check and by tsc, as they must be');
