import { invocationOf } from '../../calls/call.ts'
import { type Path, signatures } from '../../calls/signatures.ts'
import type { CallRead, TalkReading } from '../../talk/frames/reading.ts'
import { isChanged } from '../../talk/memory/earlier.ts'
import { type Doubt, type ListOffered, type WorkedOut, whoAt } from '../../talk/memory/remembered.ts'
import { tellsOfBottles } from '../../talk/memory/rule.ts'
import { atDepth } from '../depth.ts'
import type { Reply } from '../reply.ts'
import type { CallOutcome, Dispatch } from '../run/call-outcome.ts'
import { dangerIn, dangerStill } from '../run/danger-told.ts'
import type { HelpPage } from '../run/help-page.ts'
import { DRINKS, drinkIn } from './drink-in.ts'
import type { Understood } from './heard.ts'
import { questionOf } from './open-question.ts'
import { kitchenWished } from './plan-kept.ts'
import { written } from './written-call.ts'

const isPath = (path: string): path is Path => Object.hasOwn(signatures, path)

/** The syrup that was worked out for a jar, as it is said to be in it. */
function syrupIn(outcome: CallOutcome | HelpPage): readonly CallRead[] {
  if (!('reply' in outcome) || outcome.path !== 'syrup') return []
  const { waterMl, sugarG } = outcome.reply.data
  const jar = outcome.call?.options.jar
  if (jar === undefined || typeof waterMl !== 'number' || typeof sugarG !== 'number') return []
  return [
    { command: 'jar sweeten', options: { jar, water: `${Math.round(waterMl)} ml`, sugar: `${Math.round(sugarG)} g` } },
  ]
}

/** What an answer offered, as calls; the syrup of a jar once. */
function offeredBy(outcome: CallOutcome | HelpPage): readonly CallRead[] {
  const actions = actionsOf(outcome)
  return actions.some(({ command }) => command === 'jar sweeten') ? actions : [...actions, ...syrupIn(outcome)]
}

/** The sweetening as planned that was offered last, until something else is written down. */
function plannedBy(outcome: CallOutcome | HelpPage, before: CallRead | null, isStep: boolean): CallRead | null {
  const actions = 'reply' in outcome ? outcome.reply.actions : []
  const planned = actions.find(({ label }) => label.key === 'jar_sweeten')
  if (planned === undefined) return isStep ? null : before
  const { path, options } = invocationOf(planned.call)
  return { command: path as Path, options }
}

/** Recipes of which another strength, sweetness or size can be wished. */
const WORKED_OUT = /^(?:plan|again|syrup)$/

/** The last recipe that was worked out, until another is. */
const workedBy = (now: WorkedOut, before: WorkedOut | null): WorkedOut | null =>
  WORKED_OUT.test(now.call.command) ? now : before

const MOST_KEPT = 20

/** With one more; one that was there already is gone back to. */
function trailWith(trail: readonly CallRead[], call: CallRead): readonly CallRead[] {
  const line = written(call)
  const at = trail.findIndex((each) => written(each) === line)
  return at === -1 ? [...trail, call].slice(-MOST_KEPT) : trail.slice(0, at + 1)
}

/** With the list that an answer offered, in place of that of the same batch before it was changed. */
function listsWith(
  lists: readonly ListOffered[],
  batch: CallRead,
  offered: readonly CallRead[],
): readonly ListOffered[] {
  const list = offered.find(({ command, options }) => command === 'shopping' && options.plans !== undefined)
  if (list === undefined || batch.command === 'shopping') return lists
  return [...lists.filter((each) => !isChanged(each.batch, batch)), { batch, list }].slice(-MOST_KEPT)
}

const actionsOf = (outcome: CallOutcome | HelpPage): readonly CallRead[] =>
  'reply' in outcome
    ? outcome.reply.actions.flatMap(({ call, isExample }): CallRead[] => {
        const { path, options } = invocationOf(call)
        return isExample === true ? [] : [{ command: path as Path, options }]
      })
    : []

/** The notes that ask whether a step is a mistake. */
const DOUBTS: Readonly<Record<string, Doubt>> = {
  jar_sweetened_again: 'undo',
  jar_sweetened_otherwise: 'meant',
  jar_reading_surprising: 'slip',
  jar_bottled_unsweetened: 'slip',
  jar_bottled_more: 'slip',
}

/** What an answer asks of a step that may be a mistake, its first screen first. */
function doubtIn({ notes }: Reply): Doubt | null {
  const [first] = (['first', 'more'] as const).flatMap((depth) =>
    atDepth(notes, depth).flatMap(({ key }) => DOUBTS[key] ?? []),
  )
  return first ?? null
}

/** Records something of a jar, which `undo` takes back. */
const isStep = (call: CallRead): boolean =>
  /^jar (?!list|show|tag|label|undo)/.test(call.command) || tellsOfBottles(call)

