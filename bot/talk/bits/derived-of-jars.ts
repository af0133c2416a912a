import { wordsFrom } from '../../../core/quantity/read/tokens.ts'
import { type Concept, DEEDS, type Derived } from '../lexicon/lexicon.ts'
import type { Sentence, TalkJar } from './bit.ts'
import { jarsNamed, jarsOf, runningAmong } from './jars-of.ts'
import { isPieceOut } from './lifted-out.ts'
import { moreTimeIn } from './more-time.ts'
import { isNextAsked } from './next-asked.ts'
import { placedNames } from './placed-name.ts'
import { isReadyAsked } from './ready-asked.ts'

/** Deeds that are still to come. */
const AHEAD: readonly Concept[] = ['shake', 'strain', 'sweeten', 'bottle', 'shook', 'strained', 'sweetened', 'bottled']

/** Two jars are to be made one. */
const ORDERED = /^(?:pour|tip|mix|blend|combine|merge|join|unisci|mescola|versa)$/

const LET_BE =
  /(?:^|[,;.] ?)(?:(?:i ll|ill|i|lets|let|we|please|just|ok|but|and|then) )*(?:give|leave|let|keep|lascia\p{L}*|do|dai|diamo)\b|\b(?:needs?|wants?|deserves?|could (?:do with|use)|h(?:a|anno) bisogn[oa]|vuole|vogliono|ci vuole|ci vogliono|gli? serv(?:e|ono)|servono)\b/u

/** Of what was spoken of, or of all there is: nobody else needs the time. */
const OF_IT =
  /\b(?:it|its|they|them|this one|that one)\b|^(?:just |now |ora |ne )?(?:needs?|wants?|deserves?|could do with|h(?:a|anno) bisogn[oa]|vuole|vogliono|ci vuole|ci vogliono|gli? serv\p{L}+|servono|lascia(?:lo|la|li|le)|dagli)\b/u

/** `The vanilla out of the ginger`: a plant of a jar that is named, which is not all that is in it. */
function isOutOfNamed(sentence: Pick<Sentence, 'bits' | 'typed'>, running: readonly TalkJar[]): boolean {
  const names = placedNames(sentence, 'out_of')
  const [jar] = names.flatMap((bit) => jarsOf(bit, running))
  const isAll = (ids: readonly string[]): boolean =>
    jar !== undefined && jar.plants.length === 1 && ids.some((id) => jar.plants.includes(id))
  return (
    names.length > 0 &&
    sentence.bits.some(
      (bit) => bit.kind === 'plant' && bit.role !== 'gone' && !names.includes(bit) && !isAll(bit.ids ?? []),
    )
  )
}

/** From here on no strength of a liquid is one that is wished, % vol, and how near one has to be that is read of a jar. */
const READ = { least: 45, near: 6 } as const

/** `How much sugar for 1 litre of lemon at 84`: so much of a jar, as strong as that. What is wished of it is weaker. */
function isMeasuredAnew(bits: Sentence['bits'], jar: TalkJar | undefined): boolean {
  const amounts = bits.filter(({ kind, role }) => kind === 'volume' && role !== 'of_water' && role !== 'of_sugar')
  const read = bits.filter(({ kind, role }) => kind === 'strength' && role === 'have')
  const [only, another] = read
  if (jar === undefined || amounts.length !== 1 || only === undefined || another !== undefined) return false
  const now = jar.strengthPercent()
  return only.value >= READ.least || (now !== null && Math.abs(now - only.value) <= READ.near)
}

