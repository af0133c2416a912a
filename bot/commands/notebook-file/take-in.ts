import { DomainError } from '../../../core/domain-error.ts'
import { newJarId } from '../../../core/jar/entry/new-jar-id.ts'
import { withFreeName } from '../../../core/jar/record/freed-name.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { MOST_RUNNING } from '../../../core/jar/state/running-jars.ts'
import { MOST_SHARES } from '../../../core/jar/state/shares.ts'
import { allDuties } from '../../../core/jar/tasks/duties.ts'
import { dutySettings } from '../../../store/due.ts'
import { type Jar, NOBODY, type Person, type Place, type Settings, type Share } from '../../../store/person.ts'
import type { Context } from '../../chat/command.ts'
import { canonical } from '../../chat/stable-json.ts'
import type { LeftJar } from '../../text/messages/file-problems.ts'
import { withoutAttempt } from './attempts.ts'
import { MOST_JARS } from './import-limits.ts'
import type { Notebook } from './notebook-file.ts'

type Now = Pick<Context, 'nowMs' | 'zone' | 'assumedZone' | 'place' | 'attempt'>

/** What became of a notebook that was taken in. */
export interface TakenIn {
  readonly person: Person
  readonly added: readonly string[]
  readonly longer: readonly string[]
  /** Jars that were here already, as long or longer. */
  readonly same: number
  /** Entries that are new. */
  readonly entries: number
  readonly renamed: readonly (readonly [from: string, to: string])[]
  /** What was not sound, or had no room. */
  readonly left: readonly LeftJar[]
  readonly isSettled: boolean
}

/** Whether one list of entries goes on where the other ends, or is the same. */
function isSameStory(one: readonly string[], other: readonly string[]): boolean {
  const length = Math.min(one.length, other.length)
  return length > 0 && one.slice(0, length).every((entry, index) => entry === other[index])
}

const sameValue = (one: unknown, other: unknown): boolean => canonical(one) === canonical(other)

/** Only where they are sent by this same surface: a channel named in a file may be anybody's. */
const placeTaken = (theirs: Place | null, here: Place): Place | null =>
  theirs === null || theirs.kind === 'channel' || (theirs.kind === 'console') !== (here.kind === 'console')
    ? null
    : theirs

/** What was chosen here stays; what was not comes from the file. */
function settingsOf(mine: Settings, theirs: Settings, { place }: Now): Settings {
  const taken = { ...theirs, place: placeTaken(theirs.place, place) }
  const chosen = Object.entries(mine).filter(
    ([key, value]) => !sameValue(value, NOBODY.settings[key as keyof Settings]),
  )
  return { ...taken, ...Object.fromEntries(chosen) }
}

const union = (one: readonly string[], other: readonly string[]): readonly string[] => [...new Set([...one, ...other])]

/** With everything that has fallen due by now told. */
function withoutNagging(jar: Jar, settings: Settings, { nowMs, assumedZone }: Now): Jar {
  const past = allDuties(jar.entries, dutySettings(settings, assumedZone)).filter(({ dueMs }) => dueMs <= nowMs)
  const told = union(
    jar.told,
    past.map(({ key }) => key),
  )
  return { ...jar, told }
}

/** Under a name that no other running jar has, the change an entry of its own; null where it has no place for that. */
function named(jar: Jar, others: readonly Jar[], now: Now): Jar | null {
  try {
    const { nowMs: enteredMs, zone, attempt } = now
    const entered = { enteredMs, zone, ...(attempt !== undefined && { attempt }) }
    return { ...jar, entries: withFreeName(jar.entries, others, entered) }
  } catch (error) {
    if (error instanceof DomainError && error.problem === 'too_many_entries') return null
    throw error
  }
}

/** As it is called now; empty where its start was undone. */
export const nameOf = ({ entries }: Jar): string => jarStateOf(entries)?.name ?? ''

