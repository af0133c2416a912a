import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { jarsNamed } from '../bits/jars-of.ts'
import { DEEDS } from '../lexicon/lexicon.ts'
import { withOption } from './change-call.ts'
import { callReading, type Rule } from './rule.ts'

/** Steps that are told alike of another jar, where no amount was told with them. */
const ALIKE = /^jar (?:shake|strain|filter|open)$/
const SHOWN = /^jar (?:show|label|tag)$/

const MOST_WORDS = 7

const ALSO =
  /^(?:(?:and|e|ed|plus|also|then|anche|pure|poi) )+(?:the |my |il |lo |la |l |al |allo |alla )?|^(?:and |e )?(?:the )?(?:same|idem|stesso|stessa cosa)\b|\b(?:too|as well|also|likewise|anche|pure)$/u

/** `And the lemon` behind `shook the ginger`: the same of that jar. */
export const sameOfOther: Rule = ({ bits, jars, typed, has }, last) => {
  const words = wordsFrom(typed)
    .replace(/[.!?,\s]+$/u, '')
    .trim()
  const [named, another] = jarsNamed(bits, jars)
  if (named === undefined || another !== undefined || bits.length !== 1) return null
  if (typed.tokens.filter(({ kind }) => kind === 'word').length > MOST_WORDS || !ALSO.test(words)) return null
  if (has(...DEEDS, 'denial', 'hypothesis', 'remind')) return null
  if (SHOWN.test(last.command)) return callReading(withOption(last, 'jar', named.jar.name))
  const isPlain = Object.keys(last.options).every((option) => option === 'jar' || option === 'when')
  const isAsked = typed.tokens.some(({ text }) => text === '?') || has('asking')
  if (!ALIKE.test(last.command) || !isPlain || isAsked) return null
  return callReading(withOption(last, 'jar', named.jar.name), 'record')
}
