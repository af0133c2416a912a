import { isHeldBack } from '../../../../core/jar/limits/judge-jar.ts'
import { clearingOf } from '../../../../core/jar/state/clearing.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import { correctedReading } from '../../../../core/jar/state/corrected-reading.ts'
import { hiddenStrength } from '../../../../core/jar/state/hidden-strength.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { type PlantToAdd, plantsLeftOut, plantsTakenAsAdded } from '../../../../core/jar/state/later-plants.ts'
import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import { plannedFill } from '../../../../core/recipe/plan/planned-fill.ts'
import { isSyrup, type Syrup } from '../../../../core/recipe/solve/syrup.ts'
import { withoutTrace } from '../../../../core/recipe/solve/without-trace.ts'
import { worthAdding } from '../../../../core/recipe/solve/worth-adding.ts'
import { call } from '../../../calls/call.ts'
import type { Context } from '../../../chat/command.ts'
import { type Deep, inMore } from '../../../chat/depth.ts'
import type { Action, Reply } from '../../../chat/reply.ts'
import type { Kitchen } from '../../../text/messages/kitchen.ts'
import type { Message } from '../../../text/words.ts'
import { usualBottleIn } from '../../options/usual-bottles.ts'
import { freezerOf, sureOf } from '../../reply/outcome-reply.ts'
import { sweetenerNotes } from '../../reply/sweetener-notes.ts'
import { jarSyrupCautions, readingNotes, syrupData, syrupRows } from '../../reply/syrup-reply.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { bottleActions } from './bottle-actions.ts'
import { makeUpActions } from './make-up-actions.ts'
import type { Input, Recorded } from './record-step.ts'
import { nowRows, stepReply, syrupAction } from './step-reply.ts'
import { sweetenActions } from './sweeten-actions.ts'
import { targetNotes } from './target-notes.ts'
import { NEAR_PERCENT, trueActions } from './true-actions.ts'

/** None goes into what has to be put right first; what a kitchen cannot tell from nothing is left out. */
function syrupWanted(story: JarState) {
  const planned = isHeldBack(story) ? null : plannedSyrup(story)
  return planned === null ? null : { ...planned, whole: planned.syrup, syrup: withoutTrace(planned.syrup) }
}

/** What has to be said of the syrup that the jar is to have. */
export const strainedCautions = (story: JarState) => {
  const found = syrupWanted(story)
  return found === null ? [] : jarSyrupCautions(story, found.syrup, found.infusion)
}

/** Another strength than was read is the jar's: on the first screen where that is plain to see. */
function hiddenNotes(story: JarState): readonly (Message<'notes'> & Deep)[] {
  const hidden = hiddenStrength(story)
  const notes = readingNotes({ corrected: null, hidden })
  const isNear = hidden !== null && Math.abs(hidden.expected.value - hidden.read.value) < NEAR_PERCENT
  return isNear ? inMore(notes) : notes
}

/** That a reading was put right for what is dissolved: on the first screen where it is by so much that another strength is told. */
function correctedNotes(story: JarState): readonly (Message<'notes'> & Deep)[] {
  const corrected = correctedReading(story)
  if (corrected === null) return []
  const { abvPercent, at20, read } = corrected
  const notes = readingNotes({ corrected, hidden: null })
  return Math.abs(abvPercent.value - (at20 ?? read).value) < NEAR_PERCENT ? inMore(notes) : notes
}

/** What puts a reading in its place later. */
function unmeasuredNotes(story: JarState): readonly Message<'notes'>[] {
  const { name, strained } = story
  if (strained?.measured !== null) return []
  const { volumeMl } = contentsOf(story).outcome
  return [{ group: 'notes', key: 'jar_not_measured', values: { name, entry: strained.seq, volumeMl } }]
}

/** Later plants of one kind. */
const laterSaid = (
  key: 'jar_later_counted' | 'jar_later_left_out',
  { name }: JarState,
  of: readonly PlantToAdd[],
): readonly Message<'notes'>[] => {
  const plants = of.map(({ id, name, addOn }) => ({ id, name, addOn }))
  return of.length === 0 ? [] : [{ group: 'notes', key, values: { name, plants } }]
}

/** Later plants that count as in without a word. */
const countedNotes = (story: JarState) => laterSaid('jar_later_counted', story, plantsTakenAsAdded(story))

/** Those that came too late. */
const leftOutNotes = (story: JarState) => laterSaid('jar_later_left_out', story, plantsLeftOut(story))

