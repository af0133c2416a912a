import { newLastReplies } from '../../../bot/chat/last-replies.ts'
import { remindNext } from '../../../bot/demo/jump-to-next-reminder.ts'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { answer, showText } from '../../../bot/terminal/chat/answer-line.ts'
import { consoleSurface } from '../../../bot/terminal/chat/terminal-delivery.ts'
import { en } from '../../../bot/text/en/index.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import { dayAt, instantOf, minutesAt } from '../../../core/quantity/time/zone.ts'
import { memoryStore } from '../../../store/memory/memory-store.ts'
import { commands, noFiles, speech } from '../test-desk.ts'

const ZONE = 'Europe/London'
const USER = 'local'
const SCREEN = { width: 80, colour: false }

const INPUT = /^(?:@ (?<day>\S+) (?<hour>\d\d):(?<minute>\d\d)|> (?<line>.*)|#.*)$/

const twoDigits = (number: number): string => String(number).padStart(2, '0')

const clockText = (ms: number): string => {
  const minutes = minutesAt(ZONE, ms)
  return `${isoDay(dayAt(ZONE, ms))} ${twoDigits(Math.floor(minutes / 60))}:${twoDigits(minutes % 60)}`
}

/**
 * A typed conversation told anew: of the text only what was typed (`> line`), the clock (`@ 2026-12-09 09:30`) and remarks
 * (`# …`) are read, and what the bot says to it is put between. A reminder stands below the instant at which it came.
 */
export async function tell(text: string): Promise<string> {
  const store = memoryStore(ZONE)
  const told: string[] = []
  const faults: string[] = []
  const log = (fault: string): number => faults.push(fault)
  const asker = { userId: USER, place: { kind: 'console' }, assumedZone: ZONE, store } as const
  // What was said before is remembered, as in a window that stays open.
  const [talk, replies] = [newTalkMemory(), newLastReplies()]
  let nowMs = 0
  const nudges: string[] = []
  const say = (nudge: string): number => nudges.push(nudge)
  const surface = consoleSurface({ userId: USER, language: en, screen: SCREEN, say, isHeard: () => true })
  const passing = { store, surface, userId: USER, assumedZone: ZONE, log }
  for (const typed of text.split('\n')) {
    const { day, hour, minute, line } = INPUT.exec(typed)?.groups ?? {}
    if (day !== undefined) {
      nowMs = instantOf(ZONE, dayNumber(day), Number(hour) * 60 + Number(minute))
      for (let dueMs: number | null = 0; dueMs !== null; dueMs = await remindNext(passing, nowMs)) {
        told.push(...nudges.splice(0).map((nudge) => `~ ${clockText(dueMs)}\n${nudge}`))
      }
      told.push(`@ ${clockText(nowMs)}`)
    } else if (line !== undefined) {
      const dispatch = { ...asker, language: en, commands, nowMs, log, talk, replies }
      told.push(`> ${line}\n${(await answer(line, dispatch, speech, showText(SCREEN), noFiles)).text}`)
    } else if (typed.startsWith('#')) told.push(typed)
  }
  if (faults.length > 0) throw new Error(faults.join('\n'))
  return `${told.join('\n\n')}\n`
}
