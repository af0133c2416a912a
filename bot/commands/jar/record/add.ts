import { z } from 'zod'
import type { Ingredients } from '../../../../core/jar/entry/entry.ts'
import { contentsOf } from '../../../../core/jar/state/contents.ts'
import type { Story } from '../../../../core/jar/state/jar-state.ts'
import { plantsAdded } from '../../../../core/jar/state/plants-added.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import { defineCommand } from '../../../chat/command.ts'
import { writeLine } from '../../../chat/grammar/write-line.ts'
import type { Message } from '../../../text/words.ts'
import { outcomeCautions } from '../../calculate/outcome-reply.ts'
import { fields } from '../../options/fields.ts'
import { spiritPortions, sugarOf, waterG } from '../../options/input-to-portion.ts'
import { planFields } from '../../plan/plan-fields.ts'
import { checkUnknown, foodCautions } from '../../plan/plan-unknown.ts'
import { addActions } from '../known/add-line.ts'
import { jarFields } from '../known/jar-fields.ts'
import { expectPoured } from './already.ts'
import { plantCautions } from './jar-cautions.ts'
import { expectJar, recordStep } from './record-step.ts'
import { nowRows, recordedHeadline, stepReply } from './step-reply.ts'
import { expectWithinLimits } from './within-jar-limits.ts'

const input = z
  .object({
    jar: jarFields.jar,
    of: planFields.anyPlants.optional(),
    spirit: fields.spirits.optional(),
    strength: fields.strength.optional(),
    water: fields.amount.optional(),
    sugar: fields.sugar.optional(),
    'unknown-ok': planFields.yesNo.optional(),
    when: jarFields.when.optional(),
    after: jarFields.entry.optional(),
    already: planFields.yesNo.optional(),
  })
  .superRefine(({ of, ...others }, context) => {
    if (of !== undefined) checkUnknown({ of, 'unknown-ok': others['unknown-ok'] }, context)
  })

function addedTo(story: Story, { of, spirit, strength, water, sugar }: z.output<typeof input>): Ingredients {
  const liquids: Ingredients = {
    plants: [],
    spirits: spirit === undefined ? [] : spiritPortions(spirit.is, strength),
    waterG: waterG(water),
    sugarG: sugarOf(sugar),
  }
  return of === undefined ? liquids : { ...liquids, plants: plantsAdded(of.is, story, liquids) }
}

/** What the plants can do, and what the jar has become with them. */
function cautionsOf(story: Story, { of }: z.output<typeof input>): readonly Message<'cautions'>[] {
  const { outcome } = contentsOf(story)
  const names = of?.is.unknown.map(({ name }) => name) ?? []
  return [
    ...foodCautions(names),
    ...plantCautions(of?.is.plants.map(({ botanical }) => botanical.id) ?? []),
    ...outcomeCautions(outcome, 'dissolved', []).filter(({ key }) => key === 'flame'),
  ]
}

export const jarAddCommand = defineCommand({
  path: 'jar add',
  input,
  async run(input, context) {
    const { of, spirit, water, sugar } = input
    if ([of, spirit, water, sugar].every((given) => given === undefined)) {
      await expectJar(context, input.jar)
      const example = writeLine('jar add', input.jar.is, [['of', '1 stick cinnamon']])
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
      rows: nowRows,
      actionsHeld: addActions(recorded, context),
    })
  },
})
