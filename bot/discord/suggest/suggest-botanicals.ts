import type { Botanical, PieceKind } from '../../../core/botanical/botanical.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { isFormAsked } from '../../../core/botanical/find/in-form.ts'
import { nearestIds } from '../../../core/botanical/find/nearest-ids.ts'
import { byAskWord, byName, keyOf } from '../../../core/botanical/names/name-index.ts'
import { expectNotRefused } from '../../../core/botanical/refuse/refusal.ts'
import { isRefused } from '../../../core/domain-error.ts'
import { lazily } from '../../../core/once.ts'
import { nameWords, plainWords } from '../../../core/spelling/normalise-name.ts'
import type { Offer } from './offer.ts'
import { rankOf } from './rank.ts'

type Tongue = 'en' | 'it' | 'latin'

interface Name {
  readonly name: string
  readonly tongue: Tongue
  /** What it is compared by, without and with the plant's state. */
  readonly keys: readonly string[]
}

/** A plant to offer, in one of its states where it has to be said. */
interface Plant {
  readonly id: string
  /** So many of it are so many fruits. */
  readonly isCounted: boolean
  readonly names: readonly Name[]
}

/** Words before a plant: `2 stick of`, `30 g`. */
const MOST_WORDS_BEFORE = 6

/** A plant's name is shorter. */
const LONGEST = 100

/** Shorter words are like too many others. */
const LEAST_SLIPPED = 4

const plain = (text: string): string => plainWords(text).join(' ')

const meaning = (name: string): string => keyOf(nameWords(name))

/** Names that mean this plant and no other, the usual ones first. */
const namesOf = ({ names }: Botanical): readonly { readonly name: string; readonly tongue: Tongue }[] => {
  const all = { en: [...names.en, names.title], it: names.it, latin: names.latin }
  return (['en', 'it', 'latin'] as const)
    .flatMap((tongue) => all[tongue].map((name) => ({ name, tongue })))
    .filter(({ name }) => byName.get(meaning(name))?.length === 1 && !byAskWord.has(meaning(name)))
}

/** Pieces that are the plant itself. */
const WHOLE: readonly PieceKind[] = ['each', 'small', 'medium', 'nut']

/** A plant that is not planned without its state is two. */
const offered = (plant: Botanical): readonly Plant[] => {
  const states = isFormAsked(plant) ? ['fresh ', 'dried '] : ['']
  const isCounted = plant.zestGPerFruit !== null || plant.pieces.some(({ piece }) => WHOLE.includes(piece))
  return states.map((state) => ({
    id: plant.id,
    isCounted,
    names: namesOf(plant).map(({ name, tongue }) => {
      const whole = state + name
      return { name: whole, tongue, keys: [plain(name), plain(whole)] }
    }),
  }))
}

const plants = lazily((): readonly Plant[] => catalogue.flatMap(offered))

/** In whose names somebody looks first. */
const tongueOf = (locale: string): Tongue => (locale === 'it' ? 'it' : 'en')

interface Fit {
  readonly plant: Plant
  readonly name: string
  /** The whole name first, then names of the own language, then others, each the better they fit. */
  readonly order: number
  /** Where the name stands among the plant's. */
  readonly at: number
}

const better = (one: Fit, other: Fit): number => one.order - other.order || one.at - other.at

/** Inside of another language's names stands too much. */
const INSIDE = 3

const orderOf = ({ keys, tongue }: Name, key: string, own: Tongue): number => {
  const rank = Math.min(...keys.map((each) => rankOf(each, key) ?? Infinity))
  return rank === 0 || tongue === own ? rank : rank + INSIDE + 1
}

const fitOf = (plant: Plant, key: string, own: Tongue): readonly Fit[] =>
  plant.names
    .map((name, at) => ({ plant, name: name.name, at, order: orderOf(name, key, own) }))
    .filter(({ order }) => order < Infinity)
    .sort(better)
    .slice(0, 1)

/** One name of each plant that what was typed fits, the best fits first. */
const named = (typed: string, own: Tongue): readonly Fit[] => {
  const key = plain(typed.slice(0, LONGEST))
  if (key === '' && typed.trim() !== '') return []
  const fits = plants()
    .flatMap((plant) => fitOf(plant, key, own))
    .sort(better)
  const telling = fits.filter(({ order }) => order <= 2 * INSIDE)
  return telling.length > 0 ? telling : fits
}

/** The plants that a name with a slip in it may mean, as a plan names them. */
const slipped = (typed: string, own: Tongue): readonly Fit[] => {
  const text = typed.slice(0, LONGEST)
  if (plain(text).length < LEAST_SLIPPED || isRefused(() => expectNotRefused(text))) return []
  return nearestIds(nameWords(text)).flatMap((id, order) =>
    plants()
      .filter((plant) => plant.id === id)
      .flatMap((plant) => {
        const { name } = plant.names.find(({ tongue }) => tongue === own) ?? plant.names[0] ?? { name: null }
        return name === null ? [] : [{ plant, name, order, at: 0 }]
      }),
  )
}

/** More than one of a plant: `10 `. */
const COUNT = /^(?!1\s)\d+\s+$/

/** A name as it stands after a number, `lemons`, where the plant has such a name. */
const counted = (before: string, { plant, name }: Fit): string => {
  if (!COUNT.test(before) || !plant.isCounted) return name
  const isMany = (other: Name) =>
    other.tongue === 'en' && other.name !== name && other.name.endsWith('s') && meaning(other.name) === meaning(name)
  return plant.names.find(isMany)?.name ?? name
}

/** A comma after a word joins plants as a plus does, but only the plus is read. */
const joined = (text: string): string => text.replace(/(?<=[\p{L}\p{M}])\s*,\s*/gu, ' + ')

/** The plants that the end of a text may be the beginning of: all of it, else without its first words, the amount. */
const ended = (text: string, own: Tongue): readonly string[] => {
  const words = [...text.matchAll(/[\s,]+(?=[^\s,]|$)/g)].map(({ index, 0: space }) => index + space.length)
  for (const find of [named, slipped]) {
    for (const start of [0, ...words.slice(-MOST_WORDS_BEFORE)]) {
      const [before, found] = [text.slice(0, start), find(text.slice(start), own)]
      if (found.length > 0) return found.map((fit) => joined(before) + counted(before, fit))
    }
  }
  return []
}

const offer = (text: string): Offer => ({ name: text, value: text })

/**
 * The last plant of `8 lemons + 30 g ginger`, or the only one; what stands before it stays.
 *
 * @param locale - what Discord calls the person's language: `en-GB`
 */
export const suggestBotanicals = (typed: string, locale: string): readonly Offer[] => {
  const end = typed.lastIndexOf('+') + 1
  const before = end === 0 ? '' : `${typed.slice(0, end).trimStart()} `
  return ended(typed.slice(end).trimStart(), tongueOf(locale)).map((text) => offer(before + text))
}
