import { numberWords } from '../../../core/quantity/read/number-words.ts'
import { type Sign, signText } from '../../../core/trouble/signs.ts'
import type { Sentence, TalkJar } from '../bits/bit.ts'
import { runningAmong } from '../bits/jars-of.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { isPerson } from '../lexicon/people.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { callReading } from '../memory/rule.ts'
import { isOfGas, ofFullBottles } from './full-bottles.ts'
import { isAsked } from './is-told.ts'
import { NOT_DENIED, originTold } from './origin-told.ts'
import { jarMeant } from './verdict-asked.ts'

const MOST_WORDS = 18

/** Where a spirit comes from that nobody may trust, or nobody knows: an answer to whether it was bought with a label. */
const NOT_BOUGHT =
  /\b(?:distil\p{L}*|home ?made|home ?brew\p{L}*|moonshine|hooch|poteen|still|unlabel\p{L}*|(?:no|without|missing|lost) (?:a |any |the |its )?label\p{L}*|label (?:came|fell|was|is|has) (?:off|gone|missing)|(?:dont|didnt|do not|did not|cant|not) (?:really )?(?:know|remember|sure|say)|no idea|dunno|not bought|(?:gave|given|got|had) (?:it |that |this |some )?(?:to|from|off) (?:me|us|my|a|an|the|our)|(?:gave|passed) (?:it |that |this )?to (?:me|us)|was a (?:gift|present)|alambicco|distillat[oa]|fatt[oa] in casa|casalingh?[oa]|senza etichetta|non (?:lo )?(?:so|ricordo|sappiamo)|boh|(?:me|ce|mi|ci)(?: l| lo)? ?l?(?:ha|hanno) (?:\p{L}+ )?(?:regalat|dat)[oa])(?!\p{L})/u
const BOUGHT =
  /\b(?:bought|purchased|from (?:the |a )?(?:shop|store|supermarket|off licence|liquor store)|supermarket|comprat[oa]|supermercato|dal negozio)(?!\p{L})/u

/** Whatever grows is told off, scooped out or lifted out. */
const SKIMMED =
  /\b(?:skim\p{L}*|scoop\p{L}*|spoon(?:ed|ing)? (?:it|that|them|the \p{L}+) (?:off|out|away)|(?:take|took|taken|taking|pick(?:ed|ing)?|cut(?:ting)?|fish(?:ed|ing)?|remov(?:e|ed|ing)|scrap\p{L}+|wip(?:e|ed|ing)|lift(?:ed|ing)?|pull(?:ed|ing)?|get|got) (?:it|that|them|this|the (?:\p{L}+ ){1,2}?(?:bit |part |layer )?)(?: ?all)? ?(?:off|out|away)|(?:remov(?:e|ed|ing)|take|took) (?:only |just )?the (?:top|fur|mould|mold|fluff|fuzz|layer|mouldy)|tolg[ol]\p{L}*|tolt[oaie]|toglier\p{L}*|lev[oa]\p{L}*|schium\p{L}*|screm\p{L}*|rimoss[oa]|rimuov\p{L}*|raschi\p{L}*)(?!\p{L})/u

/** Of whatever else a danger was told of: what is taken off the top of it all the same, and no plant that is taken out. */
const TAKEN_OFF =
  /\b(?:skim\p{L}*|scoop\p{L}*|spoon(?:ed|ing)? (?:it|that|the \p{L}+) off|(?:scrap|wip|pour|tip)\p{L}* (?:it|that|(?:off )?the (?:\p{L}+ )?(?:top|foam|froth|scum|layer|bubbles|head|bit))(?: bit| part| layer)?(?: ?all)?(?: ?(?:off|out|away))?|(?:take|took|taking|taken|lift\p{L}*|wip\p{L}*|get) (?:it|that|the (?:\p{L}+ )?(?:top|foam|froth|scum|layer|film|skin))(?: bit| part| layer)? ?off|(?:let|leave|letting) (?:it|the (?:smell|jar|lid)) (?:to )?(?:air|breathe|evaporate|off gas)(?: out| off)?|air(?:ing)? it(?: out)?|schium(?:o|ar\p{L}*)|raschi\p{L}*|(?:la|lo|le|li) (?:tolgo|levo)|tolgo la schiuma|(?:lo|la) (?:lascio|faccio) (?:arieggiare|respirare|sfiatare|evaporare))(?!\p{L})/u

