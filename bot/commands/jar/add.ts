import { z } from 'zod'
import { contentsOf } from '../../../core/jar/contents.ts'
import type { Ingredients } from '../../../core/jar/event.ts'
import type { Story } from '../../../core/jar/story.ts'
import { SAFE_ABV_PERCENT } from '../../../core/recipe/steep.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { defineCommand } from '../../chat/command.ts'
import { writeLine } from '../../chat/write-line.ts'
import type { Message } from '../../text/words.ts'
import { blamed, fields } from '../fields.ts'
import { caution, outcomeCautions } from '../outcome-reply.ts'
import { planFields } from '../plan-fields.ts'
import { checkUnknown } from '../plan-unknown.ts'
import { spiritPortions, sugarOf } from '../portions.ts'
import { expectUnderCeilings, plantsAdded } from './add-plants.ts'
import { waterG } from './amounts.ts'
import { expectJar, recordStep } from './change-jar.ts'
import { plantCautions } from './jar-cautions.ts'
import { jarFields } from './jar-fields.ts'
import { addActions } from './plants-due.ts'
import { nowRows, recordedHeadline, stepReply } from './step-reply.ts'

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
  if (of === undefined) return liquids
  const added = { ...liquids, plants: plantsAdded(of.is, story, liquids) }
  blamed('of', () => expectUnderCeilings(story, added))
  return added
}

/** What the plants can do, and what the jar has become with them. */
function cautionsOf(story: Story, { of }: z.output<typeof input>): readonly Message<'cautions'>[] {
  const { outcome, strength } = contentsOf(story)
  const names = of?.is.unknown.map(({ name }) => name) ?? []
  const isWeak = story.strained === null && strength === 'estimated' && outcome.abvPercent.value < SAFE_ABV_PERCENT
  return [
    ...(names.length === 0 ? [] : [{ group: 'cautions', key: 'plan_unknown', values: { names } } as const]),
    ...plantCautions(of?.is.plants.map(({ botanical }) => botanical.id) ?? []),
    ...(isWeak ? [caution('plan_weak_jar')] : []),
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
    })
    return stepReply(context, input, recorded, {
      headline: recordedHeadline(recorded, context),
      rows: nowRows,
      actionsHeld: addActions(recorded, context),
    })
  },
})
