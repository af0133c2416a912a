import { wordsAlone } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from '../memory/remembered.ts'
import { callReading, whichJar } from '../memory/rule.ts'

const LEAD = '^(?:(?:and|so|ok|okay|right|then|but|e|ma|allora|now|roughly|about|remind me) )*'
const END =
  '(?: (?:then|now|please|in all|altogether|in total|all together|from start to finish|about|roughly|allora|in tutto))*$'
const IT =
  '(?:it|this|that|them|they|i|we|you|one|all (?:of )?(?:it|that|this)|the (?:whole )?(?:lot|thing|batch|recipe|plan|liqueur)|there)'

const asks = (...ways: readonly string[]): RegExp => new RegExp(`${LEAD}(?:${ways.join('|')})${END}`, 'u')

/** How much comes of it. */
const MAKES = asks(
  `how (?:many|much)(?: (?:bottles?|litres?|liters?|pints?|of it|drink|liqueur))? (?:will|does|would|do|can|could|should|shall|is|are) ${IT}(?: (?:be|get|have|going to))?(?: (?:make|makes|get|give|yield|fill|produce|end up with|come to|come out(?: as)?|have|need))?(?: (?:out of it|from (?:it|this|that)|with (?:it|this|that)))?`,
  'quant[ie] (?:bottiglie|litri) (?:fa|fanno|vengono|verranno|escono|usciranno|ci vengono|mi vengono|riempio|ottengo|ci vogliono|servono)',
  'quanto (?:ne )?(?:viene|verra|fa|esce|ottengo)(?: fuori)?',
)

/** When it is ready. */
const READY = asks(
  `how (?:long|soon|many (?:days|weeks|months))(?: (?:will|does|would|do|is|till|until|before|to) ?)(?:${IT}|drink)?(?: (?:take|takes|need|needs|last|be|is|s|get|going to take|till|until|before|can|could|drink|ready|its|to|it|drinkable|we|i|have|wait|done))*`,
  `when(?:s| s| is| will| would| can| could| should| do| does|ll| ll)? ?${IT}?(?: (?:be|is|are|get|drink|drinkable|ready|done|finished|it|this|start|to|we|i|can|able))*`,
  '(?:tra|fra|per)? ?quanto (?:tempo )?(?:ci (?:vuole|mette|vorra)|manca|dura|serve|devo aspettare|e pront[oa])',
  'quando (?:sara|e|lo posso|la posso|si puo|posso|possiamo) ?(?:pront[oa]|bere|berlo|berla|bevibile)',
)

/** What is to be bought for it. */
const BUY = asks(
  `what (?:do|should|must|will|would) ${IT} (?:still )?(?:need|have|want)?(?: to)? ?(?:buy|get|pick up)(?: for (?:it|this|that))?`,
  'what(?:s| is| s) on (?:the|my|our) (?:shopping )?list',
  '(?:the |my )?shopping list',
  'what (?:to|needs) (?:buy|buying)',
  '(?:che )?cosa (?:devo|dobbiamo|c e da|mi serve|serve) ?(?:comprare|prendere)?',
  '(?:la )?lista della spesa',
)

/** What is spoken of behind a plan, with no jar of its own. */
const OF_PLAN = /^(?:plan|again|shopping|cost|serving|mix|cautions|botanical|syrup)$/

const WHAT = /^(?:plan|again)$/

/** The plan that is spoken of; null where it is a jar, or where nothing was planned. */
export function planMeant({ call, worked }: Remembered): Remembered['worked'] {
  if (worked === null || !WHAT.test(worked.call.command)) return null
  // A glass of a jar was spoken of since.
  const { drink } = worked
  if (call?.command === 'serving' && drink !== null && call.options.strength !== `${Math.round(drink.abvPercent)}%`)
    return null
  return call !== null && OF_PLAN.test(call.command) && (call.options.jar === undefined || call.command === 'again')
    ? worked
    : null
}

function ofJars(jars: readonly TalkJar[]): TalkReading | null {
  const choices = jars.map(({ name }): CallRead => ({ command: 'jar show', options: { jar: name } }))
  const [call, another] = choices
  if (call === undefined) return null
  return another === undefined ? callReading(call) : whichJar({ command: 'jar show', options: {} }, choices)
}

/**
 * `How many bottles will it make`, `when’s it ready`, `what do I need to buy`, with nothing named: of the plan or the list that was just
 * shown, else of the jars that run. Null for everything else.
 */
export function planAsked({ bits, typed, jars }: Sentence, said: Remembered): TalkReading | null {
  if (typed.tokens.length > 14 || bits.some(({ kind, value }) => kind !== 'bottles' && value > 0)) return null
  if (bits.some(({ kind }) => kind === 'jar' || kind === 'plant' || kind === 'spirit' || kind === 'date')) return null
  const words = wordsAlone(typed)
  const isBuy = BUY.test(words)
  if (!isBuy && !MAKES.test(words) && !READY.test(words)) return null
  const plan = planMeant(said)
  if (plan !== null) {
    const shown = said.call?.command === 'shopping' ? said.call : undefined
    const list = shown ?? said.lists.at(-1)?.list ?? plan.offered.find(({ command }) => command === 'shopping')
    return callReading(isBuy ? (list ?? plan.call) : plan.call)
  }
  const running = runningAmong(jars)
  if (running.length === 0) return null
  if (isBuy) return callReading({ command: 'shopping', options: {} })
  const last = jarCalled(said.call?.options.jar, running)
  return ofJars(last === undefined ? running : [last])
}
