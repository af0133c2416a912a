import { isHolding } from '../../../core/jar/limits/judge-jar.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { readInfusion } from '../../../core/jar/state/read-infusion.ts'
import { expectStrongEnough, type StrainedJar, strainedJar } from '../../../core/jar/state/strained-jar.ts'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { volumeMl } from '../../../core/quantity/measured/precision.ts'
import type { Strength } from '../../../core/quantity/quantities.ts'
import { liquidOf } from '../../../core/recipe/portion.ts'
import { valuesOf } from '../../../core/recipe/propagate.ts'
import { styles } from '../../../core/recipe/solve/styles.ts'
import { type Syrup, syrup } from '../../../core/recipe/solve/syrup.ts'
import { type SyrupTargets, wishOf } from '../../../core/recipe/solve/syrup-wish.ts'
import type { Targets } from '../../../core/recipe/targets.ts'
import { call } from '../../calls/call.ts'
import type { Given } from '../../calls/option.ts'
import { type InputOf, signature } from '../../calls/signatures.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { type Context, defineCommand } from '../../chat/command.ts'
import type { Action, Reply } from '../../chat/reply.ts'
import { kitchenIn } from '../../text/messages/kitchen.ts'
import { dangerActions, dangerCautions, expectDrinkableJar } from '../jar/known/jar-dangers.ts'
import { kitchenAmong, kitchenOfJar } from '../jar/known/jar-kitchen.ts'
import { afterNow, jarRef } from '../jar/known/jar-ref.ts'
import { syrupValues } from '../jar/known/sweeten-options.ts'
import { amountOf, portionOf, spiritPortions, strengthRead } from '../options/input-to-portion.ts'
import { isSaidAsTyped, kitchenOf } from '../options/input-units.ts'
import { missing } from '../options/missing-option.ts'
import { withLowAcid } from '../reply/low-acid-cautions.ts'
import { freezerOf } from '../reply/outcome-reply.ts'
import { syrupReply } from '../reply/syrup-reply.ts'
import { expectedReply } from './expected-syrup.ts'
import { stylesReply } from './styles-reply.ts'

type Input = InputOf<'syrup'>

/** The infusion as measured, or as what went into the jar tells it; `known` is null where only its strength is said. */
function infusionOf({ infusion, strength, of, spirit }: Input) {
  if (infusion === undefined) throw missing('syrup', 'infusion')
  if (of === undefined && spirit === undefined && strength !== undefined) {
    return { infusion: portionOf(infusion.is, strength.is, null, 'hydrometer'), known: null }
  }
  if (of === undefined || spirit === undefined) {
    throw missing('syrup', of !== undefined ? 'spirit' : spirit !== undefined ? 'of' : 'strength')
  }
  const read = strength === undefined ? null : strengthRead(strength.is)
  const known = readInfusion(of.is, spiritPortions(spirit.is, undefined), amountOf(infusion.is), read)
  return { infusion: known.infusion, known }
}

/** What a jar of the person's holds; nothing else may be said of the infusion then. */
async function fromJar(input: Input, jar: Given<string>, { store, userId }: Context): Promise<StrainedJar> {
  const other = (['infusion', 'strength', 'of', 'spirit'] as const).find((option) => input[option] !== undefined)
  if (other !== undefined)
    throw new ChatError('too_many_options', 'jar_or_infusion', { option: other }, { option: other })
  const { jars } = await store.read(userId)
  return strainedJar(findJar(jar.is, jars))
}

export const syrupCommand = defineCommand({
  ...signature('syrup'),
  topic: 'sums',
  isOfLineAlone: true,
  async run(input, context) {
    const expected = input.jar === undefined ? null : await expectedReply(input, input.jar, context)
    if (expected !== null) return expected
    const held = input.jar === undefined ? null : await fromJar(input, input.jar, context)
    const { infusion, known } = held === null ? infusionOf(input) : { infusion: held.infusion, known: null }
    const atMostMl = input['at-most'] ? volumeMl(input['at-most'].is).value : null
    const named = namedIn(input, held?.targets ?? null)
    if (held !== null) {
      expectDrinkableJar(held.story, isHolding)
      expectStrongEnough(held, named)
    }
    const filler = input.water?.is ?? held?.filler ?? null
    const sweetener = input.sugar?.is ?? held?.sweetener ?? USUAL_MATERIAL
    const wish = wishOf(liquidOf(valuesOf(infusion)), named, sweetener, filler)
    const again = (read: Strength) => call('syrup', { ...input, strength: read })
    const kitchen = held === null ? (context.kitchen ?? 'metric') : kitchenAmong(held.story, context.settings)
    const typed = {
      ...input,
      held,
      known,
      again,
      kitchen,
      isAsTyped: isSaidAsTyped(kitchenOf(input), context.settings),
    }
    if (wish === null) {
      const three = styles(infusion, named, atMostMl, { sweetener, filler })
      const reply = withLowAcid(
        stylesReply(typed, infusion, three, freezerOf(context)),
        held?.story ?? input.of?.is,
        three.map(({ syrup: { outcome } }) => outcome),
      )
      return held === null ? reply : ofJar(reply, input, held, context)
    }
    const made = syrup(infusion, wish, atMostMl, { sweetener, filler })
    const alone = syrupReply(typed, infusion, made, freezerOf(context))
    const reply = withLowAcid(alone, held?.story ?? input.of?.is, [made.outcome])
    if (held === null) return reply
    return ofJar(
      { ...reply, actions: [...reply.actions, ...syrupInActions(input, held, made, context)] },
      input,
      held,
      context,
    )
  },
})

/** What says that this very syrup is in; nothing where only a part gets it, or where there are bottles already. */
function syrupInActions(input: Input, held: StrainedJar, made: Syrup, context: Context): readonly Action[] {
  const values = syrupValues(made, kitchenIn(context.settings.units, kitchenOfJar(input, held.story)))
  if (Object.keys(values).length === 0 || made.leftMl > 0 || held.story.bottled !== null) return []
  const { entries } = held.jar
  const recorded = call('jar sweeten', { jar: jarRef(held, context), ...values, ...afterNow(entries, context.place) })
  return [{ label: { group: 'actions', key: 'jar_syrup_in', values: undefined }, call: recorded }]
}

/** In the units of the jar; what may be wrong with it comes before what is to be put into it. */
const ofJar = (reply: Reply, input: Input, held: StrainedJar, context: Context): Reply => ({
  ...reply,
  kitchen: kitchenOfJar(input, held.story),
  cautions: [...dangerCautions([held.story]), ...reply.cautions],
  actions: [...dangerActions(held, context), ...reply.actions],
})

/** The wishes named; of a jar, those that are left open as they were planned, where a ratio does not settle them. */
function namedIn(input: Input, planned: Targets | null): SyrupTargets {
  const named = {
    abvPercent: input['to-strength']?.is.abvPercent,
    sugarGPerL: input['to-sweetness']?.is.sugarGPerL,
    sugarPerWater: input.ratio?.is.sugarGPerWaterG,
  }
  if (planned === null) return named
  const { abvPercent = planned.abvPercent, sugarGPerL = planned.sugarGPerL, sugarPerWater } = named
  if (sugarPerWater === undefined) return { abvPercent, sugarGPerL }
  return named.sugarGPerL === undefined ? { abvPercent, sugarPerWater } : named
}
