import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence } from '../bits/bit.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import type { Remembered } from './remembered.ts'
import { callReading } from './rule.ts'

/** What is said around it and means nothing more. */
const BEFORE_IT =
  '(?:(?:no|ok|okay|and|so|sorry|actually|just|please|well|hm+|right|then|now|lets|let us|can we|could we|can you|i want|i d like|id like|i meant|show me|give me|make it|make that|have|take me|put it|put that|change it|turn it|go|going|e|ora|allora|scusa|voglio|vorrei|torna|torniamo|rimetti|rimettilo|fammi vedere) )*'
const AFTER_IT =
  '(?: (?:again|please|pls|then|instead|back|now|after all|better|was better|di nuovo|per favore|ancora|allora))*'

const one = '(?: (?:one|version|recipe|plan|answer|amounts?|way|syrup|ones|versione|ricetta|volta|risposta|quantita))?'

const FIRST = new RegExp(
  `^${BEFORE_IT}(?:back )?(?:to )?(?:with )?(?:(?:the|that|my|il|la|lo|l|al|alla|all) )?(?:very )?(?:first|original|prim[oa]|originale|iniziale)${one}${AFTER_IT}$`,
  'u',
)
const LAST = new RegExp(
  `^${BEFORE_IT}(?:(?:go |take it |put it )?back(?: (?:again|one|a step))?|(?:back )?to (?:what it was|how it was|as it was)(?: before)?|(?:back to )?(?:the )?(?:one|version|plan|recipe) before(?: that)?|(?:back )?(?:to )?(?:the )?previous${one}|(?:just )?(?:as|like|how) (?:it was|before|it was before|we had it)(?: before)?|same as before|undo (?:that|the|this) change|revert(?: that| it)?|come prima|indietro|torna indietro|(?:a )?quell[oa] di prima|(?:il |la )?precedente)${AFTER_IT}$`,
  'u',
)

const MOST_WORDS = 10

/** What says which batch a call is of, its numbers left out. */
const kernelOf = ({ options }: CallRead): readonly string[] =>
  ['of', 'infusion', 'from', 'jar', 'liqueur', 'spirit'].flatMap((option) => {
    const text = options[option]
    return text === undefined ? [] : [`${option} ${option === 'of' ? text.replace(/[\d.,½¼¾]+\s*/g, '') : text}`]
  })

/** Whether one call is the other, changed. */
export const isChanged = (one: CallRead, other: CallRead): boolean =>
  one.command === other.command && kernelOf(one).some((each) => kernelOf(other).includes(each))

/** Where the changes of the last call began. */
function firstOf(trail: readonly CallRead[]): CallRead {
  let at = trail.length - 1
  while (at > 0 && isChanged(trail[at - 1]!, trail[at]!)) at--
  return trail[at]!
}

/** `No, the first one again`, `back`, `as before`: what was worked out before this talk's changes, or before the last of them. */
export function earlier({ typed, bits }: Sentence, said: Remembered): TalkReading | null {
  const { trail, question, call } = said
  const words = wordsFrom(typed)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
  const last = trail.at(-1)
  if (last === undefined || typed.tokens.length > MOST_WORDS || bits.some(({ kind }) => kind !== 'bare')) return null
  // Of several that are asked about it is the first of those, and what was written down is undone.
  if ((question !== null && question.choices.length > 1) || call === null || isRecord(call)) return null
  if (FIRST.test(words)) return callReading(firstOf(trail))
  if (!LAST.test(words)) return null
  return callReading(call.command === last.command ? (trail.at(-2) ?? last) : last)
}

const isRecord = ({ command }: CallRead): boolean => /^jar (?!list|show|tag|label)/.test(command)
