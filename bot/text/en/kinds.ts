import { botanicalById } from '../../../core/botanical/catalogue/catalogue.ts'
import { entryName, kindTyped, type OneAndSeveral } from '../../../core/botanical/names/kind-typed.ts'
import { escaped } from '../../../core/spelling/escaped.ts'
import { countedName } from './cook-names.ts'
import { asCapital, exceptOwn } from './except-own.ts'

/** A kind of a plant that the catalogue has no entry of its own for: how the entry is called, and how its maker calls it. */
interface Kind {
  readonly entry: readonly OneAndSeveral[]
  readonly own: OneAndSeveral
}

/** The kind that was typed; null where it is the entry itself, by whatever name. */
function kindOf(id: string, noun: string): Kind | null {
  const botanical = botanicalById(id)
  const own = kindTyped(botanical, noun)
  const counted = countedName(id)
  return own === null ? null : { entry: [entryName(botanical), ...(counted === null ? [] : [counted])], own }
}

/** What is made of a fruit goes by its own name: `plum brandy`. */
const DRINK =
  '(?! (?:brandy|brandies|gin|vodka|rum|liqueur|wine|eau|schnapps|spirit|tomato|blossom|flower|leaf|leaves))'

/** The words of an entry, each with the kind's. */
function exchanged(text: string, { entry, own: [one, several] }: Kind): string {
  const words = new Map(
    entry.flatMap(([single, many]) => [
      [many.toLowerCase(), several],
      [single.toLowerCase(), one],
    ]),
  )
  const any = [...words.keys()].toSorted((first, other) => other.length - first.length).map(escaped)
  // `Victoria plums` are called so already.
  const lead = one.split(' ').slice(0, -1).join(' ')
  const notAgain = lead === '' ? '' : `(?<!${escaped(lead)} )`
  return text.replace(new RegExp(`${notAgain}\\b(?:${any.join('|')})\\b${DRINK}`, 'gi'), (word) =>
    asCapital(word, words.get(word.toLowerCase())!),
  )
}

/** A text with plants by the names that their maker has for them: damsons, where the catalogue has plums. What is somebody's own stays, and so do lines to type. */
export function byKind(text: string, kinds: Readonly<Record<string, string>>, own: readonly string[]): string {
  const told = Object.entries(kinds).flatMap(([id, noun]) => kindOf(id, noun) ?? [])
  if (told.length === 0) return text
  return exceptOwn(text, own, (part) => told.reduce(exchanged, part))
}
