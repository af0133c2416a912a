import { DomainError } from '../../domain-error.ts'
import { shown } from '../../quantity/read/tokens.ts'
import { editDistance } from '../../spelling/edit-distance.ts'
import { MOST_NAME_CHARACTERS, nameKey, plainNameKey } from '../entry/jar-name.ts'
import { type JarState, jarStateOf, type KeptJar } from './jar-state.ts'
import { jarsSpokenOf } from './jars-spoken-of.ts'

interface Candidate<Jar> {
  readonly jar: Jar
  readonly key: string
  readonly name: string
  readonly ended: JarState['ended']
}

/**
 * The jar that was meant: by `#id`, by its name (a running one before those that are done, of these the latest), or by a
 * beginning that only one running jar has, or, where none has, only one that is done; accents may be left out. Else the only one with
 * such a word in its name, or with such a plant in it.
 * Throws `no_jars`, or `no_such_jar` with the nearest name, all that it may be, and those that there are.
 */
export function findJar<Jar extends KeptJar>(typed: string, jars: readonly Jar[]): Jar {
  const candidates = candidatesIn(jars)
  if (candidates.length === 0) throw new DomainError('not_found', 'no_jars', {})
  const key = nameKey(typed.trim())
  const found = byName(candidates, typed)
  if (found !== undefined) return found.jar
  const begin = key === '' ? [] : beginning(candidates, key)
  const spoken = begin.length > 0 || key === '' || key.startsWith('#') ? [] : spokenOf(candidates, typed)
  const [only, another] = spoken
  if (only !== undefined && another === undefined) return only.jar
  const before = spoken.length > 0 ? null : begunName(candidates, typed)
  const several = [...new Set([...begin, ...spoken].map(({ name }) => name))]
  const nearest = before === null ? (several[0] ?? nearestName(candidates, key)) : null
  throw new DomainError('not_found', 'no_such_jar', {
    typed: shown(typed),
    nearest,
    ...(before && { begun: before }),
    ...(several.length > 1 && { several }),
    all: [...new Set(running(candidates).map(({ name }) => name))],
  })
}

/** Whether a jar goes by this: its `#id`, its name, or how only its name begins. */
export const isJarName = (typed: string, jars: readonly KeptJar[]): boolean =>
  byName(candidatesIn(jars), typed) !== undefined

const candidatesIn = <Jar extends KeptJar>(jars: readonly Jar[]): readonly Candidate<Jar>[] =>
  jars.flatMap((jar): Candidate<Jar>[] => {
    const story = jarStateOf(jar.entries)
    return story === null ? [] : [{ jar, key: nameKey(story.name), name: story.name, ended: story.ended }]
  })

function byName<Jar extends KeptJar>(candidates: readonly Candidate<Jar>[], typed: string): Candidate<Jar> | undefined {
  const key = nameKey(typed.trim())
  return key.startsWith('#')
    ? candidates.find(({ jar }) => `#${jar.id}`.toUpperCase() === key)
    : (called(candidates, key) ?? begun(candidates, key) ?? withoutAccents(candidates, typed))
}

/** The running ones, or, where none runs, those that are done. */
function running<Jar>(all: readonly Candidate<Jar>[]): readonly Candidate<Jar>[] {
  const still = all.filter(({ ended }) => ended === null)
  return still.length > 0 ? still : all
}

function spokenOf<Jar extends KeptJar>(
  candidates: readonly Candidate<Jar>[],
  typed: string,
): readonly Candidate<Jar>[] {
  const meant = jarsSpokenOf(
    typed,
    candidates.map(({ jar }) => jar),
  )
  return running(candidates.filter(({ jar }) => meant.includes(jar)))
}

/** As `findJar`, for what takes away: a beginning is not enough. Throws `jar_begins_so` with the one that begins so. */
export function findWhole<Jar extends KeptJar>(typed: string, jars: readonly Jar[]): Jar {
  const jar = findJar(typed, jars)
  const { name } = jarStateOf(jar.entries)!
  if (typed.trim().startsWith('#') || plainNameKey(typed.trim()) === plainNameKey(name)) return jar
  throw new DomainError('not_found', 'jar_begins_so', { typed: shown(typed), name })
}

function called<Jar>(candidates: readonly Candidate<Jar>[], key: string): Candidate<Jar> | undefined {
  const same = candidates.filter((candidate) => candidate.key === key)
  return same.find(({ ended }) => ended === null) ?? same.sort((a, b) => b.ended!.atMs - a.ended!.atMs)[0]
}

function begun<Jar>(candidates: readonly Candidate<Jar>[], key: string): Candidate<Jar> | undefined {
  if (key === '') return undefined
  const fitting = beginning(candidates, key)
  return fitting.length === 1 ? fitting[0] : undefined
}

function withoutAccents<Jar>(candidates: readonly Candidate<Jar>[], typed: string): Candidate<Jar> | undefined {
  const plain = candidates.map((candidate) => ({ ...candidate, key: plainNameKey(candidate.name) }))
  const key = plainNameKey(typed.trim())
  const names = new Set(plain.flatMap((each) => (each.key === key ? [nameKey(each.name)] : [])))
  // Two that differ by an accent alone are never taken for one another.
  return names.size > 1 ? undefined : (called(plain, key) ?? begun(plain, key))
}

/** Those that begin so: the running ones, or, where none does, those that are done. */
function beginning<Jar>(candidates: readonly Candidate<Jar>[], key: string): readonly Candidate<Jar>[] {
  return running(candidates.filter((candidate) => candidate.key.startsWith(key)))
}

/** The longest name that stands before something else, as where the name of an option was left out. */
function begunName<Jar>(candidates: readonly Candidate<Jar>[], typed: string) {
  const text = typed.trim().normalize('NFC')
  const fitting = candidates
    .filter(({ key }) => nameKey(text).startsWith(`${key} `))
    .toSorted((one, other) => other.key.length - one.key.length)
  const name = fitting[0]?.name
  return name === undefined ? null : { name }
}

/** The one with the fewest slips: a third of what was typed at most. */
function nearestName<Jar>(candidates: readonly Candidate<Jar>[], key: string): string | null {
  if (key.length === 0 || key.length > 2 * MOST_NAME_CHARACTERS) return null
  const slips = candidates.map(({ key: known, name }) => ({ name, count: editDistance(key, known) }))
  const least = slips.reduce((one, other) => (other.count < one.count ? other : one))
  return least.count <= Math.max(1, Math.floor(key.length / 3)) ? least.name : null
}
