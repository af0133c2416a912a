import type { Language } from './language.ts'
import { isKitchenOf, type Kitchen, unitsIn } from './messages/kitchen.ts'
import type { Words } from './words.ts'

/** Values that somebody typed: names, notes, words that are said back. */
const OWN =
  /^(?:name|names|typed|jar|jars|note|where|vessel|maker|several|all|nearest|word|words|partly|extra|unit|first|second|with)$/

function ownIn(node: unknown, isOwn = false): readonly string[] {
  if (typeof node === 'string') return isOwn ? [node] : []
  if (typeof node !== 'object' || node === null) return []
  return Array.isArray(node)
    ? node.flatMap((each) => ownIn(each, isOwn))
    : Object.entries(node).flatMap(([key, each]) => ownIn(each, OWN.test(key)))
}

/** The same texts, each said otherwise; what they were made of is left as it was typed. */
function saidOtherwise<T>(texts: T, otherwise: (text: string, own: readonly string[]) => string): T {
  if (typeof texts === 'function') {
    const said = (...values: readonly unknown[]): unknown => {
      const text: unknown = texts(...values)
      return typeof text === 'string' ? otherwise(text, ownIn(values)) : text
    }
    return said as T
  }
  if (typeof texts !== 'object' || texts === null) return texts
  return Object.fromEntries(Object.entries(texts).map(([key, each]) => [key, saidOtherwise(each, otherwise)])) as T
}

type Otherwise = (text: string, own: readonly string[]) => string

/** How a kitchen says things otherwise: plants by its own names, and what is said otherwise where one pours in cups; null where it does not. */
function otherwiseIn(kitchen: Kitchen, { american, kinds }: Pick<Language, 'american' | 'kinds'>): Otherwise | null {
  const { kinds: own } = unitsIn(kitchen)
  const named: Otherwise | null =
    own === undefined || kinds === undefined ? null : (text, kept) => kinds(text, own, kept)
  const there = american !== undefined && isKitchenOf('us', kitchen) ? american : null
  if (named === null || there === null) return named ?? there
  return (text, kept) => there(named(text, kept), kept)
}

/** The words of a language as they are shown in a kitchen that says things otherwise. For scripts nothing is said otherwise. */
export function inOwnKitchen(words: Words, language: Pick<Language, 'american' | 'kinds'>): Words {
  const shown = (text: string, kitchen: Kitchen, values: unknown): string =>
    otherwiseIn(kitchen, language)?.(text, ownIn(values)) ?? text
  return {
    ...words,
    say: (message, kitchen) => shown(words.say(message, kitchen), kitchen, message.values),
    problem: (key, values, kitchen) => shown(words.problem(key, values, kitchen), kitchen, values),
    onPictures(kitchen) {
      const { text, format } = words.onPictures(kitchen)
      const otherwise = otherwiseIn(kitchen, language)
      return { text: otherwise === null ? text : saidOtherwise(text, otherwise), format }
    },
  }
}
