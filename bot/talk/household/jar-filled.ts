import { CUP_ML } from '../../../core/quantity/customary.ts'
import { CUSTOMARY_MEASURES } from '../../../core/quantity/customary-bottles.ts'
import { numberWords } from '../../../core/quantity/read/number-words.ts'
import type { Bit, Sentence } from '../bits/bit.ts'
import { isOver } from '../bits/jars-of.ts'
import type { VesselTaken } from '../frames/reading.ts'
import { FRUIT_G_PER_ML, FULL_SHARE, isByTheJar } from './fruit-by-the-jar.ts'
import { roundly, SHARE, shareOf, written } from './vessel-said.ts'

/** A jar that was filled with fruit and topped up with spirit, neither of them measured. */
export interface JarFilled {
  /** How much of it the fruit fills; null where only the jar was named. */
  readonly share: number | null
  /** What it holds; null where nobody said how large it is. */
  readonly jar: VesselTaken | null
  /** Where the words of the jar and of its share stand in the text. */
  readonly words: readonly (readonly [from: number, to: number])[]
}

const LARGE = '(?:(?:big|large|small|little|clean|old|glass|empty|whole|nice|grande|piccol[oa])\\s+)*'
const ARTICLE = '(?:(?:an?|the|my|our|one|un|uno|una|il|lo|del|dello)\\s+)?'
const SIZE =
  '(?:(?<number>\\d+(?:[.,]\\d+)?|an?|one|two|three|half a|un|mezzo|due)[\\s-]*(?<unit>l|litres?|liters?|ml|cl|litr[oi]|pints?|quarts?)\\s+)?'
const NAME =
  '(?:(?<name>jam|kilner|mason|marmalade|honey|pickle)[\\s-]+)?(?:jars?|jarful|demijohn|kilner|barattol[oi]|vasett[oi])(?:\\s+(?:da|di)\\s+(?<litri>un|mezzo|due|\\d+(?:[.,]\\d+)?)\\s*(?<unita>litr[oi]|l|ml)|\\s+(?:della|da)\\s+(?<marmellata>marmellata|confettura))?'
const FULL =
  'full|filled|fill|fills|filling|packed|stuffed|crammed|pien[oa]|riempit[oa]|riempi|riempire|riempio|colm[oa]'

const JAR = new RegExp(
  `(?<![\\p{L}\\d])(?:(?:up )?(?<to>to the (?:shoulders?|neck|brim|top)) of )?(?:(?<share>${SHARE})(?:\\s+(?:filled?|fill|full))?(?:\\s+(?:of|di))?\\s+)?${ARTICLE}${LARGE}${SIZE}${LARGE}(?:glass\\s+)?${NAME}(?![\\p{L}])` +
    `(?:\\s*,?\\s*(?:is|about|nearly|roughly|per|a)?\\s*(?<behind>${SHARE}|met[aà]|(?:up )?to the (?:shoulders?|neck)|to the (?:brim|top))(?:[\\s-]+(?:full|way|way up|filled|up))?)?`,
  'iu',
)

/** To the shoulder of a jar: so much of it; estimated. */
const SHOULDER = 0.85

const behindShare = (words: string): number =>
  /shoulder|neck/i.test(words)
    ? SHOULDER
    : /brim|top/i.test(words)
      ? 1
      : /^met/i.test(words)
        ? 0.5
        : (shareOf(words) ?? 1)

const ML: readonly (readonly [unit: RegExp, ml: number])[] = [
  [/^ml$/i, 1],
  [/^cl$/i, 10],
  [/^pints?$/i, 2 * CUP_ML],
  [/^quarts?$/i, 4 * CUP_ML],
  [/^/, 1000],
]
/** Said before it where a jar is to be filled. */
const FILL =
  /^(?:(?:just|enough|to|i want to|i['’]d like to|let['’]s|i['’]ll|we['’]ll|make|fill|filling|for|riempi|riempire|un)\s+)+(?=\S)/i

const HALF = /^(?:half an?|mezzo)$/i

