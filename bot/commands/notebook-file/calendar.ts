import { findJar } from '../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { isoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayAt } from '../../../core/quantity/time/zone.ts'
import type { Person } from '../../../store/person.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { dangerCautions } from '../jar/known/jar-dangers.ts'
import { kitchenOf } from '../options/input-units.ts'
import { note } from '../reply/outcome-reply.ts'
import { calendarFile } from './calendar-file.ts'
import { comingOf } from './coming.ts'

const ALL = /^all$/i

/** The jars that were asked for; null for all of them. */
const jarAsked = (typed: string | undefined, { jars }: Person) =>
  typed === undefined || ALL.test(typed.trim()) ? null : findJar(typed, jars)

export const calendarCommand = defineCommand({
  ...signature('calendar'),
  topic: 'sharing',
  async run(input, context) {
    const { nowMs, zone } = context
    const person = await context.store.read(context.userId)
    const jar = jarAsked(input.jar?.is, person)
    const asked = jar === null ? person.jars : [jar]
    const coming = comingOf(person, asked, context)
    const [first, last] = [coming[0], coming.at(-1)]
    const dayOf = (ms: number) => isoDay(dayAt(zone, ms))
    const isEmpty = first === undefined || last === undefined
    return {
      headline: isEmpty
        ? { group: 'headlines', key: 'calendar_empty', values: { isOneJar: jar !== null } }
        : {
            group: 'headlines',
            key: 'calendar',
            values: {
              count: coming.length,
              jars: new Set(coming.map(({ jar: { id } }) => id)).size,
              firstDay: dayOf(first.duty.dueMs),
              lastDay: dayOf(last.duty.dueMs),
              today: dayOf(nowMs),
            },
          },
      table: [],
      sure: [],
      notes: isEmpty ? [] : [note('calendar_again')],
      cautions: dangerCautions(
        asked.flatMap(({ entries }) => jarStateOf(entries) ?? []),
        context.settings,
      ),
      actions: [],
      data: {
        events: coming.map(({ uid, jar: { id }, duty }) => ({
          uid,
          jar: id,
          duty: duty.kind,
          dueAt: new Date(duty.dueMs).toISOString(),
        })),
      },
      kitchen: kitchenOf({}),
      ...(!isEmpty && { files: [calendarFile(coming, nowMs, context.settings)] }),
      visibility: 'confidential',
    }
  },
})
