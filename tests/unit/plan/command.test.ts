import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { text as textOf } from 'node:stream/consumers';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plan as planSchema } from '../../../schemas/plan.ts';

/** The command reads the folder `content` where it is run: here, the small invented library. */
let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'run-sheet-'));
  symlinkSync(resolve('tests/fixtures/content'), join(folder, 'content'));
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

function run(arguments_: string[], input = ''): { status: number | null; out: string } {
  const { status, stdout } = spawnSync(process.execPath, [resolve('src/cli/plan.ts'), ...arguments_], {
    cwd: folder,
    encoding: 'utf8',
    input,
  });
  return { status, out: stdout };
}

describe('npm run plan', () => {
  it('prints a run sheet from standard input', () => {
    const first = run(['-'], '{"systems":["wrist"]}');
    expect(first.status).toBe(0);
    const sheet = planSchema.parse(JSON.parse(first.out));
    expect(sheet.steps.map(({ manoeuvre }) => manoeuvre)).toContain('wrist-look');
    expect(sheet.optimal.positionSeconds).toBe(true);
  });

  it('reads a file, with or without a byte order mark, and prints the same each time', () => {
    writeFileSync(join(folder, 'plain.json'), '{"form":"whole"}');
    writeFileSync(join(folder, 'marked.json'), '\uFEFF{"form":"whole"}');
    const plain = run(['plain.json']);
    expect(plain.status).toBe(0);
    expect(run(['marked.json'])).toEqual(plain);
  });

  it('waits for a request that comes slowly, and reads a long one', async () => {
    const child = spawn(process.execPath, [resolve('src/cli/plan.ts'), '-'], { cwd: folder });
    const out = textOf(child.stdout);
    child.stdin.write('{"systems":');
    await new Promise((done) => setTimeout(done, 300));
    child.stdin.end(`["wrist"]}${' '.repeat(1_000_000)}`);
    expect(planSchema.parse(JSON.parse(await out)).steps).not.toHaveLength(0);
  });

  it('lists what cannot be done with the reason and how it can be adapted', () => {
    const { out } = run(['-'], '{"manoeuvres":["wrist-look"],"cannot":["sitting","supine"]}');
    const { steps, leftOut } = planSchema.parse(JSON.parse(out));
    expect(steps).toEqual([]);
    expect(leftOut).toEqual([
      {
        manoeuvre: 'wrist-look',
        reason: expect.stringMatching(
          /^needs one of these positions, and this patient can take none of them: /,
        ) as string,
        adaptations: ['No hand: look at the stump and say so.'],
      },
    ]);
  });

  it('prints one line per fault, with path, line and column, and exits with 1', () => {
    writeFileSync(join(folder, 'bad.json'), '{\n  "form": "hole",\n  "start": "siting"\n}');
    expect(run(['bad.json'])).toEqual({
      status: 1,
      out:
        'bad.json:2:3  form "hole" is not known. Did you mean "whole"?\n' +
        'bad.json:3:3  position "siting" is not known. Did you mean "sitting"?\n',
    });
    expect(run(['-'], '['.repeat(100_000)).out).toBe(
      '-:1:1  This is not JSON that can be read: brackets are nested too deeply.\n',
    );
    expect(run(['-'], '{').out).toBe('-:1:2  This is not JSON: expected a closing brace at the end of the text.\n');
  });

  it('says what it needs when it is called wrongly', () => {
    expect(run(['nowhere.json']).out).toMatch(/^nowhere\.json:1:1 {2}The request cannot be read: /);
    expect(run([]).out).toMatch(/^Name one request file, or - for standard input/);
    expect(run(['a.json', 'b.json']).status).toBe(1);
    expect(run(['--nonsense']).status).toBe(1);
  });

  it('has --help', () => {
    const { status, out } = run(['--help']);
    expect(status).toBe(0);
    expect(out).toContain('"avoidSides"');
  });
});
