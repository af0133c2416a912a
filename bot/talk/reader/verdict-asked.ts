import type { Sentence, TalkJar } from '../bits/bit.ts'
import { jarCalled, jarsNamed, jarsOf, runningAmong } from '../bits/jars-of.ts'
import type { TalkReading } from '../frames/reading.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { type KnowsNudge, nudgeDone } from './nudge-done.ts'
import { isStillGoodAsked } from './still-good.ts'

const LEAD =
  /^(?:(?:oh|ah|ok|okay|right|well|so|and|but|then|hm+|no|yes|yeah|fine|alright|i see|thanks|sorry|please|e|ma|allora|quindi|scusa) )*/u

/** Agreed, heard or refused, and nothing else: `yes`, `ok will do`, `no`, `sì`. */
const NOD =
  /^(?:(?:oh|ah|ok|okay|k|kk|right|well|fine|good|great|perfect|sure|yes|yep|yeah|yup|aye|no|nope|nah|never|done|please|then|very well|alright|all right|got it|got that|gotcha|understood|noted|i see|will do|(?:i )?(?:will|ll|did|have|agree|know|understand)|(?:i )?(?:will|ll) do (?:it|that|so)|do it|go on|go ahead|makes sense|fair enough|what a (?:shame|pity)|too bad|damn|oh dear|oh no|s[iì]|certo|va bene|d accordo|daccordo|capito|fatto|giusto|perfetto|bene|lo faccio|peccato|mate|love|cheers|thanks|thank you|grazie) ?)+$/u

/** Words of thanks alone are thanked for. */
const THANKED = /^(?:(?:oh|ok|okay|great|cheers|thanks|thank you|grazie|mate|love) ?)+$/u
const THANKS = /\b(?:cheers|thanks|thank you|grazie)\b/u

/** It goes, or has gone, the way that was told: `binned it`, `ok I’ll throw it away`. */
const AWAY =
  /\b(?:bin|binned|chuck(?:ed)?|dump(?:ed)?|ditch(?:ed)?|toss(?:ed)?|discard(?:ed)?|thr(?:ow|ew|own)|throwed|got rid of|get rid of|dispose of|disposed of|(?:pour(?:ed)?|tip(?:ped)?) (?:it|that|this|the \p{L}+|all|everything|them)(?: \p{L}+)? (?:away|out|down|into)|butt(?:o|ato|ata|ati|ate|iamo|ero)|gettat[oa]|rovesciat[oa])\b/u

/** It is asked, or is not so. */
const NOT_AWAY =
  /\b(?:(?:do|did|should|must|shall|can|could|would|have|need|devo|posso|dovrei|bisogna) (?:i|we|it|to)\b|(?:have|need|got) to|not|dont|didnt|havent|wont|cant|never|why|if|rather|non|perche|devo|se)(?!\p{L})/u

/** Poured, and into what holds it still. */
const POURED_INTO = /\b(?:in|into|nell[ae]|nei|dentro) (?:\p{L}+ ){0,3}?(?:bott|jars?\b|glass|carafe|decanter|jug)/u

const isAwayTold = (text: string, plain: string): boolean =>
  AWAY.test(plain) && !text.includes('?') && !NOT_AWAY.test(plain) && !MENDED.test(plain) && !POURED_INTO.test(plain)

/** What is only done when it is typed. */
const awayWith = ({ name }: TalkJar): TalkReading => ({
  kind: 'only_typed',
  call: { command: 'jar discard', options: { jar: name } },
})

/** What is to become of it: `what do I do with it now?`, `and now?`. */
const WHAT_NOW =
  /^(?:(?:what|and what) (?:now|next|then)|and now|now what|(?:what|how) (?:do|should|can|must|shall|would|am) (?:i|we)(?: supposed to)? (?:do|proceed)(?: (?:with|about|to) (?:it|this|that|them|him|her|(?:the|my) (?:\p{L}+ ){0,3}\p{L}+))?(?: (?:now|then|next|instead))*|(?:e adesso|e ora|e quindi|(?:che )?(?:cosa )?(?:ci |ne )?(?:faccio|devo fare|devo farne|facciamo)(?: adesso| ora)?(?: con quest[oa])?))$/u

