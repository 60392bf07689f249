import { sha256 as digest } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** JSON with sorted keys and no white space: the same value always gives the same text. */
export function canonicalJson(value: unknown): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map((item) => canonicalJson(item ?? null)).join(',')}]`;
  let parts = '';
  for (const key of Object.keys(value).sort()) {
    const item = (value as Record<string, unknown>)[key];
    if (item !== undefined) parts += `${parts === '' ? '' : ','}${JSON.stringify(key)}:${canonicalJson(item)}`;
  }
  return `{${parts}}`;
}

/** SHA-256 of bytes, or of text as UTF-8, as 64 hex digits; in a browser too, whose own is missing on plain http. */
export function sha256(content: string | Uint8Array): string {
  return bytesToHex(digest(typeof content === 'string' ? utf8ToBytes(content) : content));
}
