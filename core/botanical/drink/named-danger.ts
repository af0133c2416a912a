import { nameWords, plainWords } from '../../spelling/normalise-name.ts'
import { isAllowedName, keyOf } from '../names/name-index.ts'
import { allRefusedNames } from '../refuse/all-refused.ts'
import { nearRefusedIn } from '../refuse/near-said.ts'
import { undrinkableIn } from '../refuse/refuse-spirit.ts'
import { PLACE_WORDS } from '../refuse/refused-words.ts'
import { classify } from '../spirit/classify.ts'

/** Kinds whose names are everyday words. */
const EVERYDAY = new Set(['dairy_egg', 'medicines', 'florist_flowers', 'unnamed_plant'])

const names: ReadonlyMap<string, string> = new Map(
  allRefusedNames
    .filter(({ refused }) => !EVERYDAY.has(refused.id))
    .toReversed()
    .map(({ name }) => [keyOf(nameWords(name)), name] as const),
)

const LONGEST = Math.max(...[...names.keys()].map((key) => key.split(' ').length))

/** Undrinkable things that are drunk or smelt of in no figure of speech. */
const SURE = new Set(['denatured', 'other_alcohol'])

/** `smells like rubbing alcohol`: what it is like is not in it. */
const LIKENESS = /\b(?:like|reminds me of|reminiscent of|hints? of|notes? of|come|sa di|ricorda)\b.*$/iu

/** Refused plants by their full name, the longest of each place; a longer good name around one wins. */
const refusedIn = (words: readonly string[]): readonly string[] => {
  const found: string[] = []
  for (let at = 0; at < words.length; at++) {
    const keys = Array.from({ length: Math.min(LONGEST + 1, words.length - at) }, (_, more) =>
      keyOf(words.slice(at, at + more + 1)),
    ).toReversed()
    const key = keys.find((each) => names.has(each) || isAllowedName(each))
    if (key === undefined) continue
    const name = names.get(key)
    if (name !== undefined) found.push(name)
    at += key.split(' ').length - 1
  }
  return found
}

/** What a note tells of that must not be drunk: full names only, and nothing that it is merely like. */
export const dangersNoted = (note: string): readonly string[] => {
  const told = note
    .split(/[.;!?\n]/)
    .map((sentence) => sentence.replace(LIKENESS, ''))
    .join(' ; ')
  const spirit = undrinkableIn(told)
  const sure = spirit !== null && SURE.has(spirit.id) ? [spirit.word] : []
  return [...new Set([...refusedIn(nameWords(told)), ...sure])]
}

/** `Foxglove Cottage` is a house, whatever grows there. */
const OF_A_PLACE = new RegExp(`\\b(?:${PLACE_WORDS}|cottages|barn|via|casa|cascina|podere)\\b`)

/** Parts of a plant, and what is made of it: beside its name they name it. */
const PARTS_OF =
  /^(?:lea(?:f|ves)|flowers?|berr(?:y|ies)|roots?|bark|seeds?|twigs?|petals?|plants?|stems?|bulbs?|pods?|buds?|shoots?|liqueurs?|gin|vodka|rum|brandy|infusion|tincture|cordial|foglie?|fior[ei]|bacch[ae]|bacca|radic[ei]|semi?|cortecci[ae]|alber[oi]|liquore|grappa)$/

/** From so many letters on a name of one word is looked at for a slip. */
const TELLING_LETTERS = 6

/** What a jar must not be called: nothing but the name of a refused plant or of undrinkable alcohol; null where it is more. */
export const dangerousName = (name: string): { readonly plant: string } | { readonly spirit: string } | null => {
  const words = plainWords(name)
  const kinds = classify(words)
  const own = words.filter((word, at) => kinds[at] === 'unknown' && !/^\d+$/.test(word) && word !== 'jar')
  if (own.length === 0 || OF_A_PLACE.test(words.join(' '))) return null
  const bare = own.filter((word) => !PARTS_OF.test(word)).join(' ')
  const plant =
    names.get(keyOf(nameWords(own.join(' ')))) ?? names.get(keyOf(nameWords(name))) ?? names.get(keyOf(nameWords(bare)))
  if (plant !== undefined) return { plant }
  if (bare.length >= TELLING_LETTERS && nearRefusedIn(bare) !== null) return { plant: bare }
  const spirit = undrinkableIn(name)
  return spirit !== null && own.every((word) => undrinkableIn(word) !== null || spirit.word.split(' ').includes(word))
    ? { spirit: spirit.word }
    : null
}
