import { DomainError } from '../../../../core/domain-error.ts'
import type { Started } from '../../../../core/jar/entry/entry.ts'
import { freeName } from '../../../../core/jar/entry/jar-name.ts'
import { newJarId } from '../../../../core/jar/entry/new-jar-id.ts'
import { momentOf } from '../../../../core/jar/record/entry-time.ts'
import { record } from '../../../../core/jar/record/record.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import { expectFree, MOST_RUNNING, namesTaken, runningJars } from '../../../../core/jar/state/running-jars.ts'
import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import type { Jar, Person } from '../../../../store/person.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { withoutOwner } from '../../../calls/share-ref.ts'
import type { Context } from '../../../chat/command.ts'
import { canonical } from '../../../chat/stable-json.ts'
import type { Message } from '../../../text/words.ts'
import { cautioned } from '../known/jar-cautions.ts'
import { enteredBy, type Input, type Recorded } from '../step/record-step.ts'

export interface Begun extends Recorded {
  readonly isFirst: boolean
}

export interface Beginning {
  readonly started: Started
  /** False where it is called after its plants. */
  readonly isNamed: boolean
  readonly day: CalendarDay | null
  readonly cautions: readonly Message<'cautions'>[]
}

/** The batch of a start, without what tells two jars of it apart: its name, and days that follow from its first. */
const batchText = (started: Started): string => {
  const {
    plants,
    spirits,
    waterG,
    sweetenings,
    sweetener,
    filler,
    targets,
    bottles,
    named,
    origin,
    secondOf = null,
  } = started
  const timeless = plants.map(({ addOn: _, ...plant }) => plant)
  const kept = { ...(sweetener !== undefined && { sweetener }), ...(filler !== undefined && { filler }) }
  const of = { plants: timeless, spirits, waterG, sweetenings, ...kept, targets, bottles, named, origin, secondOf }
  return canonical(of)
}

/** A running jar of the very same batch: without a name a second one is hardly meant. */
const begunSo = (jars: readonly Jar[], started: Started) =>
  runningJars(jars).find(({ story }) => batchText(story.started) === batchText(started))

/** The jar that begins, beside those that are there. */
export function begin(person: Person, input: Input, beginning: Beginning, context: Context) {
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
export const kept = (input: Input): Input => {
  const { from } = input
  return from === undefined ? input : { ...input, from: { ...from, typed: withoutOwner(from.typed) } }
}
