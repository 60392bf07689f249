import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { At } from '../faults.ts';
import { parseYaml } from '../yaml-table.ts';

/** Where a clinic's file writes what stands at a path in it; the start of the file for what is not written. */
export function clinicPlaces(root: string, id: string): (path: readonly PropertyKey[]) => At {
  const inside = `clinics/${id}/clinic.yaml`;
  const file = `${root.replaceAll('\\', '/').replace(/\/+$/, '')}/${inside}`;
  const start = { file, line: 1, column: 1 };
  if (!existsSync(join(root, inside))) return () => start;
  // Its faults are filed where the content is read.
  const yaml = parseYaml(readFileSync(join(root, inside), 'utf8'), file, () => undefined);
  return (path) => yaml?.at(path) ?? start;
}
