/** A queue that gives the entry with the least key first; of equal keys the one with the larger tie, then the older. */
export interface Queue {
  push(entry: number, key: number, tie: number): void;
  /** The next entry with the key it was put in with; undefined when there is none. */
  pop(): { entry: number; key: number } | undefined;
}

interface Waiting {
  entry: number;
  key: number;
  tie: number;
  age: number;
}

const sooner = (a: Waiting, b: Waiting): boolean =>
  a.key !== b.key ? a.key < b.key : a.tie !== b.tie ? a.tie > b.tie : a.age < b.age;

function sift(heap: Waiting[], x: Waiting, size: number): void {
  let i = 0;
  for (let child = 1; child < size; child = 2 * i + 1) {
    if (child + 1 < size && sooner(heap[child + 1]!, heap[child]!)) child++;
    if (!sooner(heap[child]!, x)) break;
    heap[i] = heap[child]!;
    i = child;
  }
  heap[i] = x;
}

/** An empty queue (a binary heap). */
export function emptyQueue(): Queue {
  const heap: Waiting[] = [];
  let age = 0;
  return {
    push(entry, key, tie) {
      const x = { entry, key, tie, age: age++ };
      let i = heap.push(x) - 1;
      for (let parent = (i - 1) >> 1; i > 0 && sooner(x, heap[parent]!); parent = (i - 1) >> 1) {
        heap[i] = heap[parent]!;
        i = parent;
      }
      heap[i] = x;
    },
    pop() {
      const first = heap[0];
      const last = heap.pop();
      if (last !== undefined && heap.length > 0) sift(heap, last, heap.length);
      return first;
    },
  };
}
