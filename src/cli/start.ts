import { spawn } from 'node:child_process';
import { readArguments } from './arguments.ts';
import { buildSite } from './build-site.ts';

const help = `npm start

Builds the whole site (see npm run build -- --help) and serves it at
http://localhost:4321 until it is stopped with Ctrl+C.

  PORT=8080   another port
  --help      this text`;

/** Builds, then serves until it is stopped. */
function main(): void {
  const { options, problem } = readArguments([], 0);
  if (options.has('help')) print(help, 0);
  else if (problem !== undefined) print(problem, 1);
  else if (buildSite() === 0) serve();
  else process.exitCode = 1;
}

/** Serves dist/; a signal that would stop this program stops the server too, so that none is left behind. */
function serve(): void {
  const server = spawn('astro', ['preview'], { stdio: 'inherit' });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => server.kill(signal));
  server.on('exit', (code) => (process.exitCode = code ?? 0));
}

function print(text: string, code: number): void {
  process.stdout.write(`${text}\n`);
  process.exitCode = code;
}

main();
