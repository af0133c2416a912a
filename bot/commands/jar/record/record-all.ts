import type { DomainError } from '../../../../core/domain-error.ts'
import { sameName } from '../../../../core/jar/entry/jar-name.ts'
import { momentOf } from '../../../../core/jar/record/entry-time.ts'
import { type RunningJar, runningJars } from '../../../../core/jar/state/running-jars.ts'
import { dayAt } from '../../../../core/quantity/time/zone.ts'
import type { Person } from '../../../../store/person.ts'
import { dayGiven } from '../../../calls/jar-options.ts'
import type { Context } from '../../../chat/command.ts'
import type { Reply } from '../../../chat/reply.ts'
import { dangersAfter } from '../known/jar-dangers.ts'
import { jarData } from '../known/jar-data.ts'
import { kitchenOfJars } from '../known/jar-kitchen.ts'
import { undoActions } from '../known/undo-actions.ts'
import { viewOf } from '../known/view-of.ts'
import { change, type Dated, type Recorded, recordIn, type Step, withJar } from '../step/record-step.ts'
import { lateDay, unusualNotes } from '../step/step-reply.ts'

export const isAll = (typed: string): boolean => sameName(typed.trim(), 'all')

interface ForAll extends Step {
  readonly isMeant: (running: RunningJar) => boolean
  /** Where no running jar is meant. */
  readonly none: () => DomainError
}

/** The same step in every running jar that is meant and was there on that day. */
export function recordAll(
  context: Context,
  input: Dated,
  { isMeant, none, ...step }: ForAll,
): Promise<readonly Recorded[]> {
  const { nowMs, zone, settings } = context
  const setting = { today: dayAt(zone, nowMs), country: settings.country }
  return change(context, (person) => {
    const { day } = momentOf(dayGiven('when', input.when, setting), { nowMs, zone, entries: [] })
    const meant = runningJars(person.jars).filter((running) => isMeant(running) && running.story.started.day <= day)
    if (meant.length === 0) throw none()
    const made = meant.map(({ jar }) => recordIn(jar, input, step, context))
    const changed = made.filter(({ isAlready }) => !isAlready)
    return {
      person: changed.length === 0 ? null : changed.reduce<Person>((so, { jar }) => withJar(so, jar), person),
      made,
    }
  })
}

const namesOf = (recorded: readonly Recorded[]): readonly string[] => recorded.map(({ story }) => story.name)

/** What became of all of them; those that had it already are named only where no other is. */
export function allReply(
  context: Context,
  input: Dated,
  recorded: readonly Recorded[],
  headlineOf: (names: readonly string[], day: string | null) => Reply['headline'],
): Reply {
  const changed = recorded.filter(({ isAlready }) => !isAlready)
  const { entry } = recorded[0]!
  const day = lateDay(entry, context)
  return {
    headline:
      changed.length > 0
        ? headlineOf(namesOf(changed), day)
        : { group: 'headlines', key: 'jar_already', values: { names: namesOf(recorded), kind: entry.kind, day } },
    table: [],
    sure: [],
    notes: unusualNotes(
      recorded.flatMap(({ unusual }) => unusual),
      recorded[0]!.story,
    ),
    cautions: dangersAfter(recorded),
    actions: undoActions(changed.map(({ jar }) => jar)),
    data: { jars: recorded.flatMap(({ jar }) => viewOf(jar, context) ?? []).map(jarData) },
    kitchen: kitchenOfJars(
      input,
      recorded.map(({ story }) => story),
    ),
  }
}