function sized(number: string | undefined, unit: string | undefined): VesselTaken | null {
  if (number === undefined || unit === undefined) return null
  const count = HALF.test(number) ? 0.5 : (numberWords.get(number.toLowerCase()) ?? Number(number.replace(',', '.')))
  return { name: '', ml: count * ML.find(([each]) => each.test(unit))![1] }
}

const customary = (name: string): VesselTaken | null => {
  const ml = CUSTOMARY_MEASURES.find(([each]) => each === name)?.[1]
  return ml === undefined ? null : { name, ml }
}

function jarOf(groups: Readonly<Record<string, string | undefined>>, whole: string): VesselTaken | null {
  const told = sized(groups.number, groups.unit) ?? sized(groups.litri, groups.unita)
  if (told !== null) return told
  if (groups.name !== undefined) {
    const name = groups.name.toLowerCase()
    return customary(name === 'kilner' || name === 'mason' ? `${name} jar` : 'jam jar')
  }
  if (groups.marmellata !== undefined) return customary('jam jar')
  if (/demijohn/i.test(whole)) return customary('demijohn')
  return /kilner/i.test(whole) ? customary('kilner jar') : null
}

/** The size of a jar, where a line says nothing else: `a jam jar`, `about a litre`, `500`, `1 litre I think`. */
const ONLY_SIZE =
  /^(?:(?:it[’']?s|its|it is|(?:it|(?:the|my|our|this|that) (?:(?:kilner|mason|jam|big|little|glass) )?(?:jar|kilner|demijohn|one))(?:[’']s)?(?: (?:is|holds|takes|was))?|(?:il|lo|la|mio|nostro|questo|vaso|barattolo|vasetto|da|tiene|contiene)|i think|no|sorry|actually|a|about|around|maybe|probably|roughly|circa|è|e|credo|sarà|just|only|say|of|holds|one of those|that[’']?s)[\s,]+)*(?:(?<count>\d+(?:[.,]\d+)?|an?|one|two|three|half an?|mezzo|un|due|tre)[\s-]*)?(?<rest>l|litres?|liters?|ml|cl|litr[oi]|pints?|quarts?|jam jar|kilner(?: jar)?|mason jar|honey jar|pickle jar|demijohn|vasetto|barattolo (?:della|da) marmellata|normal jam jar)(?:\s+(?:jar|one|kilner|kilner jar|vaso|barattolo|i think|or so|ish|size|credo|circa|please))*[.!]?$/iu

export function jarSizeIn(text: string): VesselTaken | null {
  const found = (ONLY_SIZE.exec(text.trim()) ?? ONLY_SIZE.exec(text.trim().replace(FILL, '')))?.groups
  if (found === undefined) return null
  const rest = found.rest!.toLowerCase()
  if (/jar|kilner|demijohn|vasetto|barattolo/.test(rest))
    return customary(
      /kilner|mason/.test(rest)
        ? `${/kilner/.test(rest) ? 'kilner' : 'mason'} jar`
        : /demijohn/.test(rest)
          ? 'demijohn'
          : 'jam jar',
    )
  return sized(found.count ?? '1', rest)
}

/** The size of a jar that is named with it: `the litre jar`. */
export function jarSizeWithin(text: string): VesselTaken | null {
  const found = JAR.exec(text)
  return found === null ? null : jarOf(found.groups ?? {}, found[0])
}

const isPlant = ({ kind, role }: Bit): boolean => kind === 'plant' && role !== 'left_out' && role !== 'gone'

/** How much is asked, or told of a jar that stands there. */
const ASKED = /\bhow (?:many|much)\b|\bquant[oaie]\b/i
const POURED =
  /\b(?:top(?:ped|ping)?|cover(?:ed)?|drown(?:ed)?|fill(?:ed|s)?|submerge[d]?|pour(?:ed)?|then|with|in|and|plus|add(?:ed)?|copert[oaie]|ricopert[oaie]|coperto|riempit[oa]|con|poi|e|gin|vodka)\b|[,;]/i

/**
 * A jar that was filled, or is to be, with a plant and a spirit of which nobody says how much; null where a sentence tells of none, or
 * tells an amount of either.
 */
export function jarFilledIn({ bits, typed, jars, has }: Sentence): JarFilled | null {
  const { text } = typed
  const found = JAR.exec(text)
  if (found === null || ASKED.test(text) || !POURED.test(text) || has('asking')) return null
  const plants = bits.filter(isPlant)
  const isPoured = bits.some(
    ({ kind, role, isJarSize }) =>
      (kind === 'volume' && isJarSize !== true) || kind === 'mass' || (kind === 'bottles' && role !== 'gone'),
  )
  const spirits = bits.filter((bit) => bit.kind === 'spirit' && bit.with === undefined)
  if (plants.length === 0 || spirits.length !== 1 || isPoured) return null
  // What a running jar is of is told of that jar.
  if (jars.some((jar) => !isOver(jar) && plants.some(({ ids }) => jar.plants.some((id) => ids?.includes(id)))))
    return null
  const { share, to, behind = to, ...groups } = found.groups ?? {}
  const full =
    new RegExp(`\\b(?:${FULL})\\b`, 'iu').test(text) ||
    /^\s*(?:of|di)\s/i.test(text.slice(found.index + found[0].length))
  const filled = share !== undefined ? shareOf(share) : behind !== undefined ? behindShare(behind) : full ? 1 : null
  const size = bits.find(({ isJarSize }) => isJarSize)
  const jar = jarOf(groups, found[0]) ?? (size === undefined ? null : { name: '', ml: size.value })
  // A jar whose size alone is told is half spirit, as where its words are read one by one.
  if (
    filled === null ||
    (jar !== null && jar.name === '' && filled === 1 && share === undefined && behind === undefined)
  )
    return jar !== null && jar.name !== ''
      ? { share: 1, jar, words: [[found.index, found.index + found[0].length]] }
      : null
  return { share: filled, jar, words: [[found.index, found.index + found[0].length]] }
}

/** What went in by the jar's size: the weight of the plant, where it has one, and the spirit. */
function wentIn({ bits, typed }: Sentence, { share, words }: JarFilled, jarMl: number) {
  const plants = bits.filter(isPlant)
  const spirit = bits.find((bit) => bit.kind === 'spirit' && bit.with === undefined)!
  const roomMl = FULL_SHARE * jarMl
  const fruitG = FRUIT_G_PER_ML * (share ?? 1) * roomMl
  const [plant] = plants
  // The two of `two thirds of a jar` counts nothing.
  const amount = plant!.with === undefined ? undefined : typed.tokens[bits[plant!.with]!.from]
  const isOpen = amount === undefined || words.some(([from, to]) => from <= amount.from && amount.from < to)
  const isWeighed = plants.length === 1 && isOpen && isByTheJar(plant!.ids)
  return {
    plants,
    spirit,
    weight: isWeighed ? `${roundly(fruitG)} g ` : '',
    poured: `${written(roundly(roomMl - fruitG))} `,
  }
}

/** The text with what went in: `a jar of 180 g raspberries topped up with 190 ml gin`. */
export function withJarFilled(sentence: Sentence, filled: JarFilled, jarMl: number): string {
  const { text, tokens } = sentence.typed
  const { plants, spirit, weight, poured } = wentIn(sentence, filled, jarMl)
  const at = (bit: Bit): number => tokens[bit.from]!.from
  const inserts: readonly (readonly [from: number, to: number, written: string])[] = [
    ...filled.words.map(([from, to]) => [from, to, 'a jar'] as const),
    [at(plants[0]!), at(plants[0]!), weight],
    [at(spirit), at(spirit), poured],
  ]
  return inserts
    .toSorted(([one], [other]) => other - one)
    .reduce((all, [from, to, each]) => `${all.slice(0, from)}${each}${all.slice(to)}`, text)
}

/** The same in few words, for a sentence of which they are all that is understood: `180 g raspberries and 190 ml gin`. */
export function onlyWentIn(sentence: Sentence, filled: JarFilled, jarMl: number): string {
  const { text, tokens } = sentence.typed
  const { plants, spirit, weight, poured } = wentIn(sentence, filled, jarMl)
  const said = ({ from, to }: Bit): string => text.slice(tokens[from]!.from, tokens[to - 1]!.to)
  return [...plants.map((plant) => `${weight}${said(plant)}`), `${poured}${said(spirit)}`].join(' and ')
}
