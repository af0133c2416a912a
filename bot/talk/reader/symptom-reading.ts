import { type Sign, signText } from '../../../core/trouble/signs.ts'
import { namesFuel, namesVarnish, smellsOfRot } from '../../../core/trouble/signs-in-words.ts'
import { type SymptomId, symptoms } from '../../../core/trouble/symptoms.ts'
import type { Sentence } from '../bits/bit.ts'
import { jarsMeant } from '../frames/jars-meant.ts'
import type { TalkReading } from '../frames/reading.ts'
import { symptomDenied, symptomsBeside } from '../frames/symptoms.ts'
import { plainWords } from '../lexicon/plain-text.ts'
import { isRead } from '../memory/lacked.ts'
import { isSpiritBought } from './bought-spirit.ts'
import { isAsked } from './is-told.ts'
import { isOfGarden } from './small-talk.ts'
import { isStoneCracked } from './stone-cracked.ts'

/** What grows in fur, or is to be lifted off: no pith and no pectin. */
const FURRY =
  /\b(?:fuzz\p{L}*|furry|fur|hairy|fluffy|cottony|scoop\p{L}*|skim\p{L}*|pelos[oaie]|peluria|lanugin\p{L}*|pelliccia)(?!\p{L})/iu

/** Named as mould, where it grows: on what floats or stands out of the liquid. */
const MOULD_ON =
  /\b(?:mou?ld|muff[ae])\b.{0,15}\b(?:on|over|sull?[aeo]?|sui|sugli|sopra)\b|\b(?:mou?ldy (?:\p{L}+ )?(?:fruit|peels?|berries|plums|sloes|cherries)|(?:frutta|scorz[ae]|bucc[ae]|bucce|prugne|ciliegie) ammuffit[ae])\b/iu

/** It is told to grow, or to have a colour: `green mould`, `nel vaso è cresciuta la muffa`. */
const MOULD_GROWN =
  /\b(?:mou?ld (?:\p{L}+ ){0,3}?(?:growing|grown|grew|grows|spread\p{L}*|(?:starting|started|begun|began) to grow)|(?:grown|growing|grew) (?:\p{L}+ ){0,3}?mou?ld|(?:green|blue|black|grey|gray|pink|orange|white) mou?ld|(?:cresc\p{L}+|format[aoe]|spuntat[aoe]|venut[aoe]|fatt[ao]) (?:\p{L}+ ){0,3}?muff[ae]|muff[ae] (?:\p{L}+ ){0,3}?(?:cresc\p{L}+|format[aoe]|spuntat[aoe])|muff[ae] (?:verd[ei]|blu|ner[ae]|grigi[ae]|bianc(?:a|he)|rosa))(?!\p{L})/iu

/** Whether it is mould is in doubt. */
const IN_DOUBT =
  /\b(?:like|maybe|perhaps|could|might|may be|think|guess|or|if|not|no|without|(?:is|are) (?:it|this|that|these|they|there)|forse|sembra\p{L}*|pare|potrebbe|puo|può|credo|se|non|senza|o)\b/iu

/** It is said of what does not smell so, or asked of both. */
const NOT_SO = /\b(?:not|no|or|maybe|perhaps|forse|non|o|oppure|isn.?t|doesn.?t)\b/iu

/** `Does it smell of rot?` tells of none. */
const ASKED_WHETHER = /^\s*(?:does|do|did|should|could|would|will|can|may|deve|puo|può)\b/iu

const isMouldSeen = (text: string, isOnFruit: boolean): boolean =>
  FURRY.test(text) || (((isOnFruit && MOULD_ON.test(text)) || MOULD_GROWN.test(text)) && !IN_DOUBT.test(text))

/** Glass that went in, or that broke off beside it: never a plant that was added. `A glass of water in the jar` is none. */
const GLASS_INSIDE =
  /\b(?:shards?|splinters?|slivers?|bits?|pieces?|chips?|fragments?|some|broken) (?:of (?:the |a |broken |some )?)?glass\b|\bglass (?:shards?|splinters?|slivers?|bits?|pieces?|chips?|fragments?)\b|\b(?:pezz\p{L}+|schegg\p{L}+|framment\p{L}+|cocci\p{L}*) (?:di |d )?vetro\b|\bvetro rotto\b/u

/** What broke in it. */
const BROKE_IN =
  /\b(?:thermometer|hydrometer|alcoholmeter|glass|beaker|light ?bulb) (?:has |had |just )?(?:broke|broken|smashed|shattered|snapped|cracked|burst) (?:off )?(?:in|inside|into) (?:it|the|my|there)\b|\b(?:rott[oa]|spezzat[oa]|infrant[oa]) (?:il |lo |la |un )?(?:termometro|densimetro|alcolometro|bicchiere|lampadina) (?:dentro|nel|nella)\b/u

