import { expectPlantsHere } from '../../../../core/jar/pour/second-steep.ts'
import { findJar } from '../../../../core/jar/state/find-jar.ts'
import { fruitGives } from '../../../../core/jar/state/fruit-gives.ts'
import type { JarState } from '../../../../core/jar/state/jar-state.ts'
import { plannedSyrup } from '../../../../core/jar/state/planned-syrup.ts'
import { sugarGrams } from '../../../../core/quantity/write/made-amounts.ts'
import { isSyrup } from '../../../../core/recipe/solve/syrup.ts'
import { worthAdding } from '../../../../core/recipe/solve/worth-adding.ts'
import { call } from '../../../calls/call.ts'
import type { InputOf } from '../../../calls/signatures.ts'
import { lineOf } from '../../../calls/write-line.ts'
import { ChatError } from '../../../chat/chat-error.ts'
import type { Context } from '../../../chat/command.ts'
import { inMore } from '../../../chat/depth.ts'
import type { Action, Reply } from '../../../chat/reply.ts'
import type { Message } from '../../../text/words.ts'
import { amountOf, sweeteningsOf, waterG } from '../../options/input-to-portion.ts'
import { measuredData } from '../../reply/outcome-reply.ts'
import { sweetenedCautions } from '../known/jar-cautions.ts'
import { fromFruitCall } from '../known/task-call.ts'
import { recordStep, type Step } from '../step/record-step.ts'
import { becameHeadline, nowRows, recordedHeadline, stepReply } from '../step/step-reply.ts'
import { sweetenActions } from '../step/sweeten-actions.ts'

type Sweetening = InputOf<'jar sweeten'>

/** A jar whose plants are still its own. */
const withItsPlants: typeof findJar = (typed, jars) => {
  const jar = findJar(typed, jars)
  expectPlantsHere(jar, jars)
  return jar
}

/** What happens to the strained plants of a jar. */
const recordOfFruit = (context: Context, input: Sweetening, step: Step) =>
  recordStep(context, input, step, withItsPlants)

/** So weak a juice may ferment under its sugar. */
const weakCautions = (story: JarState): readonly Message<'cautions'>[] => {
  const gives = fruitGives(story)
  if (gives === null || gives.keeping === 'keeps') return []
  return [{ group: 'cautions', key: 'fruit_may_ferment', values: { abvPercent: gives.abvPercent } }]
}

/** Dry sugar goes on the strained fruit: what to do with it, and what it will give. */
export async function sugarFruit(input: Sweetening, context: Context): Promise<Reply> {
  const recorded = await recordOfFruit(context, input, {
    happening: () => ({ kind: 'fruit_sugared', sweetenings: sweeteningsOf(input.sugar) }),
    cautions: weakCautions,
  })
  const gives = fruitGives(recorded.story)
  const back = fromFruitCall(recorded, context.place)
  const reply = stepReply(context, input, recorded, {
    headline: recordedHeadline(recorded, context),
    under: gives === null ? [] : [{ group: 'headlines', key: 'fruit_gives', values: gives }],
    isNextSaid: true,
    rows: nowRows,
    notes: inMore<Message<'notes'>>([
      { group: 'notes', key: 'fruit_estimated', values: { name: recorded.story.name } },
    ]),
    actions: [{ label: { group: 'actions', key: 'jar_from_fruit', values: undefined }, call: back }],
  })
  return { ...reply, data: { ...reply.data, fruit: gives === null ? null : fruitData(gives) } }
}

const fruitData = ({ volumeMl, abvPercent, sugarGPerL, keeping }: NonNullable<ReturnType<typeof fruitGives>>) => ({
  ...measuredData({ volumeMl, abvPercent, sugarGPerL }),
  keeping,
})

/** The syrup that is still wanted once the fruit has given what it had. */
function stillWanted(story: JarState): readonly Message<'headlines'>[] {
  const syrup = plannedSyrup(story)?.syrup
  const added = syrup === undefined ? null : worthAdding(syrup)
  if (syrup === undefined || added === null || (added.sugarG === 0 && added.waterMl === 0)) return []
  const values = { ...added, sweetener: syrup.sweetener, filler: syrup.filler, isSyrup: isSyrup(syrup) }
  return [{ group: 'headlines', key: 'jar_stir_in', values }]
}

/** Throws where something was said that would not be done: sugar on the fruit too, or what sweetens without how much. */
function expectDone({ jar, sugar, 'on-fruit': on, 'from-fruit': from }: Sweetening): void {
  const command = 'jar sweeten'
  if (on?.is === true) {
    const values = { command, options: ['on-fruit', 'from-fruit'] }
    throw new ChatError('too_many_options', 'one_at_a_time', values, { command, option: 'on-fruit' })
  }
  const sweetener = sugar?.is.sweetener ?? null
  if (sweetener === null) return
  const some = { amounts: [sugarGrams(100, sweetener)], sweetener: null }
  const example = lineOf(call(command, { jar: jar.is, 'from-fruit': from, sugar: some }))
  // Without an option the line stays: one that is made up for it would not name what was named.
  throw new ChatError('missing_option', 'missing_option', { command, option: 'sugar', example })
}

/** What the fruit gave goes back into the jar. */
export async function pourBack(input: Sweetening, context: Context): Promise<Reply> {
  const { water, sugar } = input
  expectDone(input)
  const drawn = input['from-fruit']?.is ?? null
  const ofFruit = { measured: drawn === null ? null : amountOf(drawn) }
  const recorded = await recordOfFruit(context, input, {
    happening: () => ({
      kind: 'sweetened',
      waterG: waterG(water),
      sweetenings: sweeteningsOf(sugar, water),
      ofFruit,
    }),
    cautions: sweetenedCautions,
  })
  const { story } = recorded
  const wanted: readonly Message<'headlines'>[] = recorded.isAlready ? [] : stillWanted(story)
  const actions: readonly Action[] = wanted.length === 0 ? [] : sweetenActions(recorded, context)
  return stepReply(context, input, recorded, {
    headline: becameHeadline(recorded, context),
    under: wanted,
    isNextSaid: wanted.length > 0,
    rows: nowRows,
    notes:
      drawn === null
        ? inMore<Message<'notes'>>([{ group: 'notes', key: 'fruit_estimated', values: { name: story.name } }])
        : [],
    actions,
  })
}
