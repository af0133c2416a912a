import { z } from 'zod'
import { DomainError } from '../../../core/domain-error.ts'
import { strainWindow } from '../../../core/jar/steeping-series.ts'
import type { Story } from '../../../core/jar/story.ts'
import type { IsoDay } from '../../../core/quantity/calendar.ts'
import { isoOf } from '../../../core/quantity/day-number.ts'
import { defineCommand } from '../../chat/command.ts'
import type { Message } from '../../text/words.ts'
import { blamed } from '../fields.ts'
import { recordStep } from './change-jar.ts'
import { jarFields } from './jar-fields.ts'
import { allReply, isAll, recordAll } from './record-all.ts'
import { runningJars } from './running.ts'
import { recordedHeadline, stepReply } from './step-reply.ts'

/** From the first glass of its bottles on a jar asks for nothing more. */
const asksStill = ({ bottled, happened }: Story): boolean =>
  bottled === null || !happened.some(({ kind }) => kind === 'opened')

/** The jars whose days for straining are over before they are heard of again. */
function pastNotes(stories: readonly Story[], untilDay: IsoDay): readonly Message<'notes'>[] {
  const past = stories.flatMap(({ name, started, strained, ended }) => {
    const closes = strained === null && ended === null ? (strainWindow(started)?.closes ?? null) : null
    const lastDay = closes === null ? null : isoOf(closes)
    return lastDay === null || untilDay <= lastDay ? [] : [{ name, lastDay }]
  })
  return past.map((values) => ({ group: 'notes', key: 'jar_later_past', values }))
}

export const jarLaterCommand = defineCommand({
  path: 'jar later',
  input: z.object({ jar: jarFields.jarOrAll, until: jarFields.until }),
  async run(input, context) {
    const until = blamed('until', () => input.until.is.read(context))
    const happening = () => ({ kind: 'put_off', ...until }) as const
    if (!isAll(input.jar.is)) {
      const recorded = await recordStep(context, input, { happening })
      return stepReply(context, input, recorded, {
        headline: recordedHeadline(recorded, context),
        notes: pastNotes([recorded.story], until.untilDay),
      })
    }
    const hasRunning = runningJars((await context.store.read(context.userId)).jars).length > 0
    const all = await recordAll(context, input, {
      happening,
      isMeant: asksStill,
      none: () => new DomainError('not_found', hasRunning ? 'none_to_remind' : 'no_jars', {}),
    })
    const reply = allReply(context, input, all, (names) => ({
      group: 'headlines',
      key: 'jar_all_put_off',
      values: { names, ...until, zone: context.zone },
    }))
    const stories = all.map(({ story }) => story)
    return { ...reply, notes: [...reply.notes, ...pastNotes(stories, until.untilDay)] }
  },
})
