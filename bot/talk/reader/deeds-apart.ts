import { textFrom } from '../../../core/quantity/read/tokens.ts'
import type { Sentence, Surroundings } from '../bits/bit.ts'
import { jarsNamed, jarsOf, runningAmong } from '../bits/jars-of.ts'
import { sentenceIn } from '../bits/sentence.ts'
import { symptomIn } from '../frames/symptoms.ts'
import type { ConceptSpan } from '../lexicon/concepts.ts'
import type { Concept } from '../lexicon/lexicon.ts'
import { givenAndAsked } from './given-and-asked.ts'
import { isToldNow } from './is-told.ts'
import { notTheOther } from './not-the-other.ts'
import { strainedEach } from './strained-each.ts'

/** Deeds that one step records: two of a group in one sentence are one deed told twice. */
const GROUPS: Readonly<Partial<Record<Concept, string>>> = {
  shook: 'shake',
  strained: 'strain',
  took_out: 'strain',
  filtered: 'strain',
  sweetened: 'sweeten',
  bottled: 'bottle',
  tasted: 'taste',
  opened: 'open',
  gave_away: 'give',
  added: 'add',
}

/** Of what is put in only where nothing else is: the syrup, a start and a straining are told with the same words. */
const ALONE_WITH = new Set(['shake', 'taste', 'open'])

/** Where one thing ends and the next may begin. */
const SEPARATOR = /^(?:and|e|ed|then|poi|but|ma|also|plus|[+&,;.!?])$/

/** A question behind a deed stands apart by more than a comma: `ho filtrato, 930 ml, come arrivo a 30?` is only asked. */
const STRONG = /^(?:and|e|ed|then|poi|;|[.!])$/

const MOST_PARTS = 4

interface Part {
  readonly from: number
  readonly to: number
}

const deedsOf = (sentence: Sentence): readonly (ConceptSpan & { readonly group: string })[] => {
  // One step records what it was racked and fined with, none what it was strained and fined with.
  const fining = sentence.has('strained') ? 'fine' : 'strain'
  const all = sentence.spans.flatMap((span) => {
    const group = span.concept === 'fined' ? fining : GROUPS[span.concept]
    return group === undefined ? [] : [{ ...span, group }]
  })
  const others = new Set(all.filter(({ group }) => group !== 'add').map(({ group }) => group))
  const mayAdd = !sentence.has('started') && [...others].every((group) => ALONE_WITH.has(group))
  // `Put it through a cloth` is told by the longest of what holds there.
  const told = all.filter(({ group }) => group !== 'add' || mayAdd)
  return told
    .filter(
      (deed) =>
        !told.some(
          (other) =>
            other !== deed &&
            other.from <= deed.from &&
            deed.to <= other.to &&
            other.to - other.from > deed.to - deed.from,
        ),
    )
    .toSorted((one, other) => one.from - other.from)
}

/** The place behind the separators that stand before a piece, no further back than its clause; null where none does. */
function cutBefore({ typed: { tokens } }: Sentence, at: number, after: number): number | null {
  for (let place = at - 1; place >= after; place--) if (SEPARATOR.test(tokens[place]!.text)) return place + 1
  return null
}

/** Where each further deed, or a question behind a deed, begins. */
function cutsIn(sentence: Sentence): readonly number[] {
  const { typed, spans, bits } = sentence
  const deeds = deedsOf(sentence)
  const cuts: number[] = []
  deeds.forEach((deed, at) => {
    const before = deeds.slice(0, at).findLast(({ to }) => to <= deed.from)
    if (before === undefined || before.group === deed.group) return
    const cut = cutBefore(sentence, deed.from, before.to)
    if (cut !== null) cuts.push(cut)
  })
  const [first] = deeds
  if (first === undefined) return []
  const last = cuts.at(-1) ?? 0
  const isNamed = bits.some(({ kind, to }) => (kind === 'plant' || kind === 'jar') && to > last)
  typed.tokens.forEach(({ text }, at) => {
    const isAsked = spans.some(({ concept, from }) => concept === 'asking' && (from === at + 1 || from === at + 2))
    if (at > first.to && at > last && STRONG.test(text) && isAsked && isNamed && !cuts.includes(at + 1))
      cuts.push(at + 1)
  })
  // `Shook the lemon, ginger not yet`: what is denied of another jar.
  typed.tokens.forEach(({ text }, at) => {
    const rest = bits.find(({ kind, from }) => (kind === 'plant' || kind === 'jar') && from > at && from - at <= 4)
    const isDeed = deeds.some(({ from }) => from > at)
    if (at <= first.to || !SEPARATOR.test(text) || rest === undefined || isDeed) return
    // `And the ginger, no mould on either`: not of the jar.
    const isOf = (from: number): boolean =>
      from > at && !typed.tokens.slice(rest.to, from).some((token) => SEPARATOR.test(token.text))
    if (spans.some(({ concept, from }) => concept === 'denial' && isOf(from))) cuts.push(at + 1)
  })
  return [...new Set(cuts)].toSorted((one, other) => one - other)
}

