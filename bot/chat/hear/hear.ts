import { refusedIn } from '../../../core/botanical/refuse/refused-in.ts'
import { NOBODY, type Person } from '../../../store/person.ts'
import { StorageError } from '../../../store/storage-error.ts'
import type { Invocation } from '../../calls/invocation.ts'
import { type Path, signatures } from '../../calls/signatures.ts'
import { lineOf } from '../../calls/write-line.ts'
import type { TalkReading } from '../../talk/frames/reading.ts'
import type { CommandText } from '../../text/command-text.ts'
import { byPath } from '../callable.ts'
import type { Command } from '../command.ts'
import { pathTyped } from '../grammar/find-command.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { emergencyIn } from '../run/emergency.ts'
import { attempt, execute } from '../run/execute.ts'
import { help } from '../run/help.ts'
import { withJarNumbers } from '../run/jar-for-numbers.ts'
import { placeOf } from '../run/kitchen-said.ts'
import { anotherNamed } from './another-named.ts'
import { isAmong, isDone, isNameWrong, isRefusal, problemOf } from './as-typed.ts'
import { deedsIn, namesJar } from './deeds-in.ts'
import { exactCall, exactWithoutSlash, keepsNamed, looseAndNamed, ONLY_TYPED, typedCall } from './exactly.ts'
import { type Heard, heard, type Understood } from './heard.ts'
import { inOwnKitchen } from './in-own-kitchen.ts'
import { noteBehindName } from './note-behind-name.ts'
import { poisonNamed } from './poison-named.ts'
import { readingFor } from './reading-for.ts'
import { remember } from './remember.ts'
import { answeredThen, keepForLater, type ReadNow, several } from './several.ts'

type CommandTexts = Readonly<Record<string, CommandText>>

/** `/ask` and a sentence, as where slash commands are all there is. */
const ASK = /^\/ask(?:\s+(?:text:)?\s*|$)(.*)$/is

/** Nobody is asked for their jars twice, and a store that cannot be read keeps no sentence from being understood. */
async function personOf({ store, userId }: Dispatch): Promise<Person> {
  try {
    return await store.read(userId)
  } catch (error) {
    if (error instanceof StorageError) return NOBODY
    throw error
  }
}

/** An exact call; what it lacks is an open question. */
async function ofExact(typed: Invocation, dispatch: Dispatch): Promise<Understood> {
  const outcome = await execute(typed, dispatch)
  const reread = outcome.ok && outcome.isReread === true ? outcome.call : undefined
  const call = reread ?? typed
  const reading: TalkReading | null = Object.hasOwn(signatures, call.path)
    ? { kind: 'call', call: { command: call.path as Path, options: call.options }, leftOut: [], does: 'compute' }
    : null
  return { heard: heard(outcome, ...(reread === undefined ? [] : [lineOf(reread)])), reading }
}

/** What was read with no word left over. */
function callRead(reading: TalkReading, mayLack = false): Invocation | null {
  const isCall = reading.kind === 'call' || (mayLack && reading.kind === 'question' && reading.about.kind === 'lacks')
  return isCall && reading.leftOut.length === 0 ? { path: reading.call.command, options: reading.call.options } : null
}

/** Loose words at its beginning are read, what has a name stays as it is: `/plan 10 lemons in a litre of gin to-strength:30%`. */
function looseRead(rest: string, path: Path, dispatch: Dispatch, person: Person): Invocation | null {
  const command = byPath(path, dispatch.commands)
  const parts = command === null ? null : looseAndNamed(rest, command)
  if (parts === null || parts.loose === '') return null
  const read = callRead(readingFor(parts.loose, dispatch, person, path), true)
  if (read === null || Object.keys(parts.named).some((name) => name in read.options)) return null
  return { path, options: { ...read.options, ...parts.named } }
}

/** A note that stands behind the name of its jar; where it only says where the jar stands, that. */
async function ofNote(note: Invocation, dispatch: Dispatch, person: Person): Promise<Understood> {
  const { jar = '', note: text = '' } = note.options
  const read = callRead(readingFor(`${jar} ${text}`, dispatch, person, 'jar note'))
  const isPlace = read?.path === 'jar note' && read.options.where !== undefined && read.options.note === undefined
  const call = isPlace ? read : note
  const { heard: said, reading } = await ofExact(call, dispatch)
  return { heard: { ...said, read: said.read ?? lineOf(call) }, reading }
}

