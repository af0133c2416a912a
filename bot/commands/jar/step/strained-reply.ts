import { isHeldBack } from '../../../../core/jar/limits/judge-jar.ts'
import { clearingOf } from '../../../../core/jar/state/clearing.ts'
import { correctedReading } from '../../../../core/jar/state/corrected-reading.ts'
import { hiddenStrength } from '../../../../core/jar/state/hidden-strength.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { type PlantToAdd, plantsLeftOut, plantsTakenAsAdded } from '../../../../core/jar/state/later-plants.ts'
import { plannedSyrup, wouldFerment } from '../../../../core/jar/state/planned-syrup.ts'
import { keepsFromPercent } from '../../../../core/liquid/keeping.ts'
import type { Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { isSyrup } from '../../../../core/recipe/solve/syrup.ts'
import type { Context } from '../../../chat/command.ts'
import { type Deep, inMore } from '../../../chat/depth.ts'
import type { Reply } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { freezerOf, note, sureOf } from '../../reply/outcome-reply.ts'
import { sweetenerNotes } from '../../reply/sweetener-notes.ts'
import { readingNotes, syrupCautions, syrupData, syrupRows, syrupSaid } from '../../reply/syrup-reply.ts'
import type { Input, Recorded } from './record-step.ts'
import { nowRows, stepReply } from './step-reply.ts'
import { sweetenActions } from './sweeten-actions.ts'

/** None goes into what has to be put right first. */
const syrupWanted = (story: JarState) => (isHeldBack(story) ? null : plannedSyrup(story))

/** What has to be said of the syrup that the jar is to have. */
export const strainedCautions = (story: JarState) => {
  const found = syrupWanted(story)
  return found === null ? [] : syrupCautions(found.syrup, found.infusion, null)
}

/** Why there is no syrup for what was planned, where there is none. */
function targetNotes(story: JarState, hasSyrup: boolean): readonly Message<'notes'>[] {
  if (hasSyrup || isHeldBack(story)) return []
  const { targets } = story.started
  if (targets !== null && wouldFerment(targets)) {
    const values = { ...targets, keepsFromPercent: keepsFromPercent(targets.sugarGPerL) }
    return [{ group: 'notes', key: 'jar_targets_ferment', values }]
  }
  return targets === null
    ? [note('jar_no_targets')]
    : [{ group: 'notes', key: 'jar_targets_unreached', values: targets }]
}

/** What puts a reading in its place later. */
function unmeasuredNotes({ name, strained }: JarState): readonly Message<'notes'>[] {
  if (strained?.measured !== null) return []
  return [
    {
      group: 'notes',
      key: 'jar_not_measured',
      values: { name, entry: strained.seq, isStrengthRead: strained.strength !== null },
    },
  ]
}

/** Later plants that count as in without a word, and those that came too late. */
function laterNotes(story: JarState): readonly Message<'notes'>[] {
  const said = (
    key: 'jar_later_counted' | 'jar_later_left_out',
    of: readonly PlantToAdd[],
  ): readonly Message<'notes'>[] =>
    of.length === 0
      ? []
      : [
          {
            group: 'notes',
            key,
            values: { name: story.name, plants: of.map(({ id, name, addOn }) => ({ id, name, addOn })) },
          },
        ]
  return [...said('jar_later_counted', plantsTakenAsAdded(story)), ...said('jar_later_left_out', plantsLeftOut(story))]
}

/** How much the syrup has to weigh when it has been boiled. */
function boilNotes(syrup: Syrup | null): readonly Message<'notes'>[] {
  const syrupG = syrup !== null && isSyrup(syrup) ? syrup.syrupG : null
  return syrupG === null ? [] : [{ group: 'notes', key: 'syrup_by_weight', values: { syrupG } }]
}

/** How it becomes clear. */
export function clearingNotes(story: JarState): readonly (Message<'notes'> & Deep)[] {
  const way = clearingOf(story)
  // Whoever has filtered it needs no word of how.
  if (way === null || (way === 'filter_before_syrup' && story.filtered !== null)) return []
  return inMore([{ group: 'notes', key: 'jar_clearing', values: { way } }])
}

/** What is in a strained jar, and the syrup that makes of it what was planned. */
export function strainedReply(
  context: Context,
  input: Input,
  recorded: Recorded,
  headlineOf: (syrup: ReturnType<typeof syrupSaid> | null) => Reply['headline'],
): Reply {
  const { story } = recorded
  const freezerC = freezerOf(context)
  const found = syrupWanted(story)
  const reply = stepReply(context, input, recorded, {
    headline: headlineOf(found === null ? null : syrupSaid(found.syrup, freezerC)),
    rows: (view) => [...nowRows(view), ...(found === null ? [] : syrupRows(found.syrup, freezerC))],
    notes: [
      ...unmeasuredNotes(story),
      ...laterNotes(story),
      ...readingNotes({ corrected: correctedReading(story), hidden: hiddenStrength(story) }),
      ...targetNotes(story, found !== null),
      ...boilNotes(found?.syrup ?? null),
      ...clearingNotes(story),
      ...(found === null ? [] : sweetenerNotes([found.syrup.sweetener], found.syrup.sweetener)),
    ],
    actions: isHeldBack(story) ? [] : sweetenActions(recorded, context),
  })
  return {
    ...reply,
    sure: found === null ? [] : sureOf(found.syrup.outcome, found.infusion.by === 'volume'),
    data: { ...reply.data, syrup: found === null ? null : syrupData(found.syrup) },
  }
}
