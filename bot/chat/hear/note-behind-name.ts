import type { Invocation } from '../../calls/invocation.ts'
import type { AllProblems } from '../../text/language.ts'
import type { Heard } from './heard.ts'

/**
 * `/jar note plum smelled of paint thinner`: what stands behind the name of a jar is the note, though nobody wrote `note:`. Null where
 * another command was typed, it was read, or no jar's name stands before something.
 */
export function noteBehindName(typed: Invocation | null, { outcome }: Heard): Invocation | null {
  if (typed?.path !== 'jar note' || outcome.ok || outcome.error.problem !== 'no_such_jar') return null
  const { jar, note, ...others } = typed.options
  const { begun } = outcome.error.values as AllProblems['no_such_jar']
  if (jar === undefined || note !== undefined || begun === undefined) return null
  const rest = jar
    .trim()
    .normalize('NFC')
    .slice(begun.name.length)
    .replace(/^[\s,:;.–-]+/u, '')
  return rest === '' ? null : { path: typed.path, options: { jar: begun.name, ...others, note: rest } }
}