/** It is thought to be nothing, and nothing is told of what it was. */
const SHRUGGED =
  /^(?:(?:oh|ah|well|nah|no|ok|i m|im|i|am|sure|think|guess|bet|reckon|so|but|and|ma|beh|tanto) )*(?:(?:it|that|this)(?:ll| will| should| must| s|s)? (?:probably |surely |all |still |just )?be (?:fine|ok|okay|alright|all right|good|grand)|(?:andra|sara) (?:tutto )?(?:bene|a posto)|(?:dont|do not) (?:care|mind)|non (?:fa niente|importa)|ill (?:risk|chance) it|rischio)(?: (?:though|then|anyway|i think|i guess|mate|lo stesso))*$/u

const AHEAD =
  '(?:can|could|may|might|should|shall|would|will|ill|ll|lets|gonna|going to|want to|like to|plan to|thinking of|how about|what if|is it (?:ok|okay|fine|safe|alright)|(?:ok|okay|fine|good|safe|alright) (?:for|in|to|if)|posso|possiamo|potrei|potremmo|si puo|voglio|vorrei|lo|la|ci)'
const ELSE =
  '(?:cook\\p{L}*|bak(?:e|ing)|boil\\p{L}*|simmer\\p{L}*|heat\\p{L}*|flamb\\p{L}*|distil\\p{L}*|filter\\p{L}*|strain(?:ing)? it|charcoal|clean(?:ing)? with|wip(?:e|ing)|disinfect\\p{L}*|steril\\p{L}*|past(?:eur|or)i\\p{L}*|light(?:ing)?|burn(?:ing)?|giv(?:e|ing)|sell(?:ing)?|serv(?:e|ing)|offer(?:ing)?|gift|donat(?:e|ing)|pour(?:ing)? (?:it |some )?(?:over|on)|us(?:e|ing)|sauces?|cakes?|puddings?|trifle|jam|something else|anything else|cucin\\p{L}*|cuocer\\p{L}*|boll\\p{L}*|scald\\p{L}*|filtr\\p{L}*|pulir\\p{L}*|disinfett\\p{L}*|regal\\p{L}*|dar[el]\\p{L}*|us(?:o|ar\\p{L}*)|torta|dolce)'
/** What would be done with it all the same: `can I still cook with it?`, `I’ll give it to the neighbours`. */
const USED = new RegExp(`\\b${AHEAD} (?:\\p{L}+ ){0,5}?${ELSE}(?!\\p{L})`, 'u')
const REFERS =
  /\b(?:it|its|this|that|them|those|one|some|rest|liqueur|drink|lot|batch|(?:\p{L}*ar|\p{L}*er|\p{L}*ir)l[oaie]|lo|la|ne|questo|questa|resto)\b/u
const ANOTHER =
  /\b(?:instead(?! of)|vodka|another (?:jar|bottle|spirit)|new (?:jar|bottle)|clean(?:ing)? (?:the|a|my) jar)\b/u

/** The bottles that were filled with it too. */
const OTHER_BOTTLES =
  /\b(?:(?:other|rest of the|remaining|all the|two|three|four) (?:\p{L}+ )?(?:bottles?|ones|jars)|others|(?:altr[ei]|restanti) (?:bottigli[ae]|vas[oi]|barattoli))(?!\p{L})/u

/** Somebody has some of it already. */
const GAVE =
  /\b(?:(?:gave|given|handed|passed|sent|posted|brought|served|offered|poured|dropped|shared) (?!up\b|it a\b|off\b)|let (?:\p{L}+ ){1,3}?(?:taste|try|have|sip|drink)\b|(?:has|got|took|taken) (?:already )?(?:a|one|two|three|some|\d+) (?:small |little )?(?:bottles?|glass(?:es)?|jars?|home|of it)\b)/u
const WHOM =
  /\b(?:to|with) (?:the |my |our |a |some )?(?:\p{L}+)|\b(?:gave|given|handed|passed|sent|offered|poured|let|brought) (?:him|her|them|my|our|\p{L}+ (?:a|one|two|some|half|taste|try|have))\b|\baway\b/u
