import { z } from 'zod'
import { DomainError } from '../../../core/domain-error.ts'
import { startedFrom } from '../../../core/jar/batch.ts'
import type { Started } from '../../../core/jar/event.ts'
import { momentOf } from '../../../core/jar/moment.ts'
import { newJarId } from '../../../core/jar/new-jar-id.ts'
import { record } from '../../../core/jar/record.ts'
import { storyOf } from '../../../core/jar/story.ts'
import type { CalendarDay } from '../../../core/quantity/quantities.ts'
import { dayAt } from '../../../core/quantity/zone.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Person } from '../../../store/person.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Message } from '../../text/words.ts'
import { blamed } from '../fields.ts'
import { planAsked } from '../plan-asked.ts'
import { plantsSaid } from '../plan-data.ts'
import { assumedNotes } from '../plan-notes.ts'
import { planCautions } from '../plan-reply.ts'
import { planRows } from '../plan-rows.ts'
import { checkUnknown, unknownNotes } from '../plan-unknown.ts'
import { planShape, type WithPlants } from '../plan-wish.ts'
import { countMade, hasMade } from '../share/count-made.ts'
import { withoutOwner } from '../share/share-ref.ts'
import { change, type Input, type Recorded, typedIn } from './change-jar.ts'
import { cautioned } from './jar-cautions.ts'
import { dayGiven, jarFields } from './jar-fields.ts'
import { expectFree, MOST_RUNNING, runningJars } from './running.ts'
import { lateDay, stepReply } from './step-reply.ts'

/** Of a plan's table, what the first day and the next ones need. */
const ROWS: ReadonlySet<string> = new Set(['plan_jar', 'plan_add_later', 'plan_taste', 'plan_strain'])

interface Begun extends Recorded {
  readonly isFirst: boolean
  /** None before was begun from the same share. */
  readonly isFirstOfShare: boolean
}

interface Beginning {
  readonly started: Started
  readonly shareId: string | null
  readonly day: CalendarDay | null
  readonly cautions: readonly Message<'cautions'>[]
}

function begin(person: Person, input: Input, { started, shareId, day, cautions }: Beginning, context: Context) {
  const { nowMs, zone } = context
  const { jars } = person
  if (runningJars(jars).length >= MOST_RUNNING) throw new DomainError('limit', 'too_many_jars', { most: MOST_RUNNING })
  blamed('name', () => expectFree(started.name, jars))
  const moment = momentOf(day, { nowMs, zone, entries: [] })
  const meta = { enteredMs: nowMs, typed: typedIn(input) }
  const { entries, entry, unusual, isAlready } = record([], started, moment, meta)
  const id = newJarId(
    `${started.name} ${nowMs}`,
    jars.map((jar) => jar.id),
  )
  const said = cautioned({ id, entries, told: [], cautioned: [] }, cautions)
  const isFirstOfShare = shareId !== null && !hasMade(jars, shareId)
  const first = { isFirst: jars.length === 0, isFirstOfShare }
  const made: Begun = { ...said, story: storyOf(entries)!, entry, unusual, isAlready, ...first }
  return { person: { ...person, jars: [...jars, said.jar] }, made }
}

/** Plants of which no amount was said. */
function usualNotes({ of }: WithPlants, { plants }: Plan): readonly Message<'notes'>[] {
  const usual = plants.filter((_, index) => of.is.plants[index]?.massG === null)
  const values = { plants: usual.map(({ botanical, massG }) => ({ id: botanical.id, massG })) }
  return usual.length === 0 ? [] : [{ group: 'notes', key: 'jar_usual_amount', values }]
}

/** What a jar keeps of how it was begun. */
const kept = (input: Input): Input => {
  const { from } = input
  return from === undefined ? input : { ...input, from: { ...from, typed: withoutOwner(from.typed) } }
}

export const jarStartCommand = defineCommand({
  path: 'jar start',
  input: z.object({ name: jarFields.name, ...planShape, when: jarFields.when.optional() }).superRefine(checkUnknown),
  async run(given, context) {
    const { nowMs, zone, settings } = context
    const setting = { today: dayAt(zone, nowMs), country: settings.country }
    const day = dayGiven('when', given.when, setting)
    const asked = planAsked(given, { command: 'jar start', ...setting, start: day ?? setting.today })
    const { input, wish, planned } = asked
    const shared = given.from?.is ?? null
    const beginning = {
      started: startedFrom(planned, wish, input.name.is),
      shareId: shared?.shareId ?? null,
      day,
      cautions: planCautions(planned),
    }
    const begun = await change(context, (person) => begin(person, kept(input), beginning, context))
    if (shared !== null && begun.isFirstOfShare) await countMade(shared, context)
    const isZoneTaken = begun.isFirst && settings.zone === null
    return stepReply(context, input, begun, {
      headline: {
        group: 'headlines',
        key: 'jar_started',
        values: { name: begun.story.name, started: begun.story.started, day: lateDay(begun.entry, context) },
      },
      rows: () => planRows(wish, planned, plantsSaid(input, planned)).filter(({ label }) => ROWS.has(label.key)),
      notes: [
        ...(isZoneTaken ? [{ group: 'notes', key: 'jar_zone_assumed', values: { zone } } as const] : []),
        ...asked.notes,
        ...usualNotes(input, planned),
        ...unknownNotes(input, planned),
        ...assumedNotes(input, wish, planned),
      ],
      actions: isZoneTaken
        ? [{ label: { group: 'actions', key: 'settings_zone', values: undefined }, line: `/settings zone:${zone}` }]
        : [],
    })
  },
})