/** How much the syrup has to weigh when it has been boiled. */
function boilNotes(syrup: Syrup | null): readonly Message<'notes'>[] {
  const syrupG = syrup !== null && isSyrup(syrup) && syrup.filler === null ? syrup.syrupG : null
  return syrupG === null ? [] : [{ group: 'notes', key: 'syrup_by_weight', values: { syrupG } }]
}

/** How it becomes clear. */
export function clearingNotes(story: JarState): readonly (Message<'notes'> & Deep)[] {
  const way = clearingOf(story)
  // Whoever has filtered it needs no word of how.
  if (way === null || (way === 'filter_before_syrup' && story.filtered !== null)) return []
  return inMore([{ group: 'notes', key: 'jar_clearing', values: { way } }])
}

/** The order to sweeten it, and what comes of it. */
function orderOf(story: JarState, syrup: Syrup, kitchen: Kitchen): readonly Message<'headlines'>[] {
  const [planned] = story.started.bottles
  const bottleMl = planned?.volumeMl ?? usualBottleIn(kitchen)
  const worth = worthAdding(syrup)
  // Traces that are not stirred in make nothing more of it.
  const isNothing = worth.sugarG === 0 && worth.waterMl === 0
  const { volumeMl, abvPercent, sugarGPerL } = isNothing ? contentsOf(story).outcome : syrup.outcome
  const stirred = { ...worth, sweetener: syrup.sweetener, filler: syrup.filler, isSyrup: isSyrup(syrup) }
  return [
    { group: 'headlines', key: 'jar_stir_in', values: stirred },
    {
      group: 'headlines',
      key: 'jar_makes',
      values: {
        volumeMl,
        abvPercent,
        sugarGPerL,
        bottleMl,
        short: plannedFill(volumeMl.value, story.started.bottles),
      },
    },
  ]
}

/** What is clear in the end may be filtered before its syrup. */
function filterActions(recorded: Recorded, context: Context): readonly Action[] {
  const { story } = recorded
  if (clearingOf(story) !== 'filter_before_syrup' || story.filtered !== null) return []
  const label = { group: 'actions', key: 'jar_filter_first', values: undefined } as const
  return inMore([{ label, call: call('jar filter', { jar: jarRef(recorded, context) }) }])
}

/** Other ways to finish it. */
function otherwiseActions(recorded: Recorded, context: Context, isCrowded: boolean): readonly Action[] {
  const otherwise: Action = {
    ...syrupAction(recorded, context),
    label: { group: 'actions', key: 'jar_otherwise', values: undefined },
  }
  return recorded.unusual.length === 0 && !isCrowded ? [otherwise] : inMore([otherwise])
}

/** What is in a strained jar, and the syrup that makes of it what was planned. */
export function strainedReply(context: Context, input: Input, recorded: Recorded, headline: Reply['headline']): Reply {
  const { story } = recorded
  const freezerC = freezerOf(context)
  const found = syrupWanted(story)
  const asked = targetNotes(story, found !== null)
  const told = trueActions(recorded, context)
  const sweeten = sweetenActions(recorded, context)
  const actions = [
    ...(sweeten.length > 0 ? sweeten : bottleActions(recorded, context)),
    ...(found === null ? [] : makeUpActions(recorded, found.whole, context)),
    ...told,
    ...(found === null ? [] : otherwiseActions(recorded, context, told.length > 0)),
    ...filterActions(recorded, context),
  ]
  const reply = stepReply(context, input, recorded, {
    headline,
    under: found === null ? [] : orderOf(story, found.whole, kitchenAmong(story, context.settings)),
    isNextSaid: found !== null || asked.length > 0,
    rows: (view) => [...nowRows(view), ...(found === null ? [] : syrupRows(found.syrup, freezerC))],
    notes: [
      ...asked,
      ...leftOutNotes(story),
      ...hiddenNotes(story),
      ...correctedNotes(story),
      ...inMore([
        ...unmeasuredNotes(story),
        ...countedNotes(story),
        ...boilNotes(found?.syrup ?? null),
        ...clearingNotes(story),
        ...(found === null
          ? []
          : sweetenerNotes(
              [found.syrup.sweetener, ...(found.syrup.filler === null ? [] : [found.syrup.filler])],
              found.syrup.sweetener,
            )),
      ]),
    ],
    actions: isHeldBack(story) ? [] : actions,
  })
  return {
    ...reply,
    sure: found === null ? [] : sureOf(found.syrup.outcome, found.infusion.by === 'volume'),
    data: { ...reply.data, syrup: found === null ? null : syrupData(found.whole) },
  }
}
