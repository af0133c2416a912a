import { bestUntil } from '../../../../core/jar/state/best-until.ts'
import { type Contents, contentsOf } from '../../../../core/jar/state/contents.ts'
import { bottlesFilled, bottlesOfLeft, unbottledOf } from '../../../../core/jar/state/jar-bottles.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import type { UnitSystem } from '../../../../core/quantity/read/parse-units.ts'
import { householdVolume } from '../../../../core/quantity/write/household.ts'
import type { Bottles } from '../../../../core/recipe/plan/parse-bottles.ts'
import { kitchenRounded } from '../../../../core/recipe/tool-precision.ts'
import { call } from '../../../calls/call.ts'
import { asOptionProblem } from '../../../calls/option.ts'
import { signature } from '../../../calls/signatures.ts'
import { defineCommand } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import { unitsIn } from '../../../text/messages/kitchen.ts'
import type { Message } from '../../../text/words.ts'
import { fillNotes } from '../known/fill-notes.ts'
import { servedCautions } from '../known/jar-cautions.ts'
import { kitchenOfJar } from '../known/jar-kitchen.ts'
import { jarRef } from '../known/jar-ref.ts'
import { expectNothingTold } from '../known/told-trouble.ts'
import { expectKeeping } from '../step/already.ts'
import { recordStep } from '../step/record-step.ts'
import { lateDay, stepReply } from '../step/step-reply.ts'

/** What is not in bottles yet; null where that is nothing. */
function leftIn(contents: Contents) {
  const leftMl = unbottledOf(contents)
  return leftMl !== null && leftMl.value > 0 ? leftMl : null
}

/** How much is read of a volume, in a kitchen of those units. */
function readAs(volumeMl: number, units: UnitSystem): string {
  const rounded = kitchenRounded(volumeMl)
  return JSON.stringify(householdVolume(rounded, units) ?? rounded)
}

/** That there is more in bottles than there was; two figures that read the same are no slip. */
function moreNotes(contents: Contents, units: UnitSystem): readonly Message<'notes'>[] {
  const { bottledMl, outcome } = contents
  const leftMl = unbottledOf(contents)
  if (leftMl === null || leftMl.value > 0) return []
  if (readAs(bottledMl, units) === readAs(outcome.volumeMl.value, units)) return []
  return [{ group: 'notes', key: 'jar_bottled_more', values: { bottledMl, volumeMl: outcome.volumeMl } }]
}

function bestNotes(story: JarState): readonly Message<'notes'>[] {
  const until = bestUntil(story)
  return until === null ? [] : [{ group: 'notes', key: 'jar_best_until', values: { until } }]
}

/** Of a jar that cannot be bottled its stage is said first, whatever they hold. */
function filledIn(story: JarState, bottles: readonly Bottles[]) {
  if (story.strained === null || story.ended !== null) return bottlesFilled(bottles, 0)
  return asOptionProblem('bottles', () => bottlesOfLeft(bottles, story))
}

export const jarBottleCommand = defineCommand({
  ...signature('jar bottle'),
  topic: 'jars',
  async run(input, context) {
    const recorded = await recordStep(context, input, {
      happening: (story) => ({
        kind: 'bottled',
        bottles: filledIn(story, input.bottles.is),
      }),
      cautions: servedCautions,
      expect: (before, story) => {
        expectNothingTold(before)
        expectKeeping('jar bottle', 'bottle_ferments', story, input, context.settings)
      },
    })
    const { entry } = recorded
    const { name } = recorded.story
    return stepReply(context, input, recorded, {
      headline: {
        group: 'headlines',
        key: 'jar_recorded',
        values: { name, happening: entry, day: lateDay(entry, context), leftMl: leftIn(contentsOf(recorded.story)) },
      },
      notes: [
        ...moreNotes(contentsOf(recorded.story), unitsIn(kitchenOfJar(input, recorded.story)).volume),
        ...inMore([...bestNotes(recorded.story), ...fillNotes(recorded.story)]),
      ],
      actions: [
        {
          label: { group: 'actions', key: 'jar_labels', values: undefined },
          call: call('jar label', { jar: jarRef(recorded, context) }),
        },
      ],
    })
  },
})
