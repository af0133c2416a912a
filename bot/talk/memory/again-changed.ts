import { textFrom, wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, jarsOf } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { ADDED, amountsAgain } from './again-amounts.ts'
import { followUp } from './follow-up.ts'
import { jarsMade, lastTimeJudged, MADE } from './last-time-judged.ts'
import { isOfPlant, plantsWished } from './more-of-plant.ts'
import { isAgainSaid, jarAgain, namedIn } from './named-again.ts'
import { otherPlants, otherSpirit, spiritInstead, swapped, withoutPlant } from './plan-rules.ts'
import { NOTHING_SAID, type Remembered } from './remembered.ts'
import { callReading, NO_LIQUEUR, type Rule, WORKED_OUT, whichJar } from './rule.ts'

/** How somebody begins who wants a batch once more; what follows is how it is to be. */
const LEAD =
  /^(?:ok |right |so |and |now |please |lets (?:do|make) |id like |i want |can (?:i|we) (?:do|make|have) |make |do |plan )*(?:the |my )?(?:same(?: (?:thing|recipe|one|batch|jar|again|as (?:last time|before|the last one)))*|again|once (?:more|again)|one more (?:time|batch|lot)|another (?:one|batch|lot|round)(?: of (?:it|that|the same|them))?|(?:just |exactly )?(?:like|as) (?:last time|before|last year|the last one)|(?:make |do )?(?:it|that|that one|this) again|repeat(?: it| that)?|un altra volta|di nuovo|ancora una volta|(?:lo |la )?stess[oa](?: (?:ricetta|cosa))?|(?:uguale|come) (?:all?|l|la|a)? ?(?:altra volta|volta scorsa|ultima volta|anno scorso|prima)|rifacciamol[oa]|rifall[oa]|rifammel[oa])(?= |$)/

const JOINS =
  /^(?:[,;:.!—-]|but|and|with|only|just|though|except|this|time|please|for|using|from|ma|pero|con|usando|solo|stavolta|e|questa|volta|per)$/

/** How many tokens the first words of a text are. */
function tokensOf(typed: Sentence['typed'], words: string): number | null {
  for (let count = 1; count <= typed.tokens.length; count++) {
    const said = wordsFrom({ ...typed, tokens: typed.tokens.slice(0, count) }, 0)
    if (said === words) return count
    if (said.length > words.length) return null
  }
  return null
}

/** What is said behind the lead; null where none is there, or nothing behind it. */
function changeIn({ typed }: Sentence): string | null {
  const lead = LEAD.exec(wordsFrom(typed))?.[0]
  const count = lead === undefined ? null : tokensOf(typed, lead)
  if (count === null) return null
  let from = count
  while (from < typed.tokens.length && JOINS.test(typed.tokens[from]!.text)) from++
  // `Rifallo più forte`, `same again drier`.
  const isJoined = from > count || (from < typed.tokens.length && TASTE.test(wordsFrom(typed, from)))
  return from < typed.tokens.length && isJoined ? textFrom(typed, from) : null
}

const TASTE =
  /^(?:(?:a )?(?:bit|little|touch|lot|much|un po|molto|slightly) )?(?:more|less|drier|dryer|sweeter|stronger|weaker|milder|piu|meno)\b/

/** What the jar was started with, as it was typed. */
function planOf(jar: TalkJar): CallRead | null {
  const typed = jar.told().find(({ kind }) => kind === 'started')?.typed
  return typed === undefined
    ? null
    : {
        command: 'plan',
        options: Object.fromEntries(typed.filter(([option]) => /^(?:of|spirit|bottles)$/.test(option))),
      }
}

/** `With limes`: of one plant another, as many as there were; beside several it comes to them. */
function plantsChanged(sentence: Sentence, plan: CallRead, said: Remembered): TalkReading | null {
  const { bits, typed } = sentence
  const exchanged = swapped(sentence, plan, said) ?? withoutPlant(sentence, plan, said)
  if (exchanged !== null) return exchanged
  const [plant, another] = bits.filter(({ kind }) => kind === 'plant')
  const isOne = plant !== undefined && another === undefined && plan.options.of?.includes('+') === false
  if (!isOne || ADDED.test(wordsFrom(typed))) return otherPlants(sentence, plan, said)
  return otherPlants(
    { ...sentence, has: (...concepts) => concepts.includes('instead') || sentence.has(...concepts) },
    plan,
    said,
  )
}

const spiritChanged: Rule = (sentence, plan, said) =>
  spiritInstead(sentence, plan, said) ??
  otherSpirit(
    { ...sentence, has: (...concepts) => concepts.includes('instead') || sentence.has(...concepts) },
    plan,
    said,
  )

