import type { Ingredients } from '../../../../core/jar/entry/entry.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { plantsAdded } from '../../../../core/jar/state/plants-added.ts'
import { typedCall } from '../../../calls/call.ts'
import { type InputOf, signature } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { defineCommand } from '../../../chat/command.ts'
import type { Message } from '../../../text/words.ts'
import { spiritPortions, sweeteningsOf, waterG } from '../../options/input-to-portion.ts'
import { foodCautions } from '../../plan/plan-unknown.ts'
import { outcomeCautions } from '../../reply/outcome-reply.ts'
import { addActions } from '../known/add-line.ts'
import { plantCautions } from '../known/jar-cautions.ts'
import { expectPoured } from '../step/already.ts'
import { expectJar, recordStep } from '../step/record-step.ts'
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
    ...foodCautions(names),
    ...plantCautions(of?.is.plants.map(({ botanical }) => botanical.id) ?? []),
    ...outcomeCautions(outcome, 'dissolved', [], { freezerC: null }).filter(({ key }) => key === 'flame'),
  ]
}

export const jarAddCommand = defineCommand({
  ...signature('jar add'),
  async run(input, context) {
    const { of, spirit, water, sugar } = input
    if ([of, spirit, water, sugar].every((given) => given === undefined)) {
      await expectJar(context, input.jar)
      const example = lineOf(typedCall('jar add', { jar: input.jar.is, of: '1 stick cinnamon' }))
      const values = { command: 'jar add', option: 'of:, spirit:, water: or sugar', example }
      throw new ChatError('missing_option', 'missing_option', values, { option: 'of' })
    }
    const recorded = await recordStep(context, input, {
      happening: (story) => ({ kind: 'added', ...addedTo(story, input) }),
      cautions: (story) => cautionsOf(story, input),
      expect: (before, story) => {
        expectWithinLimits('jar add', { before, story, seq: Math.max(...story.happened.map(({ seq }) => seq)) }, input)
        expectPoured('jar add', before, story, input)
      },
    })
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      under: becameSaid(recorded.story),
      rows: nowRows,
      actionsHeld: addActions(recorded, context),
    })
  },
})