/** What the jars tell of what is said: two are poured together, one plant of several comes out, a place is named for one. */
export function derivedOfJars({
  bits,
  jars,
  spans,
  typed,
}: Pick<Sentence, 'bits' | 'jars' | 'spans' | 'typed'>): readonly Derived[] {
  const says = (concept: Concept): boolean => spans.some((span) => span.concept === concept)
  const running = runningAmong(jars)
  const named = jarsNamed(bits, jars)
  const isPair = named.length === 2 || (says('both_of_them') && running.length === 2)
  const isPart = bits.some(
    ({ kind, ids, text }) =>
      kind === 'plant' &&
      running.some(
        ({ stage, plants, name }) =>
          stage === 'steeping' &&
          name.toLowerCase() !== text.toLowerCase() &&
          plants.length > 1 &&
          plants.some((id) => ids?.includes(id)),
      ),
  )
  const isOutOf = says('took_out') && isOutOfNamed({ bits, typed }, running)
  // Of a piece that is of nothing there it is asked what it was.
  const isPiece = running.some(({ stage }) => stage === 'steeping') && isPieceOut(typed.tokens, bits)
  const isRated = bits.some(({ kind }) => kind === 'rating') && running.length > 0
  const [told] = named.length === 1 ? named.map(({ jar }) => jar) : running.length === 1 ? running : []
  const isPast = told !== undefined && told.stage !== 'steeping'
  const isSugared = bits.some(({ role }) => role === 'of_sugar') && bits.some(({ role }) => role === 'of_water')
  const isAhead = says('hypothesis') && AHEAD.some(says) && !says('asking') && told !== undefined
  // Nothing else goes in: `mix the lemon and the ginger with a litre of vodka` is a batch.
  const isOnlyJars = bits.every(({ kind }) => kind === 'plant' || kind === 'jar' || kind === 'date')
  const isOrdered = ORDERED.test(typed.tokens[0]?.text ?? '') && isOnlyJars
  const isDeed = spans.some(({ concept }) => DEEDS.has(concept))
  const isNo = says('denial') || says('no') || says('be_quiet')
  // `Give the sloe another week`, `it needs another fortnight`: no reminder till then.
  const isOfSpokenOf = bits.every(({ kind }) => /^(?:span|date|bare)$/.test(kind)) && OF_IT.test(wordsFrom(typed))
  const isGiven =
    running.length > 0 &&
    (named.length === 1 || (named.length === 0 && isOfSpokenOf)) &&
    moreTimeIn(typed) !== null &&
    LET_BE.test(wordsFrom(typed)) &&
    !says('asking') &&
    !AHEAD.some(says)
  // `Sliced a lime into it`.
  const isIntoIt =
    running.length > 0 &&
    says('added') &&
    /\binto (?:it|its jar)\b/.test(wordsFrom(typed)) &&
    !bits.some(({ kind }) => kind === 'spirit' || kind === 'strength')
  // `Put 50 ml of vodka in the ginger`: of a jar, whether there is one or not.
  const isIntoNamed =
    running.length > 0 &&
    (says('added') || says('topped_up')) &&
    !says('started') &&
    placedNames({ typed, bits }, 'into').length > 0
  return [
    ...(isGiven ? (['given_time'] as const) : []),
    ...(says('syrup') && !isDeed && isMeasuredAnew(bits, named[0]?.jar) ? (['measured_anew'] as const) : []),
    ...(isIntoIt || isIntoNamed ? (['into_jar'] as const) : []),
    ...(isAhead ? (['deed_ahead'] as const) : []),
    ...(says('away') && running.length > 0 ? (['away_now'] as const) : []),
    ...(says('this_week') && isNo && !says('shook') ? (['not_this_week'] as const) : []),
    ...(says('strained') && isPast ? (['refiltered'] as const) : []),
    ...(isSugared && says('put_in') && told?.stage === 'strained' ? (['syrup_in'] as const) : []),
    ...((says('united') || isOrdered) && isPair ? (['two_jars'] as const) : []),
    ...(isPiece ? (['piece_out'] as const) : []),
    ...((says('took_out') && isPart) || isPiece || isOutOf ? (['part_of_jar'] as const) : []),
    ...(says('stands') && says('place_word') ? (['housed'] as const) : []),
    ...(says('bottles_left') && !says('what_is_on') && (told?.stage === 'resting' || told?.stage === 'ready')
      ? (['bottles_of_jar'] as const)
      : []),
    ...(isRated ? (['rated'] as const) : []),
    ...(isReadyAsked({ bits, jars, spans, typed }) || isNextAsked({ bits, jars, typed })
      ? (['asked_of_jar'] as const)
      : []),
  ]
}
