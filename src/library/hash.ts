import { sha256 as digest } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** JSON with sorted keys and no white space: the same value always gives the same text. */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((item) => canonicalJson(item ?? null)).join(',')}]`;
  if (typeof value === 'object' && value !== null) {
    const parts = Object.entries(value)
      .filter(([, item]) => item !== undefined)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item)}`);
    return `{${parts.join(',')}}`;
  }
  return JSON.stringify(value);
}

/** SHA-256 of bytes, or of text as UTF-8, as 64 hex digits; in a browser too, whose own is missing on plain http. */
export function sha256(content: string | Uint8Array): string {
  return bytesToHex(digest(typeof content === 'string' ? utf8ToBytes(content) : content));
}