const withoutEdges = ({ typed: { tokens } }: Sentence, { from, to }: Part): Part => {
  let [begin, end] = [from, to]
  while (begin < end && SEPARATOR.test(tokens[begin]!.text)) begin++
  while (end > begin && SEPARATOR.test(tokens[end - 1]!.text) && tokens[end - 1]!.text !== '?') end--
  return { from: begin, to: end }
}

/** What is told behind the jars to have gone wrong: a piece of its own. */
function troubleBehind(sentence: Sentence, at: number, surroundings: Surroundings): Part | null {
  const { tokens } = sentence.typed
  const from = tokens.findIndex(({ text }, place) => place >= at && SEPARATOR.test(text))
  if (from === -1) return null
  const part = withoutEdges(sentence, { from, to: tokens.length })
  const isTrouble = symptomIn(sentenceIn(textFrom(sentence.typed, part.from, part.to), surroundings)) !== null
  return isTrouble ? part : null
}

/** `Shook the lemon and the ginger`: the same of each, and whatever else is said of them. */
function ofEach(sentence: Sentence, surroundings: Surroundings): readonly string[] | null {
  const { typed, bits } = sentence
  const named = jarsNamed(bits, surroundings.jars)
  const deeds = deedsOf(sentence)
  const isShaken = deeds.length > 0 && deeds.every(({ group }) => group === 'shake')
  const [first] = named
  const last = named.at(-1)
  if (!isShaken || first === undefined || last === undefined || first === last) return null
  if (sentence.has('denial', 'all_of_them') || !isToldNow(sentence, 'jar shake')) return null
  // `The lemon yesterday and the ginger on friday`: each has its own day.
  const isApart = bits.some(({ kind, from, to }) => kind === 'date' && from >= first.bit.to && to <= last.bit.from)
  const trouble = troubleBehind(sentence, last.bit.to, surroundings)
  const stop = trouble?.from ?? typed.tokens.length
  const begin = textFrom(typed, 0, first.bit.from)
  const each = named.map(({ jar, bit }, at) => {
    const next = named[at + 1]?.bit.from ?? stop
    const { from, to } = withoutEdges(sentence, isApart ? { from: bit.to, to: next } : { from: last.bit.to, to: stop })
    return [begin, jar.name, from < to ? textFrom(typed, from, to) : ''].filter((part) => part !== '').join(' ')
  })
  return trouble === null ? each : [...each, textFrom(typed, trouble.from, trouble.to)]
}

/**
 * The deeds of a sentence that tells of several, each as a sentence with the jar that it is of, in order; a question behind a deed is
 * the last of them. Null where there is one thing only.
 */
export function deedsApart(sentence: Sentence, surroundings: Surroundings): readonly string[] | null {
  const jars = runningAmong(surroundings.jars)
  if (jars.length === 0) return null
  const onlyOne = notTheOther(sentence) ?? givenAndAsked(sentence)
  if (onlyOne !== null) return [onlyOne]
  const [first] = deedsOf(sentence)
  if (first === undefined) return null
  const cuts = cutsIn(sentence)
  if (cuts.length === 0) return ofEach(sentence, surroundings) ?? strainedEach(sentence)
  if (cuts.length >= MOST_PARTS) return null
  const parts = [0, ...cuts].map((from, at) =>
    withoutEdges(sentence, { from, to: cuts[at] ?? sentence.typed.tokens.length }),
  )
  const told = parts.flatMap(({ from, to }) => {
    if (to <= from) return []
    const own = textFrom(sentence.typed, from, to)
    const read = sentenceIn(own, surroundings)
    const name = jarsNamed(read.bits, jars)[0]?.jar.name ?? null
    const isAlone = name === null && read.has('all_of_them', 'both_of_them')
    const isNot = read.has('denial') && !read.has('asking')
    // `The ginger isn't right, it has mould`: what has gone wrong is no deed that was not done.
    const isDenied = isNot && symptomIn(read) === null
    const trouble = isNot ? troubleBehind(read, 0, surroundings) : null
    if (trouble === null) return [{ own, name, isDenied, isAlone }]
    const text = textFrom(read.typed, trouble.from, trouble.to)
    // `Not the ginger, it has mould`: of the one that was left alone.
    const left = [...new Set(read.bits.flatMap((bit) => jarsOf(bit, jars)))]
    const of = name ?? (left.length === 1 ? left[0]!.name : null)
    return [{ own: of === null ? text : `${of}, ${text}`, name, isDenied, isAlone: true }]
  })
  const names = told.flatMap(({ name, isDenied }) => (name === null || isDenied ? [] : [name]))
  const kept = told.filter(({ isDenied }) => !isDenied)
  let last = names[0] ?? null
  const texts = kept.map(({ own, name, isAlone }) => {
    if (isAlone) return own
    const jar = name ?? last
    last = jar
    return name === null && jar !== null ? `${jar}, ${own}` : own
  })
  return texts.length === 0 ? null : texts
}
