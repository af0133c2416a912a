import { unlessRefused } from '../../../core/domain-error.ts'
import { nameKey } from '../../../core/jar/entry/jar-name.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { type JarState, jarStateOf } from '../../../core/jar/state/jar-state.ts'
import type { Jar } from '../../../store/person.ts'
import type { SuggestionText } from '../../text/discord-forms-text.ts'
import type { Offer } from './offer.ts'
import { ranked, rankOf } from './rank.ts'

interface Known {
  readonly id: string
  readonly story: JarState
}

const inOrder = (one: Known, other: Known): number =>
  Number(one.story.ended !== null) - Number(other.story.ended !== null) ||
  one.story.name.localeCompare(other.story.name, 'en', { numeric: true })

/** A person's jars, the running ones first, by name; what is sent is the id, which no renaming changes. */
export const suggestJars = (typed: string, jars: readonly Jar[], text: SuggestionText): readonly Offer[] => {
  const known = jars.flatMap(({ id, entries }): Known[] => {
    const story = jarStateOf(entries)
    return story === null ? [] : [{ id, story }]
  })
  const key = nameKey(typed.trim())
  const fits = ({ id, story }: Known): number | null =>
    key.startsWith('#') ? rankOf(nameKey(`#${id}`), key) : rankOf(nameKey(story.name), key)
  return ranked(known.sort(inOrder), fits).map(({ id, story }) => ({
    name: story.ended === null ? story.name : text.doneJar({ name: story.name, startedOn: story.started.day }),
    value: `#${id}`,
  }))
}

/** The same with all of them first, for what can be done to all. */
export const suggestJarOrAll = (typed: string, jars: readonly Jar[], text: SuggestionText): readonly Offer[] => {
  const isAll = 'all'.startsWith(typed.trim().toLowerCase())
  return [...(isAll ? [{ name: text.all(), value: 'all' }] : []), ...suggestJars(typed, jars, text)]
}

/** The jar that a text names already; null where it names none. */
function jarIn(typed: string, jars: readonly Jar[]): Jar | null {
  return unlessRefused(() => findJar(typed, jars))
}

/** The last jar of `lemon + walnut`; what stands before it stays, and no jar stands beside itself. */
export const suggestJarList = (typed: string, jars: readonly Jar[], text: SuggestionText): readonly Offer[] => {
  const end = typed.lastIndexOf('+') + 1
  const [before, part] = [typed.slice(0, end), typed.slice(end)]
  const joined = before === '' ? '' : `${before.trimStart()} `
  const named =
    before === ''
      ? []
      : before
          .slice(0, -1)
          .split('+')
          .map((each) => jarIn(each, jars))
  const others = jars.filter((jar) => !named.includes(jar))
  return suggestJars(part, others, text).map(({ name, value }) => ({ name: joined + name, value: joined + value }))
}
