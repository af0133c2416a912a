import { isOver, jarsNamed } from '../bits/jars-of.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from './change-call.ts'
import { callReading, type Rule } from './rule.ts'

const MOST_WORDS = 6

/** `The lemon`, behind a trouble of no jar: which one it is. */
export const troubleJar: Rule = ({ bits, jars, typed, has }, last) => {
  if (last.command !== 'trouble' || last.options.jar !== undefined) return null
  const [named, another] = jarsNamed(bits, jars)
  const isOnly = bits.length === 1 && typed.tokens.filter(({ kind }) => kind === 'word').length <= MOST_WORDS
  if (named === undefined || another !== undefined || !isOnly || isOver(named.jar)) return null
  if (has(...DEEDS, 'asking', 'how_much', 'how_long', 'show_jar')) return null
  return callReading(withOption(last, 'jar', named.jar.name))
}
