import type { Ingredients } from '../../../../core/jar/entry/entry.ts'
import { plantsInside } from '../../../../core/jar/pour/lifted-out.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { movedByLatePlants, plantsOverdone } from '../../../../core/jar/state/late-plants.ts'
import { plantKey } from '../../../../core/jar/state/later-plants.ts'
import { plantsAdded } from '../../../../core/jar/state/plants-added.ts'
import { call, typedCall } from '../../../calls/call.ts'
import { type InputOf, signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../../chat/command.ts'
import type { Action } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { spiritPortions, sweeteningsOf, waterG } from '../../options/input-to-portion.ts'
import { foodCautions } from '../../plan/plan-unknown.ts'
import { outcomeCautions } from '../../reply/outcome-reply.ts'
import { addActions, typedAs } from '../known/add-line.ts'
import { honeyCautions, plantCautions } from '../known/jar-cautions.ts'
import { jarRef } from '../known/jar-ref.ts'
import { todayOf } from '../known/view-of.ts'
import { expectPoured } from '../step/already.ts'
import { expectJar, type Recorded, recordStep } from '../step/record-step.ts'
import { becameSaid, nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'
import { expectWithinLimits } from '../step/within-jar-limits.ts'

type Adding = InputOf<'jar add'>

function addedTo(story: JarState, { of, spirit, strength, water, sugar }: Adding): Ingredients {
  const liquids: Ingredients = {
    plants: [],
    spirits: spirit === undefined ? [] : spiritPortions(spirit.is, strength),
    waterG: waterG(water),
    sweetenings: sweeteningsOf(sugar, water),
  }
  return of === undefined ? liquids : { ...liquids, plants: plantsAdded(of.is, story, liquids) }
}

/** What the plants can do, and what the jar has become with them. */
function cautionsOf(story: JarState, { of }: Adding): readonly Message<'cautions'>[] {
  const { outcome } = contentsOf(story)
  const names = of?.is.unknown.map(({ name }) => name) ?? []
  return [
    ...honeyCautions(story),
    ...foodCautions(names),
    ...plantCautions(of?.is.plants.map(({ botanical }) => botanical.id) ?? []),
    ...outcomeCautions(outcome, 'dissolved', [], { freezerC: null }).filter(({ key }) => key === 'flame'),
  ]
}

/** A layer is fruit, and what tops a jar up is spirit or water. */
function expectWhole({ jar, of, spirit, water, as }: Adding): void {
  if (as?.is === 'layer' && of === undefined) {
    const example = lineOf(typedCall('jar add', { jar: jar.is, of: '500 g cherries', as: 'layer' }))
    throw new ChatError('missing_option', 'layer_needs_fruit', { example }, { option: 'of' })
  }
  if (as?.is === 'top_up' && (of !== undefined || (spirit === undefined && water === undefined))) {
    const example = lineOf(typedCall('jar add', { jar: jar.is, spirit: '200 ml 40%', as: 'top-up' }))
    throw new ChatError('bad_value', 'top_up_needs_liquid', { example }, { option: of === undefined ? 'spirit' : 'of' })
  }
}

/** From a layer on the days are counted anew. */
function layerDays(story: JarState, context: Context): readonly Message<'headlines'>[] {
  const { days } = movedByLatePlants(story).started
  return [{ group: 'headlines', key: 'layer_days', values: { days, today: todayOf(context) } }]
}

/** What of the first layers would be in too long. */
function overdoneNotes(story: JarState): readonly Message<'notes'>[] {
  const plants = plantsOverdone(story).map(({ id, name }) => ({ id, name }))
  return plants.length === 0 ? [] : [{ group: 'notes', key: 'layer_overdone', values: { plants } }]
}

function takeOutActions(recorded: Recorded, context: Context): readonly Action[] {
  const inside = plantsInside(recorded.story).map(plantKey)
  // What is still to come cannot be lifted out yet.
  const plants = plantsOverdone(recorded.story).filter((plant) => inside.includes(plantKey(plant)))
  if (plants.length === 0) return []
  const of = plants.map(typedAs).join(' + ')
  const label = { group: 'actions', key: 'jar_take_out', values: undefined } as const
  return [{ label, call: call('jar take-out', { jar: jarRef(recorded, context), of }) }]
}

export const jarAddCommand = defineCommand({
  ...signature('jar add'),
  topic: 'jars',
  async run(input, context) {
    const { of, spirit, water, sugar, as, enzyme } = input
    expectWhole(input)
    if ([of, spirit, water, sugar, enzyme].every((given) => given === undefined)) {
      await expectJar(context, input.jar)
      const example = lineOf(typedCall('jar add', { jar: input.jar.is, of: '1 stick cinnamon' }))
      const values = { command: 'jar add', option: 'of:, spirit:, water: or sugar', example }
      throw new ChatError('missing_option', 'missing_option', values, { option: 'of' })
    }
    const recorded = await recordStep(context, input, {
      happening: (story) => ({
        kind: 'added',
        ...addedTo(story, input),
        ...(as !== undefined && { as: as.is }),
        ...(enzyme !== undefined && { enzyme: enzyme.is }),
      }),
      cautions: (story) => cautionsOf(story, input),
      expect: (before, story) => {
        expectWithinLimits('jar add', { before, story, seq: Math.max(...story.happened.map(({ seq }) => seq)) }, input)
        expectPoured('jar add', before, story, input)
      },
    })
    const isLayer = as?.is === 'layer' && recorded.story.strained === null
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      under: [...becameSaid(recorded.story), ...(isLayer ? layerDays(recorded.story, context) : [])],
      isNextSaid: isLayer,
      rows: nowRows,
      notes: isLayer ? overdoneNotes(recorded.story) : [],
      actions: isLayer ? takeOutActions(recorded, context) : [],
      actionsHeld: addActions(recorded, context),
    })
  },
})