const HA_DATO =
  /\b(?:l?ho|abbiamo|ha|gli|le|gliene|gliel) (?:\p{L}+ ){0,3}?(?:dat[oaie]|regalat[oaie]|portat[oaie]|offert[oaie]|mandat[oaie]|lasciat[oaie]|passat[oaie]|fatto (?:assaggiare|provare))\b/u
const BOTTLES =
  /\b(a|an|one|two|three|four|five|six|un|una|due|tre|quattro|\d+)(?: (?:small|little|half|whole|full))? (?:bottles?|bottigli[ae])\b/u
const NAMED =
  /(?:\b(?:to|with|let|gave|a|ad|al)\s+)(my \p{L}+(?: in law)?|\p{Lu}\p{Ll}+(?:(?:,| and| e) \p{Lu}\p{Ll}+)*)(?!\p{L})/u

/** Who has it, as an answer says it; null where nobody is named. */
function whoIn(text: string): string | null {
  const named = NAMED.exec(text)?.[1] ?? /^(\p{Lu}\p{Ll}+) (?:has|got|took)\b/u.exec(text)?.[1]
  if (named === undefined) return null
  const own = /^my (.*)$/u.exec(named)?.[1]
  if (own === undefined) return named
  return isPerson(own.split(' ')[0]!) ? `your ${own}` : null
}

/** What was told of the jar that is meant, or just now of none: as it was answered, and the jar. */
interface Standing {
  readonly options: CallRead['options']
  readonly isOpen: boolean
  readonly jar: TalkJar | null
}

function standingOf(sentence: Sentence, said: Remembered): Standing | null {
  const asked = said.call?.command === 'trouble' ? said.call : null
  const jar = jarMeant(sentence, said) ?? onlyTroubled(sentence, said)
  if (jar?.stands !== undefined) {
    const { options, isOpen } = jar.stands
    return { options: { ...options, jar: jar.name }, isOpen, jar }
  }
  // Of no jar, just now: the danger that was told is still the one.
  const isJust =
    said.answersBehind <= MOST_BEHIND && (said.danger?.of === 'drink' || (asked !== null && isOfGas(asked.options)))
  if (asked === null || !isJust || asked.options.jar !== undefined) return null
  const { about: _about, given: _given, ...options } = asked.options
  return { options, isOpen: !(said.danger?.isBeyondDoubt ?? true), jar: null }
}

const MOST_BEHIND = 3

/** Behind another answer: the one jar of which a danger was told just now. */
function onlyTroubled({ jars }: Sentence, { danger }: Remembered): TalkJar | null {
  if (danger?.of !== 'drink') return null
  const [only, other] = runningAmong(jars).filter(({ stands }) => stands !== undefined)
  return only !== undefined && other === undefined ? only : null
}

/** The open question whether its spirit was bought is answered in other words than yes or no. */
function boughtAnswered(plain: string, { options, isOpen }: Standing, { offered }: Remembered): CallRead | null {
  const bought: Sign = 'bought'
  const asks = offered.some(
    ({ command, options: answers }) =>
      command === 'trouble' && (answers.no ?? '').split(' + ').includes(signText(bought)),
  )
  if (!isOpen || !asks) return null
  const isNot = NOT_BOUGHT.test(plain) || NOT_DENIED.test(plain)
  if (!isNot && !BOUGHT.test(plain)) return null
  const key = isNot ? 'no' : 'yes'
  const before = options[key]
  return {
    command: 'trouble',
    options: { ...options, [key]: before === undefined ? signText(bought) : `${before} + ${signText(bought)}` },
  }
}

const isOfGrowth = ({ options: { symptom = '' } }: Standing): boolean =>
  /mould|slime|skin|fur|float|muffa/.test(symptom)

/**
 * Behind a danger that stands: an answer to its question in other words, who has some of it, and what somebody would do with it all the
 * same. The verdict, or its question, is said once more with what that comes to; null where nothing of the kind is said.
 */