/** With those of jars that came along; where they were posted is not taken from a file, which may name anybody's post. */
function sharesOf(
  mine: readonly Share[],
  theirs: readonly Share[],
  idOf: ReadonlyMap<string, string>,
): readonly Share[] {
  const known = new Set(mine.map(({ id }) => id))
  const more = theirs.flatMap((share): Share[] => {
    const jarId = idOf.get(share.jarId)
    return jarId === undefined || known.has(share.id) ? [] : [{ ...share, jarId, postedIn: null }]
  })
  return [...mine, ...more].slice(0, MOST_SHARES)
}

interface Held {
  readonly jar: Jar
  readonly texts: readonly string[]
}

const held = (jar: Jar): Held => ({ jar, texts: jar.entries.map((entry) => canonical(withoutAttempt(entry))) })

const byPlace = (one: LeftJar, other: LeftJar): number => one.jar - other.jar

const isRunning = ({ entries }: Jar): boolean => jarStateOf(entries)?.ended === null

/** Why a jar cannot be one more beside others; null where it can. */
function noRoom(jar: Jar, isNew: boolean, others: readonly Jar[]): LeftJar['why'] | null {
  if (isNew && others.length >= MOST_JARS) return 'room'
  return isRunning(jar) && others.filter(isRunning).length >= MOST_RUNNING ? 'running' : null
}

/**
 * A notebook merged into what a person has: a jar that is here is taken once, in its longer form; another jar with the same
 * id gets a new one; what would be more than is kept is left out. Pure, as `Store.update` asks.
 */
export function takeIn(person: Person, notebook: Notebook, now: Now): TakenIn {
  const { settings: theirs, shares, jars } = notebook
  const settings = settingsOf(person.settings, theirs, now)
  const all: Held[] = person.jars.map(held)
  const [added, longer]: [string[], string[]] = [[], []]
  const renamed: [string, string][] = []
  const left = [...notebook.left]
  const idOf = new Map<string, string>()
  let [same, entries] = [0, 0]
  for (const { number, jar: theirJar } of jars) {
    const given = held(theirJar)
    const at = all.findIndex(({ texts }) => isSameStory(texts, given.texts))
    const mine = all[at]
    if (mine !== undefined && mine.texts.length >= given.texts.length) {
      same++
      idOf.set(given.jar.id, mine.jar.id)
      continue
    }
    const others = all.filter((each) => each !== mine).map(({ jar }) => jar)
    const leave = (why: LeftJar['why']): void => {
      left.push({ jar: number, name: nameOf(given.jar) || null, seq: null, why, where: null })
    }
    const why = noRoom(given.jar, mine === undefined, others)
    if (why !== null) {
      leave(why)
      continue
    }
    const free = named(given.jar, others, now)
    if (free === null) {
      leave('taken')
      continue
    }
    const ids = others.map(({ id }) => id)
    const id = mine?.jar.id ?? (ids.includes(given.jar.id) ? newJarId(given.texts[0]!, ids) : given.jar.id)
    idOf.set(given.jar.id, id)
    const merged: Jar = {
      ...free,
      id,
      told: union(mine?.jar.told ?? [], given.jar.told),
      ...(mine?.jar.toldMs !== undefined && { toldMs: mine.jar.toldMs }),
      cautioned: union(mine?.jar.cautioned ?? [], given.jar.cautioned),
    }
    const jar = withoutNagging(merged, settings, now)
    const [from, to] = [nameOf(given.jar), nameOf(jar)]
    if (from !== to) renamed.push([from, to])
    entries += given.texts.length - (mine?.texts.length ?? 0)
    if (mine === undefined) added.push(id)
    else longer.push(id)
    all.splice(at === -1 ? all.length : at, at === -1 ? 0 : 1, { jar, texts: given.texts })
  }
  const isSettled = !sameValue(settings, person.settings)
  const merged = all.map(({ jar }) => jar)
  const taken = { ...person, settings, jars: merged, shares: sharesOf(person.shares, shares, idOf) }
  return { person: taken, added, longer, same, entries, renamed, isSettled, left: left.toSorted(byPlace) }
}
