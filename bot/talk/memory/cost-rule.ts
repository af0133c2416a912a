import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsOf } from '../bits/jars-of.ts'
import { leftOutOf } from '../frames/left-out.ts'
import { prices } from '../frames/price-slots.ts'
import type { CallRead } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { callReading, type Rule } from './rule.ts'

/** Asked in words that nothing but a price answers: `what does that come to`. */
const ASKED =
  /^(?:(?:so|and|now|ok|well|e|ora|the|il) )*costs? |\b(?:what|how much)\b.*\b(?:come to|set(?:ting)? (?:me|us) back|cost|costs|costing|spend|spending|pay)\b|\bquanto\b.*\b(?:cost\p{L}*|spend\p{L}*|viene|verrebbe|pago|paghiamo)\b/u

/** The same, of the whole of it. */
const OF_MONEY =
  /\bhow much (?:money|cash|dosh)\b|\b(?:price ?wise|moneywise|whats the damage|break the bank|out of pocket)\b|\bball ?park (?:cost|price|figure)\b|\b(?:is|would|will) (?:it|that|this|all that) (?:be )?(?:very |really |too )?(?:dear|expensive|cheap|pricey|costly)\b|\b(?:dear|expensive|pricey|costly) to make\b|\b(?:what|how much)\b.*\b(?:run|rush|sting|set|running|rushing|setting|knocking) (?:me|us)(?: back)?\b|\b(?:the|whats the|a) (?:bill|price|outlay|tab)\b|\bin money(?: terms)?\b|\bmoney terms\b|\bhow much\b.*\bin for\b|\b(?:in|into|of) (?:my|our|me) (?:pocket|purse|wallet)\b|\b(?:under|below|within|less than|for) \d+ ?(?:quid|euros?|bucks|dollars)\b|\bche spesa\b|\bquanti (?:soldi|euro)\b|\bcost\p{L}* (?:tanto|molto|poco|un occhio|un patrimonio)\b|\bprezzo\b|\be (?:molto )?(?:caro|costoso)\b/u

/** Words that ask what is paid. */
const ASKS =
  /^(?:cost\p{L}*|spend\p{L}*|spent|paid|pay|pago|paghiamo|viene|money|cash|dosh|price|wise|pricewise|moneywise|damage|bank|break|ballpark|dear|expensive|pricey|cheap|looking|figure|pocket|roughly|run|rush|sting|shebang|caboodle|bill|tab|outlay|purse|wallet|dig|deep|quid|bucks|soldi|occhio|patrimonio|prezzo|spesa|caro|costoso)$/iu

/** A plan by its code, as the answer offered it, and the bottles that it was asked for. */
export function codeOf({ command, options }: CallRead, offered: readonly CallRead[]): CallRead['options'] | null {
  const { plan } = options
  if (command === 'cost' && plan !== undefined) return { plan }
  const listed = command === 'shopping' ? options : offered.find((each) => each.command === 'shopping')?.options
  const code = listed?.plans
  if (code === undefined || /[\s+]/.test(code)) return null
  return { plan: code, ...(listed?.bottles !== undefined && { bottles: listed.bottles }) }
}

/** A jar is named that nothing of the recipe, and no price, is of. */
const isOfJar = ({ bits, jars }: Sentence, of: string, priced: readonly unknown[]): boolean =>
  bits.some(
    (bit) =>
      (bit.kind === 'jar' || bit.kind === 'plant') &&
      !priced.includes(bit) &&
      !of.includes(bit.text.toLowerCase()) &&
      jarsOf(bit, jars).length > 0,
  )

const isAskedFor = ({ typed }: Sentence): boolean =>
  ASKED.test(wordsFrom(typed)) || OF_MONEY.test(plainWords(typed.text.toLowerCase()))

/** `What does that cost with vodka $24 a handle`: of the plan that was shown last, whatever jars there are. */
export const costed: Rule = (sentence, last, { offered }) => {
  const code = codeOf(last, offered)
  if (code === null || sentence.has('to_buy')) return null
  const told = prices(sentence, 'cost')
  const isMore = last.command === 'cost' && told !== null
  if (!isMore && !sentence.has('cost_me') && !isAskedFor(sentence)) return null
  if (isOfJar(sentence, last.options.of?.toLowerCase() ?? '', told?.bits ?? [])) return null
  const call: CallRead = { command: 'cost', options: { ...code, ...(told !== null && { prices: told.text }) } }
  const leftOut = leftOutOf(sentence, [...(told?.bits ?? []), ...sentence.bits.filter(isThing)])
  // `A handle`, `a fifth`: for how much a price is.
  const priced = told?.text.toLowerCase() ?? ''
  return callReading(
    call,
    'compute',
    leftOut.filter((word) => !ASKS.test(word) && !priced.includes(word.toLowerCase())),
  )
}

/** The whole of it is on the bill. */
const isThing = ({ kind }: Sentence['bits'][number]): boolean => kind === 'plant' || kind === 'bottles'
