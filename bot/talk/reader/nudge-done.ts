import type { Sentence } from '../bits/bit.ts'
import { isPastDay } from '../bits/past-day.ts'
import type { CallRead, TalkReading } from '../frames/reading.ts'
import { isSameCall, withOption } from '../memory/change-call.ts'
import { NOTHING_SAID, type Remembered } from '../memory/remembered.ts'
import { callReading } from '../memory/rule.ts'
import { DONE } from '../memory/step-rules.ts'

/** What the last reminder asked for that is open still, and when it came. */
export interface Nudged {
  readonly jobs: readonly CallRead[]
  /** The jars that it was of. */
  readonly names: readonly string[]
  readonly toldMs: number
}

/** The last reminder, and whether anything was said since. */
export interface LastNudge extends Pick<Nudged, 'jobs' | 'names'> {
  readonly isNewer: boolean
}

/** What was said before, and the last reminder; null where none came lately. It is worked out when it is asked for. */
export interface KnowsNudge {
  readonly said?: Remembered
  readonly nudge?: () => LastNudge | null
}

/** `Did both` too: of what was asked for. */
const isTold = ({ typed, has }: Pick<Sentence, 'typed' | 'has'>): boolean =>
  has('done_word') || (has('both_of_them', 'all_of_them') && typed.tokens.some(({ text }) => text === 'did'))

/** `Done`, `did it this morning`, and nothing else. */
function isDoneOnly({ typed, spans, bits, has }: Sentence): boolean {
  if (!isTold({ typed, has }) || has('denial', 'hypothesis', 'asking') || typed.text.includes('?')) return false
  const isWithin = (all: readonly { readonly from: number; readonly to: number }[], at: number): boolean =>
    all.some(({ from, to }) => from <= at && at < to)
  const plain = spans.filter(({ concept }) => PLAIN.has(concept))
  return typed.tokens.every(
    ({ kind, text }, at) => kind === 'sign' || SMALL.test(text) || isWithin(plain, at) || isWithin(bits, at),
  )
}

const PLAIN: ReadonlySet<string> = new Set(['done_word', 'greeting', 'thanks', 'yes', 'all_of_them', 'both_of_them'])
const SMALL =
  /^(?:i|we|did|ive|weve|have|has|it|its|is|that|this|thats|now|already|just|all|been|ok|and|the|job|jobs|ho|abbiamo|e|gia)$/

/** One job is done; of several it is asked which. */
function ofJobs(jobs: readonly CallRead[]): TalkReading | null {
  const [job, ...others] = jobs
  if (job === undefined) return null
  if (others.length === 0) return callReading(job, 'record')
  return { kind: 'question', call: job, about: { kind: 'which_done' }, choices: jobs, leftOut: [] }
}

const different = (calls: readonly CallRead[]): readonly CallRead[] =>
  calls.filter((call, at) => calls.findIndex((each) => isSameCall(each, call)) === at)

/** What a list of jobs offered, which is several: the list itself guesses none. */
const listed = ({ call, offered }: Remembered): readonly CallRead[] =>
  call?.command === 'jar list'
    ? different(offered.filter(({ command }) => DONE.test(command) || command === 'jar taste'))
    : []

/**
 * `Done` behind a reminder: the one job that it asked for is done, of several it is asked which. What the last answer offered goes
 * before, unless the reminder came since: then it may be either.
 */
export function nudgeDone(
  sentence: Sentence,
  { said = NOTHING_SAID, nudge = () => null }: KnowsNudge,
): TalkReading | null {
  const [day, another] = sentence.bits
  const isOfDay =
    day === undefined || ((isPastDay(day) || day.text === 'today') && day.kind === 'date' && another === undefined)
  if (!isOfDay || said.question !== null || !isDoneOnly(sentence)) return null
  const list = listed(said)
  if (list.length > 1) return ofJobs(list)
  const offered = said.offered.filter(({ command }) => DONE.test(command)).slice(0, 1)
  const last = nudge()
  if (last === null || last.jobs.length === 0) return null
  if (offered.length > 0 && !last.isNewer) return null
  const jobs = different([...offered, ...last.jobs])
  const dated = jobs.map((job) => (day === undefined || day.text === 'today' ? job : withOption(job, 'when', day.text)))
  return ofJobs(dated)
}
