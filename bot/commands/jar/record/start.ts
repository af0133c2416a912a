import { DomainError } from '../../../../core/domain-error.ts'
import type { Started } from '../../../../core/jar/entry/entry.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { nameAfter } from '../../../../core/jar/entry/name-after.ts'
import { newJarId } from '../../../../core/jar/entry/new-jar-id.ts'
import { startedFrom } from '../../../../core/jar/entry/start-from-plan.ts'
import { momentOf } from '../../../../core/jar/record/entry-time.ts'
import { record } from '../../../../core/jar/record/record.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { expectFree, MOST_RUNNING, namesTaken, runningJars } from '../../../../core/jar/state/running-jars.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import type { Jar, Person } from '../../../../store/person.ts'
import { call } from '../../../calls/call.ts'
import { dayGiven } from '../../../calls/jar-options.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { withoutOwner } from '../../../calls/share-ref.ts'
import { type InputOf, signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Reply } from '../../../chat/reply.ts'
import { canonical } from '../../../chat/stable-json.ts'
import type { Message } from '../../../text/words.ts'
import { farNotes } from '../../plan/far-notes.ts'
import { planAsked } from '../../plan/plan-asked.ts'
import { allInNotes, assumedNotes } from '../../plan/plan-notes.ts'
import { startRows } from '../../plan/plan-rows.ts'
import { unknownNotes } from '../../plan/plan-unknown.ts'
import { missing } from '../../plan/plan-wish.ts'
import { placeActions, whereNote } from '../../reply/reminders-actions.ts'
import { countMade } from '../../share/count-made.ts'
import { allInActions } from '../known/add-line.ts'
import { cautioned } from '../known/jar-cautions.ts'
import { todayOf } from '../known/view-of.ts'
import { change, enteredBy, type Input, type Recorded } from '../step/record-step.ts'
import { lateDay, stepReply } from '../step/step-reply.ts'
import { keepingActions, startCautions, startDays, usualNotes, zoneNotes } from './start-said.ts'

interface Begun extends Recorded {
  readonly isFirst: boolean
}

interface Beginning {
  readonly started: Started
  /** False where it is called after its plants. */
  readonly isNamed: boolean
  readonly day: CalendarDay | null
  readonly cautions: readonly Message<'cautions'>[]
}

/** The batch of a start, without what tells two jars of it apart: its name, and days that follow from its first. */
const batchText = (started: Started): string => {
  const { plants, spirits, waterG, sweetenings, sweetener, filler, targets, bottles, named, origin } = started
  const timeless = plants.map(({ addOn: _, ...plant }) => plant)
  const kept = { ...(sweetener !== undefined && { sweetener }), ...(filler !== undefined && { filler }) }
  return canonical({ plants: timeless, spirits, waterG, sweetenings, ...kept, targets, bottles, named, origin })
}

/** A running jar of the very same batch: without a name a second one is hardly meant. */
const begunSo = (jars: readonly Jar[], started: Started) =>
  runningJars(jars).find(({ story }) => batchText(story.started) === batchText(started))

function begin(person: Person, input: Input, beginning: Beginning, context: Context) {
  const { isNamed, day, cautions } = beginning
  const { nowMs, zone } = context
  const { jars } = person
  const same = isNamed ? undefined : begunSo(jars, beginning.started)
  if (same !== undefined) {
    const entry = same.story.started
    const kept: Begun = {
      ...same,
      entry,
      unusual: [],
      isAlready: true,
      cautions: [],
      held: 'same_again',
      isFirst: false,
    }
    return { person: null, made: kept }
  }
  const name = isNamed ? beginning.started.name : freeName(beginning.started.name, namesTaken(jars))
  const started = { ...beginning.started, name }
  if (runningJars(jars).length >= MOST_RUNNING) throw new DomainError('limit', 'too_many_jars', { most: MOST_RUNNING })
  asOptionProblem('name', () => expectFree(started.name, jars))
  const moment = momentOf(day, { nowMs, zone, entries: [] })
  const meta = enteredBy(input, context)
  const { entries, entry, unusual, isAlready } = record([], started, moment, meta)
  const id = newJarId(
    `${started.name} ${nowMs}`,
    jars.map((jar) => jar.id),
  )
  const said = cautioned({ id, entries, told: [], cautioned: [] }, cautions)
  const isFirst = jars.length === 0
  const made: Begun = { ...said, story: jarStateOf(entries)!, entry, unusual, isAlready, isFirst }
  return { person: { ...person, jars: [...jars, said.jar] }, made }
}

