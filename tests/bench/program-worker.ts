import { parentPort, workerData } from 'node:worker_threads';
import { solveProgram } from '../unit/plan/mixed-integer.ts';

/** Solves one program for a measurement, in a thread of its own that can be stopped when the solver does not stop itself. */
const { program, seconds } = workerData as { program: string; seconds: number };
parentPort?.postMessage(solveProgram(program, seconds));
