/**
 * A short digest of a text for revisions and answer keys (two FNV-1a runs of 32 bits): tells
 * apart what changed by accident, and is no defence against someone who tries.
 */
export function digest(text: string): string {
  return run(text, 0x811c9dc5) + run(text, 0x2f4c6b91);
}

function run(text: string, seed: number): string {
  let h = seed;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return (h >>> 0).toString(16).padStart(8, '0');
}
