import { z } from 'zod'
import { effective, lastStanding } from '../../../core/jar/effective.ts'
import type { HappeningEntry, JarEntry } from '../../../core/jar/event.ts'
import { findWhole } from '../../../core/jar/find-jar.ts'
import { nameIn } from '../../../core/jar/name-in.ts'
import { undo } from '../../../core/jar/record.ts'
import type { Jar, Person, Share } from '../../../store/person.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { withdrawAction } from '../share/share-list.ts'
import { kitchenOf } from '../typed-in.ts'
import { beginAgainActions } from './begin-again.ts'
import { change, type Input, typedIn, withJar } from './change-jar.ts'
import { dangerActions, dangerCautions } from './jar-dangers.ts'
import { jarData, undoneJarData } from './jar-data.ts'
import { jarFields } from './jar-fields.ts'
import { type JarView, viewOf } from './jar-view.ts'
import { lateDay, nextRows, nowRows } from './step-reply.ts'
import { undoneActions } from './undone-actions.ts'

/** What became of a jar's last entry. */
interface TakenBack {
  readonly jar: Jar
  readonly name: string
  /** Null where it stands still. */
  readonly undone: JarEntry | null
  /** The one that was meant is not the last that stands; null: it is. */
  readonly held: 'undone_before' | 'undo_held' | null
  /** As it stood with its corrections; null of a correction, which is no happening. */
  readonly stood: HappeningEntry | null
}

/** Several only by their ids, as a button names them. */
const SEVERAL = /^#\S+(?: #\S+)+$/

/** A button finds its jar also where there is none any more because its start was taken back. */
function jarsMeant(typed: string, isPressed: boolean, { jars }: Person): readonly Jar[] {
  const names = SEVERAL.test(typed) ? typed.split(' ') : [typed]
  return names.map((name) => (isPressed && jars.find(({ id }) => `#${id}` === name)) || findWhole(name, jars))
}

function takeBack(jar: Jar, after: number | null, input: Input, { nowMs, zone }: Context): TakenBack {
  const happened = effective(jar.entries)
  const name = nameIn(happened) ?? nameIn(jar.entries) ?? ''
  if (after !== null && lastStanding(jar.entries)?.seq !== after) {
    const isUndone = jar.entries.some((entry) => entry.kind === 'undone' && entry.of === after)
    return { jar, name, undone: null, held: isUndone ? 'undone_before' : 'undo_held', stood: null }
  }
  const { entries, undone } = undo(jar.entries, { enteredMs: nowMs, typed: typedIn(input), zone })
  const stood = happened.find(({ seq }) => seq === undone.seq) ?? null
  return { jar: { ...jar, entries }, name, undone, held: null, stood }
}

const dataOf = (jar: Jar, context: Context): Reply['data'] => {
  const view = viewOf(jar, context)
  return view === null ? undoneJarData(jar) : jarData(view)
}

const namesOf = (all: readonly TakenBack[]): readonly string[] => all.map(({ name }) => name)

function headlineOf(all: readonly TakenBack[], context: Context): Reply['headline'] {
  for (const held of ['undo_held', 'undone_before'] as const) {
    const names = namesOf(all.filter((each) => each.held === held))
    if (names.length > 0) return { group: 'headlines', key: `jar_${held}`, values: { names } }
  }
  const [first] = all
  if (first === undefined || first.undone === null || all.length > 1) {
    return {
      group: 'headlines',
      key: 'jar_all_undone',
      values: { names: namesOf(all), happening: first?.stood ?? null },
    }
  }
  const { jar, name, stood, undone } = first
  if (viewOf(jar, context) === null) return { group: 'headlines', key: 'jar_gone', values: { name } }
  const day = lateDay(stood ?? undone, context)
  return { group: 'headlines', key: 'jar_undone', values: { name, happening: stood, day } }
}

/** What is shared of a jar that is gone. */
const sharesOf = ({ id }: Jar, { shares }: Person): readonly Share[] =>
  shares.filter((share) => share.jarId === id && !share.withdrawn)

/** What was taken back, to be entered once more. */
function againActions(only: TakenBack | undefined, view: JarView | null, context: Context): readonly Action[] {
  if (view === null) return only?.undone?.kind === 'started' ? beginAgainActions(only.undone, context) : []
  return only?.stood == null ? [] : undoneActions(only.stood, view, context)
}

export const jarUndoCommand = defineCommand({
  path: 'jar undo',
  input: z.object({ jar: jarFields.jar, after: jarFields.entries.optional() }),
  async run(input, context) {
    const { jar: named, after } = input
    const all = await change(context, (person) => {
      const meant = jarsMeant(named.is, after !== undefined, person)
      const lastOf = (index: number) => (after === undefined ? null : (after.is[index] ?? 0))
      const made = meant.map((jar, index) => takeBack(jar, lastOf(index), input, context))
      if (made.every(({ held }) => held === null)) {
        return { person: made.reduce<Person>((so, { jar }) => withJar(so, jar), person), made }
      }
      // All or none: half of what was said at once would be hard to make out.
      return { person: null, made: made.map((each, index) => ({ ...each, jar: meant[index]!, undone: null })) }
    })
    const [only] = all.length === 1 ? all : []
    const view = only === undefined ? null : viewOf(only.jar, context)
    const isGone = view === null && only?.undone?.kind === 'started'
    const shares = isGone ? sharesOf(only.jar, await context.store.read(context.userId)) : []
    return {
      headline: headlineOf(all, context),
      table: view === null ? [] : [...nextRows(view, context), ...nowRows(view)],
      sure: [],
      notes:
        shares.length === 0
          ? []
          : [{ group: 'notes', key: 'jar_share_stands', values: { ids: shares.map((share) => share.id) } }],
      cautions: dangerCautions(all.flatMap(({ jar }) => viewOf(jar, context)?.story ?? [])),
      actions: [
        ...(view === null ? [] : dangerActions(view, context)),
        ...againActions(only, view, context),
        ...shares.map((share) => withdrawAction({ ...share, name: only!.name })),
      ],
      data: only === undefined ? { jars: all.map(({ jar }) => dataOf(jar, context)) } : dataOf(only.jar, context),
      kitchen: kitchenOf(input),
    }
  },
})