/** What a jar keeps of how it was begun. */
const kept = (input: Input): Input => {
  const { from } = input
  return from === undefined ? input : { ...input, from: { ...from, typed: withoutOwner(from.typed) } }
}

/** The same line with a name, which begins one more all the same. */
async function anotherActions(
  name: string,
  given: InputOf<'jar start'>,
  { store, userId }: Context,
): Promise<readonly Action[]> {
  const { jars } = await store.read(userId)
  const another = call('jar start', { ...given, name: freeName(name, namesTaken(jars)) })
  return [{ label: { group: 'actions', key: 'jar_begin_another', values: undefined }, call: another }]
}

async function startJar(given: InputOf<'jar start'>, context: Context): Promise<Reply> {
  const { nowMs, zone, settings } = context
  const setting = { today: dayAt(zone, nowMs), country: settings.country }
  const day = dayGiven('when', given.when, setting)
  const asked = planAsked(given, { command: 'jar start', ...setting, start: day ?? setting.today })
  const { input, wish, planned, notes } = asked
  const shared = given.from?.is ?? null
  const name = input.name?.is ?? nameAfter(planned)
  if (name === null) throw missing('jar start', 'name', 'name:lemon')
  const isNamed = input.name !== undefined
  const beginning = {
    started: { ...startedFrom(planned, wish, name), ...(input.enzyme !== undefined && { enzyme: input.enzyme.is }) },
    isNamed,
    day,
    cautions: startCautions(planned),
  }
  const begun = await change(context, (person) => begin(person, kept(input), beginning, context))
  if (shared !== null && begun.held === undefined) await countMade(shared, context)
  const isZoneTaken = begun.isFirst && settings.zone === null
  const isPlaceOpen = begun.isFirst && settings.place === null && context.place.kind !== 'console'
  const places = isPlaceOpen ? await placeActions(context) : []
  return stepReply(context, input, begun, {
    headline: {
      group: 'headlines',
      key: 'jar_started',
      values: { name: begun.story.name, started: begun.story.started, day: lateDay(begun.entry, context) },
    },
    under: [{ group: 'headlines', key: 'jar_start_days', values: startDays(begun.story.started, todayOf(context)) }],
    isNextSaid: true,
    rows: () => startRows(planned),
    notes: [
      ...(isPlaceOpen ? [whereNote(places, context)] : []),
      // A button alone would not say what it is about.
      ...(isZoneTaken && context.place.kind !== 'console' ? zoneNotes(zone) : []),
      ...allInNotes(planned),
      ...(input.enzyme === undefined ? [] : [{ group: 'notes', key: 'enzyme_first', values: undefined } as const]),
      ...inMore<Message<'notes'>>([
        ...(isZoneTaken && context.place.kind === 'console' ? zoneNotes(zone) : []),
        ...(isNamed ? [] : [{ group: 'notes', key: 'jar_named', values: { name: begun.story.name } } as const]),
        ...notes,
        ...farNotes(planned),
        ...usualNotes(input, planned),
        ...unknownNotes(planned),
        ...assumedNotes(input, wish, planned),
      ]),
    ],
    actions: [...places, ...keepingActions(begun, isZoneTaken, context), ...allInActions(begun, context)],
    actionsHeld: begun.held === undefined ? [] : await anotherActions(name, given, context),
  })
}

export const jarStartCommand = defineCommand({
  ...signature('jar start'),
  run: (given, context) => startJar(given, context),
})