/** `There’s glass in it`: never a glass of something. */
const GLASS_THERE =
  /\b(?:theres|there is|there was|i (?:can )?see|i found|found|spotted) glass (?:in|inside|at the bottom of|on the bottom of)\b|\b(?:c e|ce|ci sono|ho trovato|trovato|vedo) (?:del |dei |un po di |un pezzo di )?vetr[oi] (?:in|nel|nella|nell|dentro|sul fondo)\b/u

/** What is no fly: nothing that it fell into is strained. */
const BEAST_IN =
  /\b(?:mouse|mice|rats?|voles?|lizards?|geckos?|slugs?|snails?|frogs?|toads?|birds?|topo|topi|topolino|ratto|lucertola|geco|lumac[ah]e?|rana|uccellino|passerotto)(?: (?!shaped|bones|traps?|droppings?|s)\p{L}+){0,4} (?:in|into|inside|dentro|nel|nella|nell)\b/u
const HAS_FALLEN =
  /\b(?:fell|fallen|drowned|died|dead|got|climbed|found|theres|floating|cadut\p{L}+|annegat\p{L}+|finit\p{L}+|mort[oaie]|trovat\p{L}+|c e)\b/u

/** What carries germs into it. */
const FOULED =
  /\b(?:cat|dog|mouse|rat|bird|gatto|cane|topo) (?:ci |ce )?(?:has |have |ha )?(?:peed|pissed|weed|pooed|pooped|crapped|fatto (?:la )?(?:pipi|cacca)|pisciato) (?:\p{L}+ ){0,2}(?:in|into|inside|on|dentro|nel|nella|it)\b|\b(?:sewage|flood ?water|urine|droppings|vomit|sick|saliva|escrementi|cacca|piscio) (?:has |have |had )?(?:got|gone|went|leaked|run|ran|dripped|fell|came|finit\p{L}+|cadut\p{L}+|entrat\p{L}+) (?:\p{L}+ ){0,2}(?:in|into|inside|onto|dentro|nel|nella)\b/u

/** Whether it has to go for what got into it. */
function isFouled(text: string): boolean {
  const plain = plainWords(text)
  return (
    (BEAST_IN.test(plain) && HAS_FALLEN.test(plain) && !/\b(?:poison|veleno|trap)\b/.test(plain)) || FOULED.test(plain)
  )
}

const WENT_IN =
  /\b(?:at|on|sul) (?:the )?(?:bottom|fondo)\b|\b(?:in|into|inside|nel|nella|dentro)\b.*\b(?:dropp\p{L}*|fell|fallen|got|went|found|theres?|see|cadut\p{L}*|finit\p{L}*|trovat\p{L}*)\b|\b(?:dropp\p{L}*|fell|fallen|got|went|found|theres?|see|cadut\p{L}*|finit\p{L}*|trovat\p{L}*)\b.*\b(?:in|into|inside|nel|nella|dentro)\b/u

function isGlassInside(text: string): boolean {
  const plain = plainWords(text)
  return (GLASS_INSIDE.test(plain) && WENT_IN.test(plain)) || BROKE_IN.test(plain) || GLASS_THERE.test(plain)
}

/** `Is it off?`, `has it gon off`, `si è guastato?`: asked in so few words that nothing else is. */
const GONE_OFF =
  /^(?:(?:oh|so|and|ok|help|hey|e|ma) )*(?:(?:do you think|think|has|have|is|are|did) )?(?:(?:it|its|this|that|they|theyre|mine|is|si|e|il liquore) )*(?:(?:gone?|gon|went|going|turned|go) (?:all )?(?:off?|bad|rancid|rotten)|off|rancid|turned|spoil(?:ed|t)|guast(?:at)?[oaie]|andat[oaie] a male)$/u

/** `My plums have gone bad`. */
const GONE_BAD =
  /^(?:(?:my|the|our) )(?:\p{L}+ ){1,2}(?:(?:has|have|ve|s) )?(?:gone|gon|went|turned|going) (?:all )?(?:bad|rancid|rotten)$/u

const isGoneOff = (text: string): boolean => {
  const plain = plainWords(text).trim()
  return plain.includes(' ') && (GONE_OFF.test(plain) || GONE_BAD.test(plain))
}

/** What is told to be in there, whatever else it is like; null where nothing of the kind is. */
export function insideTold(text: string): { readonly symptom: SymptomId } | null {
  if (isGlassInside(text)) return { symptom: 'broken_glass' }
  if (isFouled(text)) return { symptom: 'insects' }
  if (isGoneOff(text)) return { symptom: 'mould' }
  return isStoneCracked(text) ? { symptom: 'cracked_stones' } : null
}

