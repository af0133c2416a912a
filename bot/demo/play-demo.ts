import { isoDay } from '../../core/quantity/time/calendar-day.ts'
import { dayNumber } from '../../core/quantity/time/day-number.ts'
import { dayAt, instantOf } from '../../core/quantity/time/zone.ts'
import type { Store } from '../../store/store.ts'
import { drawFiles } from '../chat/draw-files.ts'
import type { Reply } from '../chat/reply.ts'
import { execute } from '../chat/run/execute.ts'
import { explain } from '../chat/run/explain.ts'
import type { Surface } from '../reminders/delivery.ts'
import type { TerminalSession } from '../terminal/chat/terminal-session.ts'
import type { SaveFile } from '../terminal/files/save-file.ts'
import { terminalLanguage } from '../terminal/show/language-for-terminal.ts'
import { render } from '../terminal/show/render.ts'
import { wrap } from '../terminal/show/wrap.ts'
import type { SeasonAct, SeasonStep, SeasonText } from '../text/demo-text.ts'
import type { Language } from '../text/language.ts'
import { remindNext } from './jump-to-next-reminder.ts'
import { asItIs, brevity } from './shorten-reply.ts'

/** What a season is played with. */
export interface DemoStage extends Pick<TerminalSession, 'commands' | 'screen' | 'log' | 'out' | 'isHeard' | 'ended'> {
  readonly language: Language
  readonly season: SeasonText
  /** Of nobody yet. */
  readonly store: Store
  /** Null: the pictures it comes with are not drawn. */
  readonly saveFile: SaveFile | null
  /** Waited for before the next day, where somebody reads along. */
  readonly nextDay: () => Promise<void>
}

const USER = 'local'

const momentOf = (zone: string, { at }: SeasonStep): number => {
  const [day = '', time = ''] = at.split(' ')
  const [hour, minute] = time.split(':')
  return instantOf(zone, dayNumber(day), Number(hour) * 60 + Number(minute))
}

/** What a nudge asks for, kind by kind. */
const asksFor = ({ data: { duties } }: Reply): readonly string[] => [
  ...new Set((duties as readonly { readonly duty: string }[]).map(({ duty }) => duty)),
]

/** Prints under the day's heading; an empty line only around what is long. */
function printer({ out, season, screen, nextDay }: DemoStage) {
  let [day, isRoomy] = ['', true]
  const print = async (text: string, nowMs: number, isLong: boolean): Promise<void> => {
    const today = dayAt(season.zone, nowMs)
    const isNewDay = isoDay(today) !== day
    if (isNewDay && day !== '') await nextDay()
    if (isNewDay) out(`${day === '' ? '' : '\n'}${season.heading(today)}\n`)
    else if (isLong || isRoomy) out('\n')
    day = isoDay(today)
    isRoomy = isLong
    out(`${isLong ? text : text.replaceAll('\n\n', '\n')}\n`)
  }
  const remark = (text: string, nowMs: number): Promise<void> =>
    print(wrap(season.remark(text), screen.width).join('\n'), nowMs, false)
  return { print, remark }
}

/** What an act is printed with. */
type Printer = ReturnType<typeof printer>

/** One act; false where the season was ended in it. Reminders to shake are answered at once, and shown the first time only. */
async function playAct(act: SeasonAct, stage: DemoStage, { print, remark }: Printer): Promise<boolean> {
  const { season, store, commands, language, screen, log, saveFile, isHeard, ended } = stage
  const { zone } = season
  const speech = terminalLanguage(language)
  const shorten = act.isWhole ? asItIs : brevity()
  const nudges: Reply[] = []
  let nowMs = 0
  let isShakingShown = false
  let isQuiet = false

  const answerTo = async (line: string): Promise<{ readonly path: string; readonly reply: Reply }> => {
    const place = { kind: 'console' } as const
    const outcome = await execute(line, {
      userId: USER,
      place,
      assumedZone: zone,
      store,
      language,
      commands,
      nowMs,
      log,
    })
    if (!outcome.ok) throw new Error(explain(outcome, speech))
    if (saveFile !== null) {
      const drawn = await drawFiles(outcome.reply, speech.words, log)
      for (const { name, bytes } of drawn) if (bytes !== null) await saveFile(name, bytes)
    }
    return outcome
  }
  const type = async (line: string): Promise<void> => {
    const { path, reply } = await answerTo(line)
    if (isQuiet) return
    const brief = shorten(reply, path)
    await print(`${speech.console.prompt()}${line}\n${render(brief.reply, speech, screen)}`, nowMs, brief.isWhole)
  }
  const surface: Surface = {
    placeOf: () => ({ kind: 'console' }),
    after: () => null,
    send: async ({ reply }) => {
      nudges.push(reply)
      return 'sent'
    },
  }
  const show = async (nudge: Reply): Promise<void> => {
    const kinds = asksFor(nudge)
    const isShake = kinds.includes('shake')
    if (!isQuiet && (kinds.length > 1 || !isShake || !isShakingShown)) {
      const { reply, isWhole } = shorten(nudge, 'nudge')
      await print(render(reply, speech, screen), nowMs, isWhole)
    }
    if (!isShake) return
    if (isShakingShown) return void (await answerTo(season.shaken))
    isShakingShown = true
    await type(season.shaken)
    await remark(season.shakesLeftOut, nowMs)
  }
  /** Every nudge until a step; false where the season is ended. */
  const pass = async (untilMs: number): Promise<boolean> => {
    for (let dueMs: number | null = nowMs; dueMs !== null; ) {
      if (ended.aborted || !isHeard()) return false
      dueMs = await remindNext({ userId: USER, store, surface, assumedZone: zone, log }, untilMs)
      nowMs = dueMs ?? untilMs
      for (const nudge of nudges.splice(0)) await show(nudge)
    }
    return true
  }

  const [{ at } = { at: '' }] = act.steps
  nowMs = momentOf(zone, { at, lines: [] })
  for (const step of act.steps) {
    isQuiet = step.isQuiet ?? false
    if (!(await pass(momentOf(zone, step)))) return false
    if (step.remark !== undefined) await remark(step.remark, nowMs)
    for (const line of step.lines) {
      if (ended.aborted) return false
      await type(line)
    }
  }
  return true
}

/**
 * Plays a season in the real code with a clock that runs by itself: what is typed, what is answered, and every nudge when
 * it comes.
 */
export async function playSeason(stage: DemoStage): Promise<void> {
  const { season, store, screen, out } = stage
  const printing = printer(stage)
  for (const act of season.acts) {
    await store.remove(USER)
    if (!(await playAct(act, stage, printing))) return
  }
  out(`\n${wrap(season.end, screen.width).join('\n')}\n`)
}