/** The batch of a jar once more with what is wished of it; null where that is no wish that is understood. */
function changed(jar: TalkJar, sentence: Sentence, said: Remembered): CallRead | null {
  const { bits } = sentence
  const { name } = jar
  const bottles = bits.find(({ kind, role }) => kind === 'bottles' && role !== 'of_spirit')
  if (bottles !== undefined && bits.every((bit) => bit === bottles || bit.value === 0))
    return { command: 'again', options: { ...jarAgain(jar, sentence).options, bottles: bottles.text } }
  // `At 28 %`: no spirit to steep in is so weak.
  const [only, another] = bits
  if (only?.kind === 'strength' && another === undefined && only.value < NO_LIQUEUR)
    return { command: 'again', options: { ...jarAgain(jar, sentence).options, 'to-strength': only.text } }
  const plan = planOf(jar)
  const amounts = amountsAgain(name, sentence, plan)
  if (amounts !== null) return amounts
  const of = plan === null ? null : plantsWished(sentence, plan)
  if (of !== null) return { command: 'again', options: { jar: name, of } }
  // More of what is not in it is no wish of this one.
  if (isOfPlant(sentence)) return null
  const isPlants = bits.some(({ kind }) => kind === 'plant')
  const read =
    plan === null ? null : isPlants ? plantsChanged(sentence, plan, said) : spiritChanged(sentence, plan, said)
  if (read?.kind === 'call') {
    const { of, spirit } = read.call.options
    return isPlants
      ? { command: 'plan', options: read.call.options }
      : {
          command: 'again',
          options: {
            jar: name,
            ...(spirit !== undefined && { spirit }),
            ...(of !== plan?.options.of && of !== undefined && { of }),
          },
        }
  }
  const target = bits.find(({ kind }) => kind === 'strength' || kind === 'sweetness')
  const asWished =
    target === undefined
      ? jarAgain(jar, sentence)
      : {
          command: 'again' as const,
          options: { jar: name, [target.kind === 'strength' ? 'to-strength' : 'to-sweetness']: target.text },
        }
  return Object.keys(asWished.options).length > 1 && bits.every((bit) => bit === target || bit.value === 0)
    ? asWished
    : null
}

const WITH = /^(?:with|using|but|from|only|con|usando|ma|[,;:])$/

/** `Do the plum again with 500 g plums`: the jar that is named before, and what is said behind; null where none is. */
function ofNamed(sentence: Sentence, said: Remembered, part: (text: string) => Sentence): CallRead | null {
  if (!isAgainSaid(sentence)) return null
  const { typed, jars } = sentence
  const at = typed.tokens.findIndex(({ text }, place) => place > 0 && WITH.test(text))
  const head = at === -1 ? null : part(textFrom(typed, 0, at))
  const named = head === null ? null : namedIn(head)
  if (named === null) return null
  let from = at
  while (from < typed.tokens.length && JOINS.test(typed.tokens[from]!.text)) from++
  const [jar, another] = jarsOf(named, jars)
  const wish = from === typed.tokens.length ? null : part(textFrom(typed, from))
  const isWished = wish !== null && (wish.bits.length > 0 || isOfPlant(wish))
  return jar === undefined || another !== undefined || !isWished ? null : changed(jar, wish, said)
}

const AGAIN_ALONE =
  /^(?:(?:ok|right|so|and|please|lets|id like to|i want to|can i|can we) )*(?:do|make|brew|repeat) (?:it|that|this|that one|this one)(?: all)? (?:again|once more|over again)(?: please)?$|^(?:rifallo|rifalla|rifacciamolo|rifacciamola)$/

/** What is done to a jar that stands there, and may itself be done again. */
const STEP = /^jar (?!show|taste|note|bottle|open|empty|later|tag|label)/

/** `Do it again`, of the jar that was just spoken of and is through. */
function againAlone({ typed, bits, jars }: Sentence, { call }: Remembered): TalkReading | null {
  if (call === null || bits.length > 0 || STEP.test(call.command) || WORKED_OUT.test(call.command)) return null
  const jar = AGAIN_ALONE.test(wordsFrom(typed)) ? jarCalled(call.options.jar, jars) : undefined
  return jar === undefined || !MADE.has(jar.stage)
    ? null
    : callReading({ command: 'again', options: { jar: jar.name } })
}

/**
 * `Again, but six bottles`, `same again but with limes`, `like last time, but less sweet`: the batch that was worked out last with that
 * change, else that of the jar that was spoken of, or of the only one.
 */
export function againChanged(
  sentence: Sentence,
  said: Remembered = NOTHING_SAID,
  part: (text: string) => Sentence,
): TalkReading | null {
  const text = changeIn(sentence)
  const judged = lastTimeJudged(sentence, said)
  if (judged !== null) return judged
  if (text === null) {
    const named = ofNamed(sentence, said, part)
    return named === null ? againAlone(sentence, said) : callReading(named)
  }
  const wish = part(text)
  const [named, second] = jarsNamed(wish.bits, sentence.jars)
  if (named !== undefined && isOfPlant(wish) && second === undefined) {
    const call = changed(named.jar, wish, said)
    return call === null ? null : callReading(call)
  }
  if (named !== undefined) return null
  if (said.call !== null && WORKED_OUT.test(said.call.command)) return followUp(wish, said)
  const calls = jarsMade(sentence.jars, said).map((jar) => changed(jar, wish, said))
  const [first, ...others] = calls
  if (first === undefined || first === null) return null
  const choices = calls.filter((call): call is CallRead => call !== null)
  return others.length === 0 ? callReading(first) : whichJar(first, choices)
}
