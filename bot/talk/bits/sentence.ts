import { isSaidInUs } from '../../../core/quantity/read/units-said.ts'
import { saidText } from '../../../core/quantity/said/said-text.ts'
import { SPIRIT_BOTTLE_ML, US_SPIRIT_BOTTLE_ML } from '../../../core/quantity/us-bottles.ts'
import { broadMeant } from '../lexicon/broad-words.ts'
import { type ConceptSpan, conceptsIn } from '../lexicon/concepts.ts'
import { lexiconFor } from '../lexicon/language-of.ts'
import type { Concept, Derived } from '../lexicon/lexicon.ts'
import { respelt } from '../lexicon/respell.ts'
import type { Around } from './amount-bits.ts'
import { withoutAsides, withoutBystanders } from './asides.ts'
import { begunOrAgain } from './begun-or-again.ts'
import type { Bit, Sentence, Surroundings, TalkJar } from './bit.ts'
import { bitsIn } from './bits-in.ts'
import { derivedOfJars } from './derived-of-jars.ts'
import { filledInto } from './filled-bottles.ts'
import { isLiquidAmount } from './jar-sizes.ts'
import { isOver, jarsNamed } from './jars-of.ts'
import { liqueursMeant } from './liqueurs-meant.ts'
import { withMisspelt } from './misspelt-plants.ts'
import { begunByName, nameTold } from './name-told.ts'
import { NEXT_DEED, newNameAt, partNameAt } from './new-name-at.ts'
import { withoutPlaceItself } from './place-itself.ts'
import { withRoles } from './roles.ts'
import { spansMeant } from './spans-meant.ts'
import { toldOfJar } from './told-of-jar.ts'
import { weighTogether } from './weigh-together.ts'
import { wholePouredOff } from './whole-poured-off.ts'
import { withoutLateTelling, withoutLikeness, withoutShorter } from './without-likeness.ts'

/** A sentence taken apart into bits with roles and concepts. Never throws; an empty one has none. */
export function sentenceIn(text: string, surroundings: Surroundings): Sentence {
  const { lexicons, jars, today, isUs = false } = surroundings
  const asTyped = saidText(text)
  const spiritBottleMl = isSaidInUs(text, isUs) ? US_SPIRIT_BOTTLE_ML : SPIRIT_BOTTLE_ML
  const lexicon = lexiconFor(asTyped.tokens, lexicons)
  const names = new Set(jars.flatMap(({ name }) => saidText(name).tokens.map((token) => token.text)))
  const plainly = broadMeant(asTyped.tokens, lexicon, names)
  const typed = { ...asTyped, tokens: liqueursMeant(respelt(plainly, lexicon, names)) }
  const named = withoutBystanders(withoutLateTelling(conceptsIn(typed.tokens, lexicon), typed.tokens), typed)
  const all = filledInto(spansMeant(withoutShorter(withoutLikeness(named)), typed.tokens), typed, jars)
  const found = withoutPlaceItself(typed, all)
  const told = withoutAsides(typed, bitsIn({ typed, lexicon, spans: found, jars, today, spiritBottleMl }))
  const name = nameTold(typed, found)
  const isOfName = ({ from, to }: Bit): boolean => name !== null && name.from <= from && to <= name.to
  const read = told.filter((bit) => !isWithinCount(bit, found) && !isOfName(bit))
  // Of `five star anise` no star is given, of `orange peel` no colour is told.
  const given = newNameIn(typed, found)
  const meant = found.filter(
    (span) =>
      !isOfSpan(span, read) &&
      span.from < given &&
      ((span.concept !== 'tasted' && span.concept !== 'colour') ||
        !read.some(
          ({ kind, from, to }) =>
            kind === 'plant' &&
            from <= span.from &&
            span.to <= to &&
            (span.concept === 'tasted' || to - from > 1 || isWithTheOther(typed.tokens, from)),
        )),
  )
  const spans = [
    ...wholePouredOff({ typed, bits: read, jars, spans: meant }),
    ...toldOfJar({ typed, bits: read, jars, spans: meant }),
    ...begunOrAgain({ typed, bits: read, spans: meant }),
    ...begunByName(name, meant),
  ]
  const around = { typed, lexicon, spans, jars, today, spiritBottleMl }
  const plain = withBits(around, read, isUs)
  return {
    ...plain,
    forgiving() {
      const all = withMisspelt(around, read)
      return all.length > read.length ? withBits(around, all, isUs) : this
    },
  }
}

/** What a sentence tells by the bits that are found in it. */
function withBits(around: Around, found: readonly Bit[], isUs: boolean): Sentence {
  const { typed, spans, jars } = around
  const bits = withRoles(around, found)
  const concepts = [...spans.map(({ concept }) => concept), ...derivedFrom(bits, jars)]
  const said = new Set<Concept>([...concepts, ...derivedOfJars({ bits, jars, spans, typed })])
  weighTogether(said, bits, spans, typed)
  if (said.has('asking') && !said.has('with_amounts')) said.add('asking_bare')
  return {
    ...around,
    bits,
    isUs,
    has: (...concepts) => concepts.some((each) => said.has(each)),
    forgiving() {
      return this
    },
  }
}

/** Where the name begins that a jar is given: none of its words says how the jar is. Behind all pieces where none is given. */
function newNameIn({ text, tokens }: Sentence['typed'], spans: readonly ConceptSpan[]): number {
  const says = (...concepts: readonly Concept[]): boolean => spans.some(({ concept }) => concepts.includes(concept))
  const isPart = says('divided', 'other_vessel')
  const name = says('renamed') || isPart ? (newNameAt(text) ?? (isPart ? partNameAt(text) : null)) : null
  const from = name === null || NEXT_DEED.test(name.text) ? -1 : tokens.findIndex((token) => token.from >= name.at)
  return from === -1 ? tokens.length : from
}

