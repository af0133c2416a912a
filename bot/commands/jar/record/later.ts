import { DomainError } from '../../../../core/domain-error.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { type RunningJar, runningJars } from '../../../../core/jar/state/running-jars.ts'
import { agenda } from '../../../../core/jar/tasks/agenda.ts'
import { asksStill, asksUntil } from '../../../../core/jar/tasks/asks-until.ts'
import { strainWindow } from '../../../../core/jar/tasks/windows.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { isoOf } from '../../../../core/quantity/time/day-number.ts'
import { dutySettings } from '../../../../store/due.ts'
import type { Until } from '../../../calls/jar-options.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Message } from '../../../text/words.ts'
import { todayOf } from '../known/view-of.ts'
import { type Recorded, recordStep } from '../step/record-step.ts'
import { recordedHeadline, stepReply } from '../step/step-reply.ts'
import { allReply, isAll, recordAll } from './record-all.ts'

const asksBefore =
  (until: Until, { nowMs, settings, assumedZone }: Context) =>
  ({ jar, story }: RunningJar): boolean =>
    asksStill(story) && asksUntil(jar.entries, until, dutySettings(settings, assumedZone), nowMs)

/** The jars whose days for straining are over before they are heard of again, and not over already. */
function pastNotes(stories: readonly JarState[], untilDay: IsoDay, today: IsoDay): readonly Message<'notes'>[] {
  const past = stories.flatMap(({ name, started, strained, ended }) => {
    const closes = strained === null && ended === null ? (strainWindow(started)?.closes ?? null) : null
    const lastDay = closes === null ? null : isoOf(closes)
    return lastDay === null || untilDay <= lastDay || lastDay < today ? [] : [{ name, lastDay }]
  })
  return past.map((values) => ({ group: 'notes', key: 'jar_later_past', values }))
}

/** Said where nothing is due when it is heard of again: the day of what comes next. */
function noneThen({ jar, story }: Recorded, until: Until, { nowMs, settings, assumedZone }: Context) {
  const { today, next } = agenda(jar.entries, dutySettings(settings, assumedZone), nowMs)
  if (today.length > 0 || next === null || next.sinceDay <= until.untilDay) return []
  const values = { name: story.name, nextDay: next.sinceDay }
  return [{ group: 'notes', key: 'jar_later_none', values } as const]
}

/** Where all reminders are paused for longer, which this does not end. */
function pausedNotes({ untilDay }: Until, { settings: { pausedUntil } }: Context): readonly Message<'notes'>[] {
  if (pausedUntil === null || pausedUntil <= untilDay) return []
  return [{ group: 'notes', key: 'jar_later_paused', values: { untilDay, pausedUntil } }]
}

function noneMeant(running: readonly RunningJar[], until: Until & { readonly zone: string }): DomainError {
  if (running.length === 0) return new DomainError('not_found', 'no_jars', {})
  if (!running.some(({ story }) => asksStill(story))) return new DomainError('not_found', 'none_to_remind', {})
  return new DomainError('not_found', 'none_due_until', until)
}

export const jarLaterCommand = defineCommand({
  ...signature('jar later'),
  topic: 'jars',
  async run(input, context) {
    const until = asOptionProblem('until', () => input.until.is.read(context))
    const happening = () => ({ kind: 'put_off', ...until }) as const
    const paused = pausedNotes(until, context)
    if (!isAll(input.jar.is)) {
      const recorded = await recordStep(context, input, { happening })
      return stepReply(context, input, recorded, {
        headline: recordedHeadline(recorded, context),
        notes: [
          ...paused,
          ...(paused.length > 0 ? [] : noneThen(recorded, until, context)),
          ...pastNotes([recorded.story], until.untilDay, todayOf(context)),
        ],
      })
    }
    const running = runningJars((await context.store.read(context.userId)).jars)
    const all = await recordAll(context, input, {
      happening,
      isMeant: asksBefore(until, context),
      none: () => noneMeant(running, { ...until, zone: context.zone }),
    })
    const reply = allReply(context, input, all, (names) => ({
      group: 'headlines',
      key: 'jar_all_put_off',
      values: { names, ...until, zone: context.zone },
    }))
    const stories = all.map(({ story }) => story)
    return { ...reply, notes: [...paused, ...reply.notes, ...pastNotes(stories, until.untilDay, todayOf(context))] }
  },
})