/** A line with its slash: exact, or with loose values that are read with the command known. */
async function ofSlash(line: string, dispatch: Dispatch, person: Person): Promise<Understood> {
  const { commands } = dispatch
  const exact = exactCall(line, commands as readonly Command[], person.jars)
  if (exact !== null) return ofExact(exact, dispatch)
  // What is done is done once, and what is refused stays refused, however else the line could be read.
  const typed = typedCall(line, commands)
  const asTyped = typed === null ? null : await ofExact(typed, dispatch)
  const note = asTyped === null || refusedIn(line).length > 0 ? null : noteBehindName(typed, asTyped.heard)
  if (note !== null) return ofNote(note, dispatch, person)
  if (asTyped !== null && (isDone(asTyped.heard) || isRefusal(asTyped.heard) || isNameWrong(asTyped.heard, line))) {
    return asTyped
  }
  const path = pathTyped(line, commands)
  const rest =
    path === null
      ? ''
      : line
          .trim()
          .replace(/^\/\s*/, '')
          .slice(path.length)
          .trim()
  // What stands in quotes is meant as it is.
  if (path !== null && rest !== '' && !/^\S+:|"/.test(rest) && Object.hasOwn(signatures, path)) {
    const reading = readingFor(rest, dispatch, person, path as Path)
    // A slip in a name is read where a jar is only looked at; what is recorded of a jar asks which.
    const isRecorded = reading.kind === 'call' && reading.does === 'record' && !isAmong(reading.call, asTyped)
    if (asTyped !== null && isRecorded && !/\d/.test(rest) && problemOf(asTyped.heard) === 'no_such_jar') return asTyped
    const whole = callRead(reading)
    const read =
      whole !== null && keepsNamed(rest, whole, commands) ? whole : looseRead(rest, path as Path, dispatch, person)
    // The command that was typed is never taken for another.
    // Nothing is done of a line that names a poison beside what was read.
    const isRun = read?.path === path && refusedIn(line).length === 0
    const another = isRun && 'jar' in read.options ? anotherNamed(rest, path, person.jars) : null
    if (another !== null) return ofExact(another, dispatch)
    const outcome = isRun ? await execute(read, dispatch) : null
    if (read !== null && outcome?.ok === true) {
      const call = { command: read.path as Path, options: read.options }
      return { heard: heard(outcome, lineOf(read)), reading: { kind: 'call', call, leftOut: [], does: 'compute' } }
    }
  }
  return asTyped ?? { heard: heard(await execute(line, dispatch)), reading: null }
}

/** The calls that a line would make, so that they can be looked at before anything is run. */
export async function callsMeant(line: string, dispatch: Dispatch): Promise<readonly Invocation[]> {
  const person = await personOf(dispatch)
  const typed = line.trim()
  const exact = typed.startsWith('/')
    ? typedCall(typed, dispatch.commands)
    : exactWithoutSlash(typed, dispatch.commands as readonly Command[], person.jars)
  // A jar of one's own, whichever option names it.
  if (exact !== null) return [{ ...exact, ...(withJarNumbers(exact, person.jars) !== null && { isOfJar: true }) }]
  const whole = readingFor(typed, dispatch, person)
  const parts = deedsIn(typed, whole, dispatch, person)
  const readings = parts?.texts.map((part) => readingFor(part, dispatch, person)) ?? [whole]
  return readings.flatMap((reading): Invocation[] => {
    if (reading.kind === 'symptom') return [{ path: 'trouble', options: reading.options }]
    if (reading.kind !== 'call' && reading.kind !== 'question' && reading.kind !== 'only_typed') return []
    return [{ path: reading.call.command, options: reading.call.options }]
  })
}

/**
 * Answers any line: somebody harmed first, then a command as typed, then what a sentence means. Nothing is erased, thrown away or
 * shown to others but by a line with its slash or a button, and nothing is recorded unless a word means it. Never throws.
 */
export async function hear(
  line: string,
  dispatch: Dispatch,
  texts: CommandTexts = dispatch.language.commands,
): Promise<Heard> {
  const emergency = await emergencyIn(line, dispatch)
  if (emergency !== null) return heard(emergency)
  const attempted = await attempt(
    async () => understood(line.trim(), dispatch, texts),
    () => null,
    dispatch.log,
  )
  if (!attempted.ok) return heard(attempted)
  if (attempted.result.isRemembered !== true) remember(attempted.result, dispatch, placeOf(dispatch), line)
  return inOwnKitchen(attempted.result.heard, line, dispatch)
}

async function understood(line: string, dispatch: Dispatch, texts: CommandTexts): Promise<Understood> {
  const asked = ASK.exec(line)?.[1]
  if (asked !== undefined) return understood(asked.trim(), dispatch, texts)
  const page = help(line, dispatch.commands, { commands: texts, about: dispatch.language.help.about })
  if (page !== null) return { heard: heard(page), reading: null }
  const person = await personOf(dispatch)
  if (line.startsWith('/') || line === '') {
    if (line === '') return { heard: heard(await execute(line, dispatch)), reading: null }
    const typed = await ofSlash(line, dispatch, person)
    return { ...typed, heard: poisonNamed(line, typed.heard) }
  }
  const exact = exactWithoutSlash(line, dispatch.commands as readonly Command[], person.jars)
  if (exact !== null) return ofExact(exact, dispatch)
  const reading = readingFor(line, dispatch, person)
  const apart = deedsIn(line, reading, dispatch, person)
  const readNow: ReadNow = async (text) => {
    const now = await personOf(dispatch)
    return { reading: readingFor(text, dispatch, now), isJarNamed: namesJar(text, dispatch, now) }
  }
  if (apart !== null) {
    const said = await several(apart.texts, readNow, dispatch, placeOf(dispatch))
    keepForLater(apart.later, dispatch, placeOf(dispatch))
    return { heard: said, reading: null, isRemembered: true }
  }
  // An option that was named is never taken for another one.
  const typed = reading.kind === 'call' ? typedCall(line, dispatch.commands) : null
  if (typed !== null && reading.kind === 'call' && !ONLY_TYPED.includes(typed.path)) {
    const { command: path, options } = reading.call
    if (!keepsNamed(line, { path, options }, dispatch.commands)) return ofExact(typed, dispatch)
  }
  return answeredThen(line, reading, readNow, dispatch, placeOf(dispatch))
}
