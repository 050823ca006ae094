/** Names of options that tell nothing of which is right. */

/** A name such as `o4k1f0x2` for the thing called `name` in a problem: FNV-1a over both, in base 36. It depends on nothing else. */
export function opaqueId(code: string, name: string): string {
  let hash = 0x811c9dc5;
  for (const character of `${code} ${name}`)
    hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  // Names that differ in their last letter would differ in little else.
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash ^= hash >>> 12;
  return `o${(hash >>> 0).toString(36).padStart(7, "0")}`;
}