/** With the jar by its id: a jar that was begun has no name in its call. */
const stepOf = (call: CallRead, { data }: Reply): CallRead => ({
  ...call,
  options: { ...call.options, ...(typeof data.id === 'string' && { jar: `#${data.id}` }) },
})

/** A step that cannot be written down as it was told: its amounts may be a slip. */
const refusedStep = (reading: TalkReading, outcome: CallOutcome | HelpPage): CallRead | null =>
  reading.kind === 'call' && isStep(reading.call) && !outcome.ok && outcome.error.code !== 'not_found'
    ? reading.call
    : null

/** The line that only its maker types or presses, which was shown; what erases everything asks once more. */
function onlyTypedIn(reading: TalkReading | null, outcome: CallOutcome | HelpPage): CallRead | null {
  if (reading?.kind === 'only_typed') return reading.call
  const isAsked = 'reply' in outcome && outcome.call?.path === 'forget' && outcome.call.options.confirm === undefined
  return isAsked ? { command: 'forget', options: { confirm: 'yes' } } : null
}

/** Tells of a recipe: with an amount, in several lines, by that name or with what it is poured. */
const OF_RECIPE =
  /\d|\n|\b(?:recipe|ricetta|litres?|liters?|litr[oi]|quarts?|pints?|cups?|bottles?|bottigli[ae]|fifths?|lbs?|pounds?|grams?|kilos?|spirits?|vodka|gin|rum|brandy|grappa|alcol)\b/i

/** A recipe that was refused or not read, so that `start it` begins no older one; null where the line tells of none. */
function declinedIn(line: string, reading: TalkReading | null, outcome: CallOutcome | HelpPage): TalkReading | null {
  if (reading === null || outcome.ok) return null
  if (reading.kind === 'call') return WORKED_OUT.test(reading.call.command) ? reading : null
  return (reading.kind === 'refused' || reading.kind === 'lost') && OF_RECIPE.test(line) ? reading : null
}

/** Keeps what was said for what may follow it. A call that was refused leaves the one before it in place. */
export function remember({ heard, reading }: Understood, dispatch: Dispatch, place: string, line = ''): void {
  const { talk, userId, nowMs } = dispatch
  if (talk === undefined) return
  const who = whoAt(userId, place)
  const before = talk.of(who, nowMs)
  const { outcome } = heard
  const question = questionOf(reading, outcome, dispatch.commands)
  const answersSince = before.answersSince + 1
  const onlyTyped = onlyTypedIn(reading, outcome)
  const declined = declinedIn(line, reading, outcome) ?? before.declined
  const danger = dangerIn(outcome) ?? dangerStill(before.danger)
  if ('reply' in outcome && outcome.call !== undefined && isPath(outcome.call.path)) {
    const call: CallRead = { command: outcome.call.path, options: { ...outcome.call.options } }
    const offered = offeredBy(outcome)
    const drink = drinkIn(outcome) ?? (isStep(call) ? null : before.drink)
    const kitchen = kitchenWished(reading, before)
    const now = {
      call,
      offered,
      worked: workedBy({ call, offered, drink, ...(kitchen !== null && { kitchen }) }, before.worked),
      answersBehind: 0,
      question: null,
      later: [],
      refused: null,
      declined: WORKED_OUT.test(call.command) || isStep(call) ? null : before.declined,
      doubt: doubtIn(outcome.reply),
      planned: plannedBy(outcome, before.planned, isStep(call)),
      trail: DRINKS.test(call.command) ? trailWith(before.trail, call) : before.trail,
      lists: listsWith(before.lists, call, offered),
      drink,
      jarTold: reading?.kind === 'call' ? (reading.jarTold ?? null) : null,
      onlyTyped,
      danger,
    }
    // What was taken back is no more to be taken back.
    if (call.command === 'jar undo') talk.keep(who, { ...now, step: null, answersSince }, nowMs)
    else if (isStep(call)) talk.keep(who, { ...now, step: stepOf(call, outcome.reply), answersSince: 0 }, nowMs)
    else talk.keep(who, { ...now, step: before.step, answersSince }, nowMs)
  } else if (question !== null)
    talk.keep(
      who,
      { ...before, answersBehind: before.answersBehind + 1, question, refused: null, declined, onlyTyped, danger },
      nowMs,
    )
  else if (reading !== null && reading.kind !== 'lost')
    // A greeting or thanks in between answers no question.
    talk.keep(
      who,
      {
        ...before,
        answersSince,
        answersBehind: before.answersBehind + (reading.kind === 'small_talk' ? 0 : 1),
        question: reading.kind === 'small_talk' ? before.question : null,
        refused: refusedStep(reading, outcome),
        declined,
        onlyTyped,
        danger,
      },
      nowMs,
    )
  else if (danger !== null || before.onlyTyped !== null || declined !== null)
    talk.keep(who, { ...before, onlyTyped, danger, declined }, nowMs)
}
