import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import type { SymptomId } from '../../../core/trouble/symptoms.ts'
import type { Path } from '../../calls/signatures.ts'
import type { BitKind, Sentence } from '../bits/bit.ts'
import type { FrameTried } from '../frames/score.ts'
import { wordSet } from '../lexicon/concepts.ts'
import { type Concept, DEEDS } from '../lexicon/lexicon.ts'
import { isAsked } from './is-told.ts'
import { isStillGoodAsked } from './still-good.ts'

/** A handbook entry or a symptom stands before a call that only a plant speaks for. */
export const SURE = 4.6

/** What may burst is answered as what it is, asked or told. */
export const MAY_BURST: ReadonlySet<SymptomId> = new Set(['pressure', 'fermenting'])

/** From here on an entry explains so much that it stands before what only a word or two speak for. */
const TELLING = 0.7

/** From here on it explains all of it. */
const WHOLE = 0.95

/** The same where nothing is asked. */
const MOST = 0.85

/** Commands that a single word may call up, with nothing that fills them. */
const BY_A_WORD = new Set<Path>([
  'measure',
  'settings',
  'cost',
  'jar list',
  'reminders',
  'shopping',
  'bottles',
  'label',
])

/** What is asked of any plant, not of how much or how long of it. */
const OF_PLANT = new Set<Path>(['plan', 'botanical', 'cautions'])

/** Where the sentence begins, greetings left out. */
function beginOf({ typed, spans }: Sentence): number {
  let at = 0
  const isGreeting = (place: number): boolean =>
    typed.tokens[place]?.kind === 'sign' ||
    spans.some(({ concept, from, to }) => concept === 'greeting' && from <= place && place < to)
  while (at < typed.tokens.length && isGreeting(at)) at++
  return at
}

/** `Does it …`, `can i …`, `come si …`: the question comes first, nothing is told before it. */
function beginsAsking(sentence: Sentence): boolean {
  const begin = beginOf(sentence)
  // `È troppo dolce, come rimedio?` is told first.
  const first = sentence.typed.tokens[begin]?.text ?? ''
  if (first === 'e') return false
  if (sentence.lexicon.id === 'en' && ASKING_FIRST.test(first)) return true
  return sentence.spans.some(({ concept, from }) => ASKS.has(concept) && from >= begin && from <= begin + 1)
}

/** `Do damsons need pricking`. */
const ASKING_FIRST = /^(?:do|does|is|are|can|could|will|would|should|shall|may|must|how|what|which|when|where|why)$/

const ASKS: ReadonlySet<string> = new Set(['asking', 'may_i', 'would_it', 'how_much', 'how_long', 'what_is'])

/** `Why is it cloudy`, `perché il mio …`: of one's own, so it is told. */
const isOfOwn = ({ typed, has }: Sentence): boolean =>
  has('own_jar') ||
  typed.tokens.some(({ text }) => /^(?:my|mine|our|mio|mia|miei|mie|nostro|nostra)$/.test(text)) ||
  (/^(?:why|whys|perche)$/.test(typed.tokens.find(({ kind }) => kind === 'word')?.text ?? '') &&
    typed.tokens.some(({ text }) => /^(?:it|this|that|its|lo|la|questo|questa)$/.test(text)))

/** `Why did my cream liqueur curdle`: it went wrong. */
export const isWhyMine = ({ typed }: Pick<Sentence, 'typed'>): boolean =>
  /^(?:why|how come|perche) (?:did|has|have|is|are|was|were|s|does|do|il|la|i|le)? ?(?:my|our|mine|mio|mia|miei|mie|nostro|nostra) /.test(
    wordsFrom(typed),
  )

/** `How do i make it less strong`, `come lo salvo`: to be mended. */
const TO_MEND =
  /\b(?:make|fix|mend|save|rescue|cure|sort) (?:it|this|that|them)\b|\b(?:rimedi\p{L}*|salv(?:o|are|arlo|arla)|aggiust\p{L}*)\b/u

/** What went wrong with a drink of one’s own, which may still be good or is to be mended, is no question of what happens to any. */
export const isOwnTrouble = (sentence: Sentence, text: string): boolean =>
  isOfOwn(sentence) || (isStillGoodAsked(text) && !beginsAsking(sentence)) || TO_MEND.test(sentence.typed.text)

/** Neither does a question stand before these. */
const PRESSING: ReadonlySet<SymptomId> = new Set([...MAY_BURST, 'mould', 'broken_glass'])

const isNumber = ({ kind, value }: FrameTried['used'][number]): boolean => value > 0 && kind !== 'spirit'

/** Whether an entry that explains so much of a question stands before what was found to have gone wrong. */
export const isBeforeSymptom = (share: number, id: SymptomId, sentence: Sentence): boolean =>
  (share >= TELLING &&
    !PRESSING.has(id) &&
    beginsAsking(sentence) &&
    !isOfOwn(sentence) &&
    !TO_MEND.test(sentence.typed.text)) ||
  (share >= WHOLE && !PRESSING.has(id) && sentence.has('would_it') && !sentence.has('own_jar')) ||
  // `Do bottles burst in the freezer`: nothing has.
  (id === 'pressure' && sentence.has('in_cold') && beginsAsking(sentence) && !isOfOwn(sentence))

