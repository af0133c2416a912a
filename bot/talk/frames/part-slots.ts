import { wordAt } from '../../../core/quantity/read/tokens.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { isOver, jarsOf } from '../bits/jars-of.ts'
import { isPieceOut, staysIn } from '../bits/lifted-out.ts'
import { placedNames } from '../bits/placed-name.ts'
import { unknownName } from '../bits/unknown-name.ts'
import { onlyBit } from './amount-slots.ts'
import { jarsMeant } from './jars-meant.ts'
import { type Fill, plantText } from './plant-slots.ts'

/** How much was poured off: the volume that is said, whatever it stands beside. */
export const pouredOff: Fill = ({ bits, typed }) => {
  const said = onlyBit(bits.find(({ kind, role }) => kind === 'volume' && role !== 'gone'))
  const at = typed.tokens.findIndex(({ text }) => PART.test(text))
  if (said !== null || at === -1) return said
  const from = at > 0 && COUNT.test(typed.tokens[at - 1]!.text) ? at - 1 : at
  const text = typed.tokens
    .slice(from, at + 1)
    .map((token) => token.text)
    .join(' ')
  return { text, bits: [{ kind: 'bare', role: null, text, value: 0, from, to: at + 1 }] }
}

/** `half of it`, `a third`; `in two` says nothing of how much. */
const PART = /^(?:half|thirds?|quarters?|metà|meta|terzo|quarto)$/
const COUNT = /^(?:a|one|two|three|un|due|tre)$/

/** Before the name of what something comes out of. */
const OUT_OF = /^(?:from|of|in|dal|dallo|dalla|dai|dagli|dalle|del|dello|della|dei|degli|delle|nel|nella|nelle)$/
const BEFORE_NAME = /^(?:the|my|our|jar|vaso|l)$/

/** `The cinnamon from the pears`: what it comes out of. */
function isOutOf({ typed: { tokens } }: Pick<Sentence, 'typed'>, { from }: Bit): boolean {
  let at = from - 1
  while (BEFORE_NAME.test(tokens[at]?.text ?? '')) at--
  return OUT_OF.test(tokens[at]?.text ?? '')
}

/** `Took out the chilli, the pears were getting hot`: what is told behind a comma of what came out. */
function isOfOtherClause({ typed: { tokens }, spans }: Pick<Sentence, 'typed' | 'spans'>, { from, to }: Bit): boolean {
  const deed = spans.find(({ concept }) => concept === 'took_out')
  if (deed === undefined || from < deed.to || !tokens.slice(deed.to, from).some(({ text }) => text === ','))
    return false
  return TELLS.test(tokens[to]?.text ?? '')
}

const TELLS =
  /^(?:is|are|was|were|had|has|have|got|tasted|smelled|smelt|looked|seemed|it|they|era|erano|sono|stava|stavano|sapeva|sapevano)$/

interface PartIn {
  readonly plants: readonly Bit[]
  readonly jar: string
  /** The others that it may have come out of as well. */
  readonly others: readonly string[]
}

/** A plant beside others in a jar, and the jar. */
function partIn({ bits, jars, typed, spans }: Sentence): PartIn | null {
  const running = jars.filter((jar) => !isOver(jar) && jar.stage === 'steeping' && jar.plants.length > 1)
  const plants = bits.filter(({ kind }) => kind === 'plant')
  const found = running.flatMap((jar): readonly PartIn[] => {
    const inside = plants.filter(
      ({ ids, text }) => jar.plants.some((id) => ids?.includes(id)) && jar.name.toLowerCase() !== text.toLowerCase(),
    )
    const parts = inside.filter(
      (bit) => !isOutOf({ typed }, bit) && !staysIn(typed.tokens, bit) && !isOfOtherClause({ typed, spans }, bit),
    )
    // `Pulled the cinnamon and left the pears`: what the jar is of stays in where another comes out.
    const others = parts.filter(({ ids }) => ids?.includes(jar.plants[0]!) !== true)
    const out = others.length > 0 ? others : parts
    return inside.length === 0 ? [] : [{ plants: out.length > 0 ? out : inside, jar: jar.name, others: [] }]
  })
  // `Took the pod out of the plums`: the jar that is named as well.
  const isNamed = ({ jar }: PartIn): boolean =>
    bits.some((bit) => (bit.kind === 'plant' || bit.kind === 'jar') && bit.text.toLowerCase() === jar.toLowerCase())
  const first = found.find(isNamed) ?? found[0]
  if (first !== undefined) {
    const others = isNamed(first) ? [] : found.filter((each) => each !== first).map(({ jar }) => jar)
    return { ...first, others }
  }
  // `Fished the stick out`: of a jar that has several plants, one of them.
  const [only, another] = running
  const isPiece = isPieceOut(typed.tokens, bits) && only !== undefined && another === undefined
  return isPiece ? { plants: [], jar: only.name, others: [] } : null
}

/** `The chilli out of the ginger`: what comes out, and of which jar, whatever is in it; null where no jar is named so. */
function outOfNamed(sentence: Sentence): readonly Bit[] | null {
  const names = placedNames(sentence, 'out_of')
  const { typed, spans, bits } = sentence
  const others = bits.filter(
    (bit) =>
      bit.kind === 'plant' &&
      bit.role !== 'gone' &&
      !names.includes(bit) &&
      !staysIn(typed.tokens, bit) &&
      !isOfOtherClause({ typed, spans }, bit),
  )
  return names.length > 0 && others.length > 0 ? others : null
}

export const plantsInside: Fill = (sentence) => {
  const part = { plants: outOfNamed(sentence) ?? partIn(sentence)?.plants ?? [] }
  if (part.plants.length === 0) return null
  const amounts = part.plants.flatMap(({ with: place }) => (place === undefined ? [] : [sentence.bits[place]!]))
  const { bits, typed } = sentence
  const texts = part.plants.map((plant) => {
    const text = plantText(bits, plant, typed)
    return plant.with === undefined && ONE.test(wordAt(typed, plant.from - 1)) ? `1 ${text}` : text
  })
  return { text: texts.join(' + '), bits: [...part.plants, ...amounts] }
}

/** `A chilli` of several. */
const ONE = /^(?:an?|un[oa]?)$/

export const jarOfPart: Fill = (sentence, command) => {
  if (outOfNamed(sentence) !== null) {
    const { text, bits, choices } = jarsMeant(sentence, command)
    return text === null ? { text: '', bits, choices } : { text, bits }
  }
  const part = partIn(sentence)
  if (part === null) return null
  const unknown = unknownName(sentence, command)
  if (unknown !== null) return { text: unknown, bits: [] }
  if (part.others.length > 0) return { text: '', bits: [], choices: [part.jar, ...part.others] }
  const names = sentence.bits.filter(
    (bit) =>
      !part.plants.includes(bit) &&
      (bit.kind === 'plant' || bit.kind === 'jar') &&
      jarsOf(bit, sentence.jars).some(({ name }) => name === part.jar),
  )
  return { text: part.jar, bits: names }
}
