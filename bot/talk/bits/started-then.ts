import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { isPerson } from '../lexicon/people.ts'
import type { Bit, Sentence } from './bit.ts'
import { isPastDay, mayBeOver } from './past-day.ts'

type Told = Pick<Sentence, 'typed' | 'bits' | 'spans'>

const START = /^(?:start|starts|begin|log|record|inizia\p{L}*|comincia\p{L}*|avvia\p{L}*|registra\p{L}*)$/u
const UNSURE: readonly Concept[] = ['asking', 'hypothesis', 'wish', 'denial', 'started', 'log_start', 'remind']

/** Words by which a start is told as over, with no word of starting. */
const BEGUN =
  /(?:^| )(?:laid|begun|steeped|macerated|infused|soaked|drowned|submerged|set (?:\S+ ){0,8}?(?:off|going|up|away|steeping|soaking|down)|(?:ho|abbiamo|avevo|avevamo) (?:\S+ ){0,2}?mess[oaie]|(?:steeping|soaking|sitting|infusing|a macerare|in infusione) (?:\S+ ){0,10}?(?:since|da))(?= |$)/
/** `The sloes are in, did it on Sunday`: where they are, and that it is done. */
const IS_IN =
  /(?:^| )(?:(?:is|are|re|s|went|gone|sono|e) (?:now |all |safely |already |gia )?(?:in|inside|dentro|steeping|soaking|going|on|under way|underway)|in with|in there)(?= |$)/
const DONE =
  /(?:^| )(?:(?:did|done|made) (?:it|that|this|them|so|all that)|fatt[oaie]|(?:jar|vaso) (?:stands|is|sta) (?:already|there|gia))(?= |$)/
/** What was bought is begun by nobody. */
const CAME_BY =
  /^(?:bought|buy|picked|picking|given|gave|found|received|gathered|foraged|harvested|collected|ordered|got|comprat[oaie]|raccolt[oaie]|trovat[oaie]|regalat[oaie]|ricevut[oaie]|pres[oaie])$/
/** Almost done, done every year, or put by. */
const NOT_QUITE =
  /(?:^| )(?:almost|nearly|quasi|should have|to be|every|each year|always|usually|sempre|ogni|da parte|via|maybe|perhaps|forse)(?= |$)/
/** Less is poured to a jar that stands, ml; common practice, no source. */
const LEAST_ML = 150

/** A plant with its amount, and what is poured on it, with how much. */
const isBatchTold = (bits: readonly Bit[]): boolean =>
  bits.some(({ kind }) => kind === 'plant') &&
  bits.some(({ kind }) => kind === 'mass' || kind === 'bare') &&
  bits.some(({ kind, value }) => kind === 'bottles' || (kind === 'volume' && value >= LEAST_ML))

/** `Laid 500 g sloes down in 70 cl gin last Friday`: a batch told as over, by its words and its day. */
function toldAsOver({ typed: { tokens }, bits }: Told): readonly ConceptSpan[] {
  const text = tokens.map((token) => token.text).join(' ')
  const isOver = BEGUN.test(text) || (IS_IN.test(text) && DONE.test(text)) || (DONE.test(text) && / put /.test(text))
  if (!isOver || tokens.some((token) => CAME_BY.test(token.text) || isPerson(token.text)) || !isBatchTold(bits))
    return []
  if (NOT_QUITE.test(text)) return []
  const days = bits.filter((bit) => mayBeOver(bit, tokens))
  const [day, another] = days
  return day === undefined || another !== undefined ? [] : [{ concept: 'log_start', from: day.from, to: day.to }]
}

/** `Start 300 g sloes in 70 cl gin, 5 weeks ago`: an order that names a day that is over tells of what was done on it. */
export function startedThen(told: Told): readonly ConceptSpan[] {
  const { tokens } = told.typed
  const at = tokens.findIndex(({ text }) => START.test(text))
  const isUnsure = told.spans.some(({ concept }) => UNSURE.includes(concept)) || tokens.some(({ text }) => text === '?')
  if (isUnsure) return []
  const isBatch =
    told.bits.some(({ kind }) => kind === 'plant') &&
    told.bits.some(({ kind }) => kind === 'spirit' || kind === 'strength') &&
    told.bits.filter(isPastDay).length === 1
  return at === -1 || !isBatch ? toldAsOver(told) : [{ concept: 'log_start', from: at, to: at + 1 }]
}