export function behindDanger(sentence: Sentence, said: Remembered = NOTHING_SAID): TalkReading | null {
  const standing = standingOf(sentence, said)
  if (standing === null) return null
  const { text } = sentence.typed
  const plain = plainWords(text).trim()
  if (plain.split(' ').length > MOST_WORDS) return null
  const bought = boughtAnswered(plain, standing, said)
  if (bought !== null) return callReading(bought)
  const again = (more: CallRead['options']): CallRead => ({
    command: 'trouble',
    options: { ...standing.options, ...more },
  })
  const isQuestion = isAsked(sentence)
  const origin = isQuestion ? null : originTold(plain, standing.options)
  if (origin !== null) return callReading(again(origin))
  const gave = (GAVE.test(plain) && WHOM.test(plain)) || HA_DATO.test(plain) || isWithSomebody(text)
  if (gave && !isQuestion && !WISHED.test(plain)) {
    const reading = callReading(again({ given: whoIn(text) ?? 'somebody' }))
    const count = bottlesGiven(text)
    const { jar } = standing
    if (reading.kind !== 'call' || count === null || jar === null || !BOTTLED.has(jar.stage)) return reading
    return { ...reading, next: { command: 'bottles', options: { jar: jar.name, given: count, already: 'yes' } } }
  }
  const step = isQuestion ? null : stepBehind(plain, standing)
  if (step !== null) return { ...callReading(again({})), ...(step.next !== null && { next: step.next }) } as TalkReading
  if (isOfGrowth(standing) ? SKIMMED.test(plain) : TAKEN_OFF.test(plain))
    return callReading(again({ about: 'skimming' }))
  if (isOfGas(standing.options) && ofFullBottles(plain)) return callReading(again({ about: 'full bottles' }))
  if (!isQuestion && SHRUGGED.test(plain)) return callReading(again({ about: 'use' }))
  if (!isQuestion && standing.jar === null && DONE_ANYWAY.test(plain)) return callReading(again({ about: 'use' }))
  if (OTHER_BOTTLES.test(plain) && (isQuestion || /^(?:and |e |ma )?(?:the|what|le)\b/.test(plain)))
    return callReading(again({ about: 'other bottles' }))
  const isUsed = USED.test(plain) && REFERS.test(plain) && !ANOTHER.test(plain)
  return isUsed ? callReading(again({ about: 'use' })) : null
}

const BOTTLED: ReadonlySet<TalkJar['stage']> = new Set(['resting', 'ready'])

const LEAD = '(?:i |we |ive |weve |have |just |now |already |then |ok |so |and |l ho |lho |lo |la |ho |abbiamo |gia )*'
const BOTTLED_IT = new RegExp(
  `^${LEAD}(?:bottled|imbottigliat[oa])(?: (?:it|them|all|everything|now|already|today))*$`,
  'u',
)
const STRAINED_IT = new RegExp(
  `^${LEAD}(?:strained|colat[oa]|filtrat[oa])(?: (?:it|them|all|everything|off|out|now|already|today|gia))*$`,
  'u',
)

/** Of no jar that is known: it is in bottles, or strained, already. */
const DONE_ANYWAY =
  /^(?:(?:but|well|oh|oops|too late|i|we|ive|weve|have|had|its|it|is|already|just|now|and|so|ho|lho|l|abbiamo|ma|ormai|gia|e) )*(?:bottled|strained|sweetened|filtered|decanted|imbottigliat[oa]|filtrat[oa]|colat[oa])(?: (?:it|them|all|the lot|everything|anyway|already|now|today|yesterday|last \p{L}+|up|gia|ieri|lo stesso|tutto|though|this morning))*$/u

/** `Bottled it`, `I strained it` behind a question that is open: that comes first, and straining is written down behind it. */
function stepBehind(plain: string, { isOpen, jar }: Standing): { readonly next: CallRead | null } | null {
  if (!isOpen || jar === null || jar.stage !== 'steeping') return null
  if (BOTTLED_IT.test(plain)) return { next: null }
  return STRAINED_IT.test(plain) ? { next: { command: 'jar strain', options: { jar: jar.name } } } : null
}

const WISHED = /\b(?:ill|ll|will|would|can|could|may|should|shall|want to|going to|gonna|didnt|havent|not|never|non) /u

/** `Ann has a bottle`, where the name stands first. */
const isWithSomebody = (text: string): boolean =>
  /^(?:but |and )?(?:\p{Lu}\p{Ll}+|my \p{L}+) (?:already )?(?:has|got|took) (?:already )?(?:a|one|two|some)\b/u.test(
    text,
  )

/** How many bottles somebody was given, as `/bottles` takes it; null where none is meant. */
function bottlesGiven(text: string): string | null {
  const count = BOTTLES.exec(plainWords(text))?.[1]
  return count === undefined ? null : String(numberWords.get(count) ?? count)
}
