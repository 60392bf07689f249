/** Takes what the typesetter made, by a name that stands for everything it was made from, and gives it back. */
export interface Keeper {
  read: (name: string) => Uint8Array<ArrayBuffer> | undefined;
  write: (name: string, content: Uint8Array) => void;
}
