import type { MakeReply, MakeTask, MakeTasks } from './make-messages.ts';

interface Waiting {
  resolve: (answer: never) => void;
  reject: (fault: Error) => void;
}

/** The page's end of the worker that makes forms. The worker starts with the first thing that is asked of it. */
export class MakeDesk {
  #worker: Worker | undefined;
  #number = 0;
  readonly #waiting = new Map<number, Waiting>();

  /** Asks the worker. Rejects with its words when something is amiss, and when it cannot be had at all. */
  ask<Task extends MakeTask>(task: Task, ask: MakeTasks[Task]['ask']): Promise<MakeTasks[Task]['answer']> {
    const number = this.#number++;
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, { resolve, reject });
      this.#started().postMessage({ number, task, ask } satisfies { number: number; task: MakeTask; ask: unknown });
    });
  }

  #started(): Worker {
    if (this.#worker !== undefined) return this.#worker;
    const worker = new Worker(new URL('./make-worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<MakeReply>) => this.#take(data));
    worker.addEventListener('error', () => this.#failed());
    return (this.#worker = worker);
  }

  #take(reply: MakeReply): void {
    const waiting = this.#waiting.get(reply.number);
    this.#waiting.delete(reply.number);
    if ('fault' in reply) waiting?.reject(new Error(reply.fault));
    else waiting?.resolve(reply.answer as never);
  }

  /** A worker that failed is given up: the next thing asked starts another. */
  #failed(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    for (const { reject } of this.#waiting.values()) reject(new Error('What makes forms could not be started.'));
    this.#waiting.clear();
  }
}
