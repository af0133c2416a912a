import { editDistance } from '../../../core/spelling/edit-distance.ts'

/** Typed names longer than this have no near relative. */
const LONGEST = 40

/** The known name that was most likely meant, or null where none is close. */
export const nearest = (typed: string, known: readonly string[]): string | null => {
  const name = typed.toLowerCase()
  if (name.length < 2 || name.length > LONGEST) return null
  let found: string | null = null
  let least = Math.max(1, Math.floor(name.length / 3)) + 1
  for (const candidate of known) {
    const steps = editDistance(name, candidate)
    if (steps < least) {
      found = candidate
      least = steps
    }
  }
  if (found !== null) return found
  const begun = known.filter((candidate) => candidate.startsWith(name))
  return begun.length === 1 ? begun[0]! : null
}
