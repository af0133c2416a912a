import type { Asker } from '../../../bot/chat/command.ts'
import { parseLine } from '../../../bot/chat/grammar/grammar.ts'
import { en } from '../../../bot/text/en/index.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import type { Person } from '../../../store/person.ts'
import { linesOf } from '../call-typed.ts'
import { commands, testDesk } from '../test-desk.ts'
import { linesIn } from './lines-in.ts'

/** Somebody of whom this is stored, at an instant. */
export interface Setting {
  readonly person: Person
  readonly nowMs: number
  readonly place: Asker['place']
  readonly zone: string
}

/** What is done there changes nothing outside. */
export async function deskOf({ person, nowMs, place, zone }: Setting) {
  const store = memoryStore(zone)
  const userId = place.kind === 'console' ? 'local' : '123456789012345678'
  await store.update(userId, () => person)
  const asker: Asker = { userId, place, assumedZone: zone, store, language: en }
  return { ...testDesk({ nowMs, width: 100_000, asker }), person: () => store.read(userId) }
}

/** A line that can be typed, and where it stands. */
export interface Offer {
  readonly by: 'action' | 'text'
  readonly line: string
  readonly ends: readonly number[]
}

/** Of an answer: its actions, and the lines inside its sentences. */
export async function offersOf(line: string, setting: Setting): Promise<readonly Offer[]> {
  const { outcome, text } = await (await deskOf(setting)).toldOf(line)
  const actions = outcome.ok && 'reply' in outcome ? outcome.reply.actions : []
  const said = linesOf(actions)
  const sentences = text.slice(
    0,
    text.includes('\nNext you can type:') ? text.indexOf('\nNext you can type:') : text.length,
  )
  return [
    ...said.map((line) => ({ by: 'action' as const, line, ends: [line.length] })),
    ...linesIn(sentences).map(({ text, ends }) => ({ by: 'text' as const, line: text, ends })),
  ]
}

const RECORDING: Readonly<Record<string, string>> = {
  'jar start': 'started',
  'jar shake': 'shaken',
  'jar taste': 'tasted',
  'jar add': 'added',
  'jar strain': 'strained',
  'jar sweeten': 'sweetened',
  'jar filter': 'filtered',
  'jar bottle': 'bottled',
  'jar open': 'opened',
  'jar empty': 'emptied',
  'jar discard': 'discarded',
  'jar rename': 'renamed',
  'jar later': 'put_off',
  'jar correct': 'corrected',
  'jar undo': 'undone',
}

const entriesOf = ({ jars }: Person) => jars.flatMap(({ id, entries }) => entries.map((entry) => ({ id, entry })))

/** What a line that ran did wrong; null where it did what it says. */
async function wrongIn(line: string, before: Person, after: Person): Promise<string | null> {
  const { path, options } = parseLine(line, commands)
  const kind = RECORDING[path]
  if (kind === undefined) return null
  const known = new Set(entriesOf(before).map(({ id, entry }) => `${id} ${entry.seq}`))
  const fresh = entriesOf(after).filter(({ id, entry }) => !known.has(`${id} ${entry.seq}`))
  const last = fresh.at(-1)
  if (last === undefined) return 'recorded nothing'
  if (last.entry.kind !== kind) return `recorded ${last.entry.kind}`
  const jar = options.jar
  if (jar !== undefined && jar !== 'all' && !/^#\S+\s/.test(jar)) {
    if (findJar(jar, before.jars).id !== last.id) return 'recorded it of another jar'
  }
  if (path === 'jar start') {
    const { name } = jarStateOf(after.jars.find(({ id }) => id === last.id)!.entries)!
    if (options.name !== undefined && name !== options.name) return `called the jar ${name}`
    if (/\d\s?(?:ml|l|g|%)/.test(name)) return `called the jar ${name}`
  }
  return null
}

/** What is wrong with an offer; null where it runs and does what it says, or asks for what only its maker knows. */
export async function faultOf({ line, ends }: Offer, setting: Setting, isAnswer = false): Promise<string | null> {
  let first: string | null = null
  if (ends.length === 0) return 'no command'
  for (const end of ends) {
    const typed = line.slice(0, end)
    if (/^\/help(?: |$)/.test(typed)) return null
    const desk = await deskOf(setting)
    const outcome = await desk.run(typed)
    // The file is at hand of whoever types it, not here.
    if (!outcome.ok && outcome.error.problem === 'no_files_here') return null
    if (outcome.ok) return wrongIn(typed, setting.person, await desk.person())
    // A question back is no fault where what it offers is none.
    if (outcome.error.code === 'missing_option' && !isAnswer && reachesTo(typed, ends)) {
      for (const offer of await offersOf(typed, setting)) {
        // The command that it speaks of itself.
        if (offer.line.slice(0, Math.min(...offer.ends)) === `/${outcome.path}`) continue
        const fault = await faultOf(offer, setting, true)
        if (fault !== null) return `${typed} → ${offer.line}: ${fault}`
      }
      return null
    }
    first ??= `${outcome.error.code} ${outcome.error.problem}`
  }
  return first
}

/** Whether a line stops where it was meant to: at its least, or at its whole. */
const reachesTo = (typed: string, ends: readonly number[]): boolean => typed.length === Math.min(...ends)
