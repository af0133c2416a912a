import { clean } from '../../text/clean.ts'
import type { Face, Typefaces } from './typefaces.ts'

interface Named {
  readonly id: string
  readonly name: string
}

/** A jar's name for its owner: where signs of it cannot be drawn its id stands first, alone where no letter is left. */
export function ownName(faces: Typefaces, { id, name }: Named, face: Face): string {
  const { text, lacks } = faces.drawn(clean(name), face)
  if (!lacks) return name
  return /[\p{L}\p{N}]/u.test(text) ? `#${id} ${name}` : `#${id}`
}
