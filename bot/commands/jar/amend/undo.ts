import { DomainError } from '../../../../core/domain-error.ts'
import type { HappeningEntry, JarEntry } from '../../../../core/jar/entry/entry.ts'
import { nameIn } from '../../../../core/jar/entry/name-in.ts'
import { effective, lastStanding } from '../../../../core/jar/entry/standing-entries.ts'
import { isRestOf, pouredWith } from '../../../../core/jar/pour/poured-with.ts'
import { expectStillSpent } from '../../../../core/jar/pour/second-steep.ts'
import { isFreedName, isNameTaken, withFreeName } from '../../../../core/jar/record/freed-name.ts'
import { undo } from '../../../../core/jar/record/record.ts'
import { findWhole } from '../../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../../core/jar/state/jar-state.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import type { Jar, Person, Share } from '../../../../store/person.ts'
import { signature } from '../../../calls/signatures.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Reply } from '../../../chat/reply.ts'
import { withdrawAction } from '../../share/share-list.ts'
import { dangerActions, dangerCautions } from '../known/jar-dangers.ts'
import { jarData, undoneJarData } from '../known/jar-data.ts'
import { kitchenOfJars } from '../known/jar-kitchen.ts'
import { viewOf } from '../known/view-of.ts'
import { nextSaid } from '../step/next-said.ts'
import { change, enteredBy, type Input, withJar } from '../step/record-step.ts'
import { lateDay, nowRows } from '../step/step-reply.ts'
import { beginAgainActions } from './begin-again.ts'
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
  /** The name that came back, and the one the jar has because another has that; null where it is free. */
  readonly renamed: readonly [from: string, to: string] | null
}

/** Several only by their ids, as a button names them. */
const SEVERAL = /^#\S+(?: #\S+)+$/

/** A button finds its jar also where there is none any more because its start was taken back. */
function jarsMeant(typed: string, isPressed: boolean, { jars }: Person): readonly Jar[] {
  const names = SEVERAL.test(typed) ? typed.split(' ') : [typed]
  const meant = names.map((name) => (isPressed && jars.find(({ id }) => `#${id}` === name)) || findWhole(name, jars))
  const [only] = meant
  if (isPressed || only === undefined || meant.length > 1) return meant
  // What was poured from jar to jar comes back in all of them, or in none.
  const all = pouredWith(only, jars)
  const later = all.find(({ isLast }) => !isLast)
  if (later === undefined) return all.map(({ jar }) => jar)
  const [jar, other] = [only, later.jar].map(({ entries }) => nameIn(effective(entries)) ?? '')
  throw new DomainError('wrong_stage', 'undo_other_first', { jar: jar!, other: other! })
}

/** What a jar's undo depends on. */
interface Meant {
  readonly jar: Jar
  /** The last entry there was when the line was offered; null where it was typed. */
  readonly after: number | null
  readonly others: readonly Jar[]
}

function takeBack({ jar, after, others }: Meant, input: Input, context: Context): TakenBack {
  const happened = effective(jar.entries)
  const name = nameIn(happened) ?? nameIn(jar.entries) ?? ''
  if (after !== null && lastStanding(jar.entries)?.seq !== after) {
    const isUndone = jar.entries.some((entry) => entry.kind === 'undone' && entry.of === after)
    return { jar, name, undone: null, held: isUndone ? 'undone_before' : 'undo_held', stood: null, renamed: null }
  }
  const meta = { ...enteredBy(input, context), zone: context.zone }
  let made = undo(jar.entries, meta)
  // A name that nobody typed, and that is needed still, goes together with what was typed before it.
  while (isFreedName(made.undone) && isNameTaken(made.entries, others)) made = undo(made.entries, meta)
  // A jar that came of a pouring, and into which the same one poured another, goes as a whole.
  while (isRestOf(made.undone, made.entries)) made = undo(made.entries, meta)
  const entries = withFreeName(made.entries, others, meta)
  const stood = happened.find(({ seq }) => seq === made.undone.seq) ?? null
  const [from, to] = [jarStateOf(made.entries)?.name, jarStateOf(entries)?.name]
  const renamed = from === undefined || to === undefined || from === to ? null : ([from, to] as const)
  return { jar: { ...jar, entries }, name, undone: made.undone, held: null, stood, renamed }
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
  if (view === null) return only?.undone?.kind === 'started' ? beginAgainActions(only.undone) : []
  return only?.stood == null ? [] : undoneActions(only.stood, view, context)
}

export const jarUndoCommand = defineCommand({
  ...signature('jar undo'),
  topic: 'jars',
  async run(input, context) {
    const { jar: named, after } = input
    const all = await change(context, (person) => {
      const meant = jarsMeant(named.is, after !== undefined, person)
      const lastOf = (index: number) => (after === undefined ? null : (after.is[index] ?? 0))
      const made: TakenBack[] = []
      let so = person
      for (const [index, jar] of meant.entries()) {
        const others = so.jars.filter(({ id }) => id !== jar.id)
        const each = takeBack({ jar, after: lastOf(index), others }, input, context)
        so = withJar(so, each.jar)
        if (each.held === null) expectStillSpent(each.jar, so.jars)
        made.push(each)
      }
      if (made.every(({ held }) => held === null)) return { person: so, made }
      // All or none: half of what was said at once would be hard to make out.
      return {
        person: null,
        made: made.map((each, index) => ({ ...each, jar: meant[index]!, undone: null, renamed: null })),
      }
    })
    const [only] = all.length === 1 ? all : []
    const view = only === undefined ? null : viewOf(only.jar, context)
    const renamed = all.flatMap((each) => (each.renamed === null ? [] : [each.renamed]))
    const isGone = view === null && only?.undone?.kind === 'started'
    const shares = isGone ? sharesOf(only.jar, await context.store.read(context.userId)) : []
    const stories = all.flatMap(({ jar }) => viewOf(jar, context)?.story ?? [])
    return {
      headline: headlineOf(all, context),
      under: view === null || !all.every(({ held }) => held === null) ? [] : nextSaid(view, context),
      table: view === null ? [] : inMore(nowRows(view)),
      sure: [],
      notes: [
        ...(renamed.length === 0
          ? []
          : [{ group: 'notes', key: 'import_renamed', values: { names: renamed } } as const]),
        ...(shares.length === 0
          ? []
          : [{ group: 'notes', key: 'jar_share_stands', values: { ids: shares.map((share) => share.id) } } as const]),
      ],
      cautions: dangerCautions(stories),
      actions: [
        ...(view === null ? [] : dangerActions(view, context)),
        ...againActions(only, view, context),
        ...shares.map((share) => withdrawAction({ ...share, name: only!.name, free: null }, context.place)),
      ],
      data: only === undefined ? { jars: all.map(({ jar }) => dataOf(jar, context)) } : dataOf(only.jar, context),
      kitchen: kitchenOfJars(input, stories),
    }
  },
})