/** `An hour or two` asks for no amount. */
const isOfSpan = ({ concept, from, to }: ConceptSpan, bits: readonly Bit[]): boolean =>
  concept === 'how_much' && bits.some((bit) => bit.kind === 'span' && bit.from < from && to <= bit.to)

/** `A vanilla pod’s gone in with the orange`: a jar or a fruit, no colour that is lost. */
const isWithTheOther = (tokens: Sentence['typed']['tokens'], from: number): boolean =>
  /^(?:the|my|our)$/.test(tokens[from - 1]?.text ?? '') &&
  /^(?:with|into|in|to|onto)$/.test(tokens[from - 2]?.text ?? '')

/** Of `the two`, `start a jar` and `through two papers` the number is none by itself. */
const COUNTS = new Set<Concept>(['both_of_them', 'all_of_them', 'log_start', 'thanks', 'greeting', 'filtered'])

const isWithinCount = ({ kind, from, to }: Bit, spans: readonly ConceptSpan[]): boolean =>
  spans.some(
    ({ concept, ...span }) =>
      COUNTS.has(concept) &&
      // `Thanks a mil` measures nothing.
      (kind === 'bare' || kind === 'date' || (kind === 'volume' && concept === 'thanks')) &&
      span.from <= from &&
      to <= span.to,
  )

/** From here on a wished strength is one of spirit, not of a liqueur, % vol. */
const HIGH = 45

/** What the amounts of a sentence tell. */
function derivedFrom(bits: readonly Bit[], jars: readonly TalkJar[]): readonly Derived[] {
  const liquids = bits.filter(isLiquidAmount)
  const strengths = bits.filter(({ kind, role }) => kind === 'strength' && role === 'have')
  const wished = bits.find(({ kind, role }) => kind === 'strength' && role === 'want')
  const isAmount = bits.some(
    ({ kind, role, with: place }) =>
      ['volume', 'mass', 'bottles'].includes(kind) ||
      (kind === 'bare' && role === 'of_plant') ||
      (kind === 'strength' && role !== null && place !== undefined),
  )
  const plants = bits.filter(({ kind, role }) => kind === 'plant' && role !== 'left_out' && role !== 'gone')
  const isSweet = bits.some(({ role }) => role === 'of_sugar' || role === 'of_water')
  const isOther = plants.some(({ with: place }) => place !== undefined) || bits.some(({ kind }) => kind === 'spirit')
  const isOwn =
    bits.some(({ kind }) => kind === 'jar') ||
    plants.some(({ text, ids }) =>
      jars.some(
        (jar) =>
          !isOver(jar) &&
          (jar.name.toLowerCase() === text.toLowerCase() || jar.plants.some((id) => ids?.includes(id) === true)),
      ),
    )
  const isDrink =
    liquids.length === 1 &&
    strengths.length > 0 &&
    bits.some(({ kind, role }) => kind === 'sweetness' && role === 'have')
  const isSpirit = bits.some(({ kind }) => kind === 'spirit') || strengths.length > 0
  const sweet = bits.filter(({ role }) => role === 'of_sugar' || role === 'of_water')
  const isPlanned = plants.some(({ with: place }) => place !== undefined) && liquids.length > 0
  const isThinned = liquids.length === 1 && strengths.length === 1 && wished !== undefined && plants.length === 0
  return [
    ...(isDrink && !isPlanned ? (['measured_drink'] as const) : []),
    ...(liquids.length > 0 && isSpirit && sweet.length > 0 && plants.length === 0
      ? (['spirit_and_sweet'] as const)
      : []),
    ...(isPlanned && isSpirit ? (['amounts_planned'] as const) : []),
    ...(isPlanned && plants.length > 1 ? (['several_planned'] as const) : []),
    ...(isPlanned && bits.some(({ role }) => role === 'of_sugar') ? (['recipe_told'] as const) : []),
    ...(isThinned &&
    !bits.some(({ kind }) => kind === 'sweetness' || kind === 'jar') &&
    sweet.every(({ value }) => value === 0)
      ? (['only_thinned'] as const)
      : []),
    ...(plants.length > 0 && !isAmount && !isSpirit && bits.some(({ kind }) => kind === 'date')
      ? (['planned_by_day'] as const)
      : []),
    ...(plants.some(({ spirit }) => spirit !== undefined) ? (['drink_named'] as const) : []),
    ...(plants.length > 0 && (liquids.length > 0 || bits.some(({ kind }) => kind === 'spirit'))
      ? (['plants_and_spirit'] as const)
      : []),
    ...(plants.some(({ with: place }) => place !== undefined) ? (['plant_amount'] as const) : []),
    ...(plants.length > 1 ? (['two_plants'] as const) : []),
    ...(isSweet && !isOther && isForSyrup(bits, jars) ? (['sweet_stuff'] as const) : []),
    ...(isOwn ? (['own_jar'] as const) : []),
    ...(liquids.length > 1 && strengths.length > 1 ? (['several_liquids'] as const) : []),
    ...(wished === undefined ? [] : [wished.value >= HIGH ? ('wished_high' as const) : ('wished_low' as const)]),
    ...(isAmount ? (['with_amounts'] as const) : []),
  ]
}

/** Sugar and water both, or one of them where the jar that is named, or any, waits for it. */
function isForSyrup(bits: readonly Bit[], jars: readonly TalkJar[]): boolean {
  const named = jarsNamed(bits, jars).map(({ jar }) => jar)
  return (
    (bits.some(({ role }) => role === 'of_sugar') && bits.some(({ role }) => role === 'of_water')) ||
    (named.length > 0 ? named : jars).some(({ stage }) => stage === 'strained')
  )
}
