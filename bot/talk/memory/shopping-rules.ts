import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import { isOver } from '../bits/jars-of.ts'
import { atHome } from '../frames/at-home-slot.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { withOption } from './change-call.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

const BUY = /\b(?:shopping|buy|to get|shop|spesa|comprare|compro)\b/u
const BOTH =
  /\b(?:both|everything|all of (?:it|them|that)|all three|the lot|the two|them all|tutt[oi]|tutt[ei] e due|entramb[ei])\b/u
const STILL = /\b(?:still|else|left|ancora|altro)\b/u
const MOST_WORDS = 14

/** Behind these answers it is told what is at hand. */
const LISTED = /^(?:plan|again|shopping)$/

/** The list that is spoken of: that which was shown, else that of the last batch. */
const listMeant = ({ call, lists }: Remembered): CallRead | null =>
  call?.command === 'shopping' ? call : call !== null && LISTED.test(call.command) ? (lists.at(-1)?.list ?? null) : null

/** `Shopping list for both`: of all batches that were planned in this talk. */
function ofAll({ lists, call }: Remembered): CallRead | null {
  const [first, second] = lists
  if (first === undefined || second === undefined) return null
  const plans = lists.map(({ list }) => list.options.plans!).join(' + ')
  const have = call?.command === 'shopping' ? call.options.have : undefined
  return { command: 'shopping', options: { plans, ...(have !== undefined && { have }) } }
}

/** `Shopping list for both`, `what do I still need to buy`, `I've already got a kilo of sugar`: of what was planned in this talk. */
export function shoppingFor(sentence: Sentence, said: Remembered): TalkReading | null {
  const { bits, typed, has, jars } = sentence
  const words = wordsFrom(typed)
  if (typed.tokens.length > MOST_WORDS || has('before_it')) return null
  const isBuying = has('to_buy') || BUY.test(words)
  const isRunning = jars.some((jar) => !isOver(jar))
  if (isBuying && bits.length === 0) {
    const all = BOTH.test(words) && !isRunning ? ofAll(said) : null
    const one = STILL.test(words) ? listMeant(said) : null
    const call = all ?? one
    return call === null ? null : callReading(call)
  }
  const have = isBuying || has('asking', 'how_much') ? null : atHome(sentence, 'shopping')
  const list = listMeant(said)
  if (have === null || list === null || bits.some((bit) => !have.bits.includes(bit))) return null
  const before = list.options.have
  return callReading(withOption(list, 'have', before === undefined ? have.text : `${before} + ${have.text}`))
}