/** Whether anything brings it back, or how bad it is. */
const MENDED =
  /\b(?:(?:can|could|may|might|should|do|must|will|would|is there (?:a|any|no) way(?: for me)? to|any way to|how (?:do|can|could) (?:i|we)|if|posso|possiamo|si puo|devo) (?:(?:i|we|you|it|this|that|not|still|just|even|safely|really|have to|need to|be|only|simply|the (?:rest|whole lot)|ancora|solo|lo|la) )*(?:sav(?:e|ed|ing)|rescu\p{L}+|salvag\p{L}+|fix\p{L}*|mend\p{L}*|keep|drink|taste|try|sip|use|eat|have|sell|share|give|serve|scoop\p{L}*|skim\p{L}*|lift\p{L}*|filter\p{L}*|strain\p{L}*|boil\p{L}*|heat\p{L}*|freez\p{L}*|dilut\p{L}*|distil\p{L}*|throw|bin|chuck|toss|discard|salvar\p{L}*|tener\p{L}*|ber\p{L}*|usar\p{L}*|filtrar\p{L}*|bollir\p{L}*|buttar\p{L}*)|will (?:it|this|that) (?:kill|hurt|harm|poison|blind|make (?:me|us|anyone) (?:ill|sick))|how (?:bad|dangerous|serious|risky) (?:is|are) (?:it|this|that)|(?:is|are|was) (?:it|this|that|they|(?:the|my) (?:\p{L}+ ){0,3}\p{L}+)(?: (?:really|still|so|very|all|even|now|actually))* (?:safe|ok|okay|fine|good|bad|dangerous|poisonous|toxic|harmful|drinkable|ruined|spoil(?:ed|t)|lost|alright|usable|serious))\b/u

const REFERS =
  /\b(?:it|its|this|that|these|them|they|one|ones|mine|jar|batch|bottle|liqueur|drink|lot|rest|berlo|berla|tenerlo|tenerla|salvarlo|salvarla|usarlo|usarla|buttarlo|buttarla|lo|la|questo|questa)\b/u

const MOST_WORDS = 12

/** What is told of it instead of what it was taken for, or of somebody: heard by other rules. */
const isOfAnother = ({ bits, jars }: Sentence, jar: TalkJar): boolean =>
  bits.some(
    (bit) =>
      bit.value > 0 ||
      bit.kind === 'spirit' ||
      ((bit.kind === 'plant' || bit.kind === 'jar') && !jarsOf(bit, jars).includes(jar)),
  )

/** The jar that is meant, where something stands of it: the one that is named, else the one that was spoken of just now. */
export function jarMeant({ bits, jars }: Sentence, { call, refused }: Remembered): TalkJar | null {
  const running = runningAmong(jars)
  const [named, another] = jarsNamed(bits, running)
  if (another !== undefined) return null
  if (named !== undefined) return named.jar
  if (refused !== null) return jarCalled(refused.options.jar, running) ?? null
  const [only, other] = running
  if (call === null) return only !== undefined && other === undefined ? only : null
  return jarCalled(call.options.jar, running) ?? null
}

/** What stands of a jar, said once more. */
export const standsOf = (jar: string, { symptom, options }: NonNullable<TalkJar['stands']>): TalkReading => ({
  kind: 'symptom',
  id: symptom,
  options: { ...options, jar },
})

/** What a talk was of is said once more, and is let off by no yes: a question that is open is answered by one. */
function isNodded(plain: string, { question, offered, refused, call, answersBehind }: Remembered): boolean {
  if (question !== null || answersBehind > 0 || !NOD.test(plain) || (THANKS.test(plain) && THANKED.test(plain)))
    return false
  const isOpen = offered.some(
    ({ command, options }) => command === 'trouble' && (options.yes ?? options.no) !== undefined,
  )
  return refused !== null || (call !== null && !isOpen)
}

/** The same; the job that a reminder asked for since is done all the same. */
export function verdictAsked(sentence: Sentence, knows: KnowsNudge): TalkReading | null {
  const stands = standing(sentence, knows.said)
  return stands === null || nudgeDone(sentence, knows) !== null ? null : stands
}

/**
 * Behind `throw it away` or `don’t taste it yet`, or of a jar that either stands of: `is it safe?`, `can I still save it?`, `ok`. What
 * stands is said of that jar once more, and goes by none of these. Of `binned it` the line that says so is offered. Null where nothing of the kind is meant.
 */
function standing(sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading | null {
  const jar = jarMeant(sentence, said)
  if (jar?.stands === undefined || isOfAnother(sentence, jar)) return null
  const { isOpen } = jar.stands
  const plain = plainWords(sentence.typed.text).trim()
  const words = plain.split(' ')
  if (words.length > MOST_WORDS) return null
  const again = standsOf(jar.name, jar.stands)
  const isNamed = jarsNamed(sentence.bits, sentence.jars).length > 0
  const isReferred = isNamed || REFERS.test(plain) || words.length <= 4
  const asked = plain.replace(LEAD, '')
  if (!isOpen && isReferred && isAwayTold(sentence.typed.text, plain)) return awayWith(jar)
  if (WHAT_NOW.test(plain) || WHAT_NOW.test(asked) || (isReferred && (isStillGoodAsked(plain) || MENDED.test(plain))))
    return again
  if (isOpen) return null
  return isNodded(plain, said) || (isReferred && AWAY.test(plain)) ? again : null
}
