import type { DangerSaid } from './danger-said.ts'
import { ASLEEP, AWAKE, DROWSING } from './drowsing.ts'
import { findHarm } from './find-harm.ts'
import type { HarmId } from './harm.ts'
import { type SaidOfHarm, saidIn, type WordSpan } from './said.ts'
import { isDenied, isOnlyAsked } from './signs.ts'
import { isWished, swallowed } from './swallowing.ts'
import { isSmellOfThing } from './victim.ts'

/** How much of it, and when: what stands between a deed and the thing. */
const FILLER =
  '(?:(?:already|just|only|a|an|some|bit|bits|little|tiny|few|couple|sips?|tastes?|mouthfuls?|glass(?:es)?|drops?|spoons?|spoonfuls?|lots?|all|half|most|much|loads|too|also|quite|of|from|out|the|up|off|one|two|three|gia|appena|un|una|po|di|del|dal|della|sorso|goccio|bicchiere|bicchierino|anche|proprio) )*'

/** The thing that was spoken of, or nothing more. */
const THING =
  '(?:(?:it|this|that|them|those|some|same|jars?|bottles?|drinks?|liqueurs?|stuff|batch|spirit|fruit|peels?|lot|vaso|barattolo|bottiglia|liquore|questo|quello)(?= |$)|(?:yesterday|today|tonight|earlier|before|last|this|by|and|but|though|now|ago|ieri|oggi|prima|stamattina|stasera|ma|per)(?= |$)|[.,]|$)'

const OF_THE_THING = new RegExp(`^${FILLER}${THING}`)

/** It is told as done, however it is asked. */
const DONE = /\b(?:already|gia)\b/

/** A taste that was rated is what a maker records, beside what stands on the jar. */
const RATED = /\b(?:stars?|stelle|out of)\b/

const isOfTheThing = (said: SaidOfHarm, { to }: WordSpan): boolean =>
  OF_THE_THING.test(`${said.between(to, to + 14)} `.trimStart())

/** Somebody drank or ate of what was spoken of: `but I already drank some of it`. */
function isHad(said: SaidOfHarm, isTasteMeant: boolean): boolean {
  const had = [...swallowed(said), ...(isTasteMeant && !RATED.test(said.text) ? said.spans('partaken') : [])]
  return had.some(
    (span) =>
      isOfTheThing(said, span) &&
      !isSmellOfThing(said, span) &&
      !isDenied(said, span) &&
      !isWished(said, span) &&
      (DONE.test(said.text) || !isOnlyAsked(said, span)),
  )
}

/** A few words of somebody who was just spoken of: `he's asleep`. */
const isAsleep = (said: SaidOfHarm): boolean =>
  ASLEEP.test(said.text) && !AWAKE.test(said.text) && said.text.trim().split(' ').length <= MOST_WORDS

const MOST_WORDS = 10

/** What was drunk matters more than how much of it. */
const OF_SPIRIT: readonly HarmId[] = ['swallowed_spirit_adult', 'swallowed_spirit_child']

/** What harm a text tells of, a moment after a danger was told; or null. Never throws. */
export function findHarmAfter(text: string, danger: DangerSaid | null): HarmId | null {
  const alone = findHarm(text)
  if (danger === null || text.trim().startsWith('/')) return alone
  if (danger.of === 'drink') {
    if (alone !== null && !OF_SPIRIT.includes(alone)) return alone
    if (!isHad(saidIn(text), danger.isBeyondDoubt)) return alone
    // Of a child the poison centre is called as well.
    return alone === 'swallowed_spirit_child' && danger.harm === 'swallowed_undrinkable' ? alone : danger.harm
  }
  return alone ?? (DROWSING.includes(danger.harm) && isAsleep(saidIn(text)) ? 'unconscious_after_drinking' : null)
}
