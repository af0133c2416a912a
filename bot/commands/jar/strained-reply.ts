import { contentsOf } from '../../../core/jar/contents.ts'
import type { Story } from '../../../core/jar/story.ts'
import { plantsTakenAsAdded } from '../../../core/jar/to-add.ts'
import { exactly } from '../../../core/quantity/measured.ts'
import { strengthAt20 } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import type { Syrup } from '../../../core/recipe/syrup.ts'
import type { Context } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { writeLine } from '../../chat/write-line.ts'
import type { Message } from '../../text/words.ts'
import { note, sureOf } from '../outcome-reply.ts'
import { syrupCautions, syrupData, syrupRows, syrupSaid } from '../syrup-reply.ts'
import type { Input, Recorded } from './change-jar.ts'
import { plannedSyrup, sweetenOptions } from './planned-syrup.ts'
import { jarRef, nowRows, stepReply, syrupAction } from './step-reply.ts'

/** What has to be said of the syrup that the jar is to have. */
export const strainedCautions = (story: Story) => {
  const found = plannedSyrup(story)
  return found === null ? [] : syrupCautions(found.syrup, found.infusion)
}

/** The sweetening with the amounts that were worked out, or a way to work some out. */
function nextActions(recorded: Recorded, syrup: Syrup | null, context: Context): readonly Action[] {
  if (syrup === null) return [syrupAction(recorded, context)]
  const options = sweetenOptions(syrup)
  if (options.length === 0) return []
  const line = writeLine('jar sweeten', jarRef(recorded, context), options)
  return [{ label: { group: 'actions', key: 'jar_sweeten', values: undefined }, line }]
}

/** Why there is no syrup for what was planned, where there is none. */
function targetNotes({ started }: Story, hasSyrup: boolean): readonly Message<'notes'>[] {
  if (hasSyrup) return []
  const { targets } = started.plan
  return targets === null
    ? [note('jar_no_targets')]
    : [{ group: 'notes', key: 'jar_targets_unreached', values: targets }]
}

/** Nearer than this to what was read, a strength needs no word, % vol. */
const SAME_PERCENT = 0.2

/** Why the strength is not the one that was read, where it was read over sugar; each step of it. */
function readingNotes(story: Story): readonly Message<'notes'>[] {
  const read = story.strained?.strength ?? null
  if (read === null) return []
  const { abvPercent, sugarGPerL } = contentsOf(story).outcome
  const at20Percent = strengthAt20(valuesOf(read))
  if (Math.abs(abvPercent.value - at20Percent) < SAME_PERCENT || sugarGPerL.value === 0) return []
  const values = {
    abvPercent,
    at20: read.abvAtC === null ? null : { ...exactly(at20Percent), plusMinus: read.abvPercent.plusMinus },
  }
  return [{ group: 'notes', key: 'jar_reading', values }]
}

/** Later plants that count as in without a word. */
function takenNotes(story: Story): readonly Message<'notes'>[] {
  const plants = plantsTakenAsAdded(story).map(({ id, name, addOn }) => ({ id, name, addOn }))
  return plants.length === 0
    ? []
    : [{ group: 'notes', key: 'jar_later_counted', values: { name: story.name, plants } } as Message<'notes'>]
}

/** How much the syrup has to weigh when it has been boiled. */
function boilNotes(syrup: Syrup | null): readonly Message<'notes'>[] {
  const syrupG = syrup === null ? null : syrupSaid(syrup).syrupG
  return syrupG === null ? [] : [{ group: 'notes', key: 'syrup_by_weight', values: { syrupG } }]
}

/** What is in a strained jar, and the syrup that makes of it what was planned. */
export function strainedReply(
  context: Context,
  input: Input,
  recorded: Recorded,
  headlineOf: (syrup: ReturnType<typeof syrupSaid> | null) => Reply['headline'],
): Reply {
  const { story } = recorded
  const found = plannedSyrup(story)
  const reply = stepReply(context, input, recorded, {
    headline: headlineOf(found === null ? null : syrupSaid(found.syrup)),
    rows: (view) => [...nowRows(view), ...(found === null ? [] : syrupRows(found.syrup))],
    notes: [
      ...(story.strained?.measured === null ? [note('jar_not_measured')] : []),
      ...takenNotes(story),
      ...readingNotes(story),
      ...targetNotes(story, found !== null),
      ...boilNotes(found?.syrup ?? null),
    ],
    actions: nextActions(recorded, found?.syrup ?? null, context),
  })
  return {
    ...reply,
    sure: found === null ? [] : sureOf(found.syrup.outcome, found.infusion.by === 'volume'),
    data: { ...reply.data, syrup: found === null ? null : syrupData(found.syrup) },
  }
}
