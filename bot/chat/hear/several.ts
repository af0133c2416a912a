import type { TalkReading } from '../../talk/frames/reading.ts'
import { whoAt } from '../../talk/memory/remembered.ts'
import type { Dispatch } from '../run/call-outcome.ts'
import { answered } from './answered.ts'
import { problemOf } from './as-typed.ts'
import { asked, type Heard, type Understood } from './heard.ts'
import { remember } from './remember.ts'

/** What one of several is read as, by what is known once the ones before are done, and whether it says which jar it is of. */
export type ReadNow = (text: string) => Promise<{ readonly reading: TalkReading; readonly isJarNamed: boolean }>

/** What is done, or would be once a question is answered. */
const isDeed = (reading: TalkReading): boolean =>
  reading.kind === 'call'
    ? reading.does === 'record'
    : reading.kind === 'question' && reading.about.kind !== 'told_or_asked'

/** What is asked of a jar, `when is it ready`: of none that was not there. */
const isOfJar = (reading: TalkReading): boolean => reading.kind === 'call' && reading.call.options.jar !== undefined

/** Named as left out, where it was not understood, or would be of a jar that is not there. */
const setAside = (words: string, isOfNone: boolean): Heard =>
  asked(null, { code: 'not_understood', problem: 'talk_set_aside', values: { words, isOfNone } }, null)

/** No jar came of it that `it` could be: there is none of that name, or it was only worked out. */
function isWithoutJar({ heard: said, reading }: Understood): boolean {
  if (problemOf(said) === 'no_such_jar') return true
  return reading?.kind === 'call' && /^(?:plan|again)$/.test(reading.call.command)
}

const IT = /(?<!\p{L})(?:it|them)(?!\p{L})/iu

/** `Put it in the cellar`, with the name of the jar that it is. */
const saidOf = (name: string, text: string): string =>
  IT.test(text) ? text.replace(IT, () => `the ${name}`) : `${name}, ${text}`

/** The name of the jar that was begun. */
function begunIn({ outcome }: Heard): string | null {
  if (!('reply' in outcome) || outcome.path !== 'jar start') return null
  const { name } = outcome.reply.data
  return typeof name === 'string' ? name : null
}

/** Whether it warns: of a drink that has to go, must not be drunk yet, or depends on an answer that is still out. */
function isWarning({ outcome }: Heard): boolean {
  if (!outcome.ok || !('reply' in outcome)) return false
  const { headline, data } = outcome.reply
  if (headline.key === 'trouble_ask' || headline.key === 'trouble_likely') return headline.values.stake !== null
  return WARNED.has(headline.key) || (outcome.path === 'handbook' && data.entry === 'heat_spirit')
}

const WARNED: ReadonlySet<string> = new Set(['trouble_throw_away', 'trouble_hold', 'trouble_hold_for'])

/** The deeds of one sentence, one at least, done in order, each read once the one before is written down. */
export async function several(
  parts: readonly string[],
  read: ReadNow,
  dispatch: Dispatch,
  place: string,
): Promise<Heard> {
  const all: Heard[] = []
  let before: Understood | null = null
  for (const text of parts) {
    const begun: string | null = before === null ? null : begunIn(before.heard)
    const alone = await read(text)
    const isOfBegun = begun !== null && !alone.isJarNamed && isDeed(alone.reading)
    const part = isOfBegun ? saidOf(begun, text) : text
    const { reading } = isOfBegun ? await read(part) : alone
    const isBehindNone = before !== null && isWithoutJar(before) && !alone.isJarNamed
    // That there is no such jar answers what is asked of it.
    if (isBehindNone && !isDeed(reading) && isOfJar(reading)) continue
    const isOfNone = isBehindNone && isDeed(reading)
    if (isOfNone || (before !== null && reading.kind === 'lost')) {
      all.push(setAside(text, isOfNone))
      continue
    }
    const understood: Understood = { heard: await answered(part, reading, dispatch, place), reading }
    remember(understood, dispatch, place, part)
    all.push(understood.heard)
    before = understood
  }
  // A danger is read before what was written down, in whatever order they were told.
  const [first, ...also] = all.toSorted((one, other) => Number(isWarning(other)) - Number(isWarning(one)))
  return also.length === 0 ? first! : { ...first!, also }
}

/** What is to be answered once a jar that is asked for is known. */
export function keepForLater(texts: readonly string[], { talk, userId, nowMs }: Dispatch, place: string): void {
  const who = whoAt(userId, place)
  if (talk !== undefined && texts.length > 0) talk.keep(who, { ...talk.of(who, nowMs), later: texts }, nowMs)
}

/** What was kept for the answer to the question that is open, where this is it. */
function laterOf(reading: TalkReading, { talk, userId, nowMs }: Dispatch, place: string): readonly string[] {
  const said = talk?.of(whoAt(userId, place), nowMs)
  if (said === undefined || said.question === null || reading.kind !== 'call') return []
  return reading.call.command === said.question.call.command ? said.later : []
}

/** The answer to what was told first, and to what the same words tell of it. */
async function withNext(line: string, reading: TalkReading, dispatch: Dispatch, place: string): Promise<Heard> {
  const first = await answered(line, reading, dispatch, place)
  if (reading.kind !== 'call' || reading.next === undefined || !first.outcome.ok) return first
  remember({ heard: first, reading }, dispatch, place)
  const later: TalkReading = { kind: 'call', call: reading.next, does: 'record', leftOut: [] }
  const { also = [], ...second } = await answered(line, later, dispatch, place)
  return { ...first, also: [...(first.also ?? []), second, ...also] }
}

/** The answer to a line, and then to what was kept for it. */
export async function answeredThen(
  line: string,
  reading: TalkReading,
  read: ReadNow,
  dispatch: Dispatch,
  place: string,
): Promise<Understood> {
  const later = laterOf(reading, dispatch, place)
  const heard = await withNext(line, reading, dispatch, place)
  if (later.length === 0 || !heard.outcome.ok) return { heard, reading }
  remember({ heard, reading }, dispatch, place)
  const { also = [], ...next } = await several(later, read, dispatch, place)
  return { heard: { ...heard, also: [...(heard.also ?? []), next, ...also] }, reading, isRemembered: true }
}
