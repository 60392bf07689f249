/** How a template says "here is a field": a link to `field:NAME`, or `field:NAME:INDEX` for one box of a radio group. */
export interface FieldAddress {
  name: string;
  /** Which option of a radio group, from 0. */
  option?: number;
}

const pattern = /^field:([^:]+)(?::(\d+))?$/;

/** The link address of a field, or of one option of a radio group. */
export const fieldAddress = (name: string, option?: number): string =>
  option === undefined ? `field:${name}` : `field:${name}:${option}`;

/** The field that a link address means; undefined for an ordinary link. */
export function parseFieldAddress(address: string): FieldAddress | undefined {
  const [, name, option] = pattern.exec(address) ?? [];
  if (name === undefined) return undefined;
  return option === undefined ? { name } : { name, option: Number(option) };
}