/** What the words themselves say of it, so that it is not asked. */
function signsTold(sentence: Sentence, id: SymptomId, isOnFruit: boolean): readonly Sign[] {
  const sign = signTold(sentence, id, isOnFruit)
  const isBought = id === 'solvent' && isSpiritBought(sentence)
  return [...(sign === null ? [] : [sign]), ...(isBought ? (['bought'] as const) : [])]
}

/** The same of what it is about alone. */
function signTold({ typed: { text }, has }: Sentence, id: SymptomId, isOnFruit: boolean): Sign | null {
  if (id === 'mould') return isMouldSeen(text, isOnFruit) ? 'growth' : null
  if (id === 'insects') return isFouled(text) ? 'many' : null
  if (id === 'cracked_stones') return isStoneCracked(text) ? 'stones' : null
  if (id === 'broken_glass') return isGlassInside(text) ? 'glass' : null
  if (id === 'rotten_egg') return smellsOfRot(text) && !NOT_SO.test(text) && !ASKED_WHETHER.test(text) ? 'rotten' : null
  if (id !== 'solvent' || NOT_SO.test(text)) return null
  if (namesVarnish(text)) return 'varnish'
  return namesFuel(text) && has('smell') && !has('taste_word') ? 'fuel' : null
}

/** `Lids bulging, got 10 lemons`: what is counted or weighed is no jar’s name. */
function isOnlyCounted({ bits }: Sentence): boolean {
  const plants = bits.filter(({ kind }) => kind === 'plant')
  return (
    plants.length > 0 && plants.every((plant) => plant.with !== undefined) && !bits.some(({ kind }) => kind === 'jar')
  )
}

/** What else is told to be wrong; a stone that is cracked is no glass. */
const besideOf = (sentence: Sentence, id: SymptomId): readonly SymptomId[] =>
  symptomsBeside(sentence, id).filter((each) => id !== 'cracked_stones' || each !== 'broken_glass')

/** What is in it, `my cherries went brown`, where no jar is called so; null where none of it is a plant that is known. */
function plantsTold({ bits, jars }: Sentence): string | null {
  const names = bits.flatMap(({ kind, text, role }) => (kind === 'plant' && role !== 'gone' ? [text] : []))
  const of = [...new Set(names)].join(' + ')
  return of === '' || jars.length > 0 || !isRead('trouble', 'of', of) ? null : of
}

/** The jar that it is about, where one is named, and what the sentence tells of it. */
export function symptomReading(sentence: Sentence, id: SymptomId): TalkReading {
  const { bits, has } = sentence
  const { text } = has('own_jar') && !isOnlyCounted(sentence) ? jarsMeant(sentence, 'jar show') : { text: null }
  // `The hydrometer shows 5 in a 30 % liqueur`: what it shows of what is sweet is too little.
  const [strength] = bits
    .filter(({ kind, role }) => kind === 'strength' && role === 'have')
    .toSorted((one, other) => (id === 'hydrometer_odd' ? other.value - one.value : 0))
  const sweetness = bits.find(({ kind, role }) => kind === 'sweetness' && role === 'have')
  const signs = signsTold(sentence, id, text === null || has('fruit_part'))
  // A drink of the trade has its usual strength; alcohol may have any.
  const drink = signs.includes('bought') ? bits.find(({ kind, value }) => kind === 'spirit' && value < 60) : undefined
  const of = text === null ? plantsTold(sentence) : null
  const strengthTold = strength?.text ?? (drink === undefined ? undefined : `${drink.value}%`)
  const options = {
    symptom: [id, ...besideOf(sentence, id)].map((each) => symptoms[each].en[0]!).join(' + '),
    ...(text !== null && { jar: text }),
    ...(of !== null && signs.length === 0 && { of }),
    ...(signs.length > 0 && { yes: signs.map(signText).join(' + ') }),
    ...(text === null && strengthTold !== undefined && { strength: strengthTold }),
    ...(text === null && sweetness !== undefined && { sweetness: sweetness.text }),
  }
  return { kind: 'symptom', id, options }
}

/** A trouble, and how much of the sentence it explains, 0 to 1. */
export interface SymptomFound {
  readonly id: SymptomId
  readonly share: number
}

export type FindSymptom = (text: string) => SymptomFound | null

/** What is told to have gone wrong; a question of what may be is no trouble. */
export const symptomTold = (sentence: Sentence, text: string, find: FindSymptom): SymptomFound | null =>
  isAsked(sentence) || isOfGarden(sentence) || symptomDenied(sentence) !== null ? null : find(text)