/** A word that is neither of a thing, nor of what is known to be said, nor one that says nothing: `do you keep limoncello in the freezer`. */
function saysMore({ typed, lexicon, bits, spans }: Sentence, than?: Concept): boolean {
  const [fillers, between] = [wordSet(lexicon.fillers), wordSet(lexicon.between)]
  const said = [...bits, ...spans.filter(({ concept }) => concept === than)]
  const isThing = (at: number): boolean => said.some(({ from, to }) => from <= at && at < to)
  return typed.tokens.some(
    ({ kind, text }, at) => kind === 'word' && !isThing(at) && !fillers.has(text) && !between.has(text),
  )
}

const MEASURED: ReadonlySet<BitKind> = new Set(['volume', 'mass', 'strength', 'bottles'])

/** Several amounts, and nothing asked: no entry stands for what is to be worked out. */
export const isOfAmounts = (sentence: Sentence): boolean =>
  !isAsked(sentence) && sentence.bits.filter(({ kind, role }) => MEASURED.has(kind) && role !== 'gone').length >= 2

const OF_A_GLASS: ReadonlySet<BitKind> = new Set(['volume', 'mass', 'strength'])

/** `How much alcohol is in a shot of the orange`: of a glass and of what is in it, so it is worked out, or asked how big it is. */
const isGlassAsked = ({ bits, has }: Sentence): boolean =>
  has('units_of_alcohol') &&
  (bits.some(({ kind }) => OF_A_GLASS.has(kind)) || (has('glass_of') && has('own_jar', 'drink_named')))

/** What is told of one's own jar is no question of the handbook, unless it explains most of it. */
export function isOfHandbook(share: number, sentence: Sentence): boolean {
  if (
    sentence.has('be_quiet', 'shaking_reminders', 'remind', 'calendar') &&
    !isAsked(sentence) &&
    !beginsAsking(sentence)
  )
    return false
  if (isGlassAsked(sentence)) return false
  if (!sentence.has('own_jar')) return true
  if (sentence.bits.some(isNumber) || (sentence.has(...DEEDS) && !isAsked(sentence))) return false
  return share >= (isAsked(sentence) ? TELLING : MOST)
}

/** `What does a bottle cost me`: of one's own jar, not of what people pay. */
const isCostToOne = ({ typed }: Sentence): boolean =>
  typed.tokens.some(({ text }) => /^(?:me|us|mi|ci|it|mine|ours)$/.test(text))

/** Whether it stands before a command that has nothing of the sentence but a word or a plant. */
export function isBeforeFrame(share: number, { frame, used, lacks }: FrameTried, sentence: Sentence): boolean {
  if (share < TELLING || used.some(isNumber) || sentence.has('own_jar')) return false
  if (lacks.length > 0 && frame.does === 'compute') return true
  // `What should I do now`: all of it says so.
  if (frame.command === 'jar list' && !saysMore(sentence, 'what_is_on')) return false
  // `Quante ne restano?`, where there are bottles.
  if (frame.command === 'bottles' && sentence.jars.length > 0 && !saysMore(sentence, 'bottles_left')) return false
  if (frame.command === 'reminders' && sentence.has('reminders_when')) return false
  if (BY_A_WORD.has(frame.command)) return frame.command !== 'cost' || !isCostToOne(sentence)
  if (frame.does === 'never') return beginsAsking(sentence)
  return (
    OF_PLANT.has(frame.command) &&
    beginsAsking(sentence) &&
    (frame.command !== 'plan' || saysMore(sentence)) &&
    !sentence.has(
      'how_much',
      'how_long',
      'per_litre',
      'tell_me_about',
      'when_take_out',
      'what_can_i_make',
      'whats_ripe',
    )
  )
}

/** Whether it is asked if a plant is any good, and no more of it. */
export const isBySuiting = ({ has }: Sentence): boolean =>
  has('suits') && !has('how_much', 'per_litre', 'how_long', 'when_take_out', 'tell_me_about')

/** `Must the stones come out? I’ve two kilos of cherries`: where no spirit and no bottles are told, no plan is asked for. */
export const isUnpoured = ({ frame, options }: FrameTried, sentence: Sentence): boolean =>
  frame.command === 'plan' &&
  options.spirit === undefined &&
  options.strength === undefined &&
  options.bottles === undefined &&
  isAsked(sentence)

/** A call with all that it needs, of numbers: no symptom stands before it. */
export const isFullCall = (best: FrameTried | undefined): boolean =>
  best !== undefined &&
  best.score >= SURE &&
  best.lacks.length === 0 &&
  best.used.filter(({ value }) => value > 0).length >= 2

/** What is told goes before what is asked where they are as near. */
const NEAR = 0.1

export const leadOfTold = (sentence: Sentence): number => (beginsAsking(sentence) ? 0 : NEAR)
