/** Digits and small letters without i, l, o and u, which are misread. */
const ALPHABET = '0123456789abcdefghjkmnpqrstvwxyz'
const LENGTH = 5

/** FNV-1a over UTF-16 units, then the finalizer of MurmurHash3, so that every bit depends on every other. */
function hash32(text: string): number {
  let hash = 0x811c9dc5
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193)
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b)
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35)
  return (hash ^ (hash >>> 16)) >>> 0
}

/** A jar's id, the same for the same seed, and never one that is taken. `seed`: what makes the jar itself, as its name and instant. */
export function newJarId(seed: string, taken: readonly string[]): string {
  const others = new Set(taken)
  for (let attempt = 0; ; attempt++) {
    const hash = hash32(`${attempt} ${seed}`)
    const id = Array.from({ length: LENGTH }, (_, place) => ALPHABET[(hash >>> (5 * place)) & 31]).join('')
    if (!others.has(id)) return id
  }
}
