import type { Botanical } from '../../../core/botanical/botanical.ts'
import { findFood } from '../../../core/botanical/foods/find-food.ts'
import { isLowAcid, isTooWeakForLowAcid } from '../../../core/botanical/limits/low-acid.ts'
import { lowAcidPlantsIn } from '../../../core/jar/limits/weak-low-acid.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import type { Plan } from '../../../core/recipe/plan/plan.ts'
import type { Outcome } from '../../../core/recipe/solve/outcome.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply } from '../../chat/reply.ts'
import type { PlantTold } from '../../text/messages/jar-danger.ts'
import type { Message } from '../../text/words.ts'

/** That vegetables in something so weak can carry botulism, and how that is known; `abvPercent` is the weakest it ever is. */
const cautionsOf = (plants: readonly PlantTold[], abvPercent: number): readonly Message<'cautions'>[] =>
  plants.length === 0 || !isTooWeakForLowAcid(abvPercent)
    ? []
    : [
        { group: 'cautions', key: 'low_acid_weak', values: { plants, abvPercent } },
        { group: 'cautions', key: 'low_acid_source', values: undefined },
      ]

const named = (botanicals: readonly Botanical[]): readonly PlantTold[] =>
  botanicals.filter(isLowAcid).map(({ id, names }) => ({ id, name: names.title }))

/** Of a plan: the jar and what comes of it, whichever is weaker. */
export function lowAcidCautions({ plants, unknown, steep, targets }: Plan): readonly Message<'cautions'>[] {
  const foods = unknown.flatMap(({ name }): readonly PlantTold[] => {
    const food = findFood(name)?.food
    return food !== undefined && isLowAcid({ ...food, id: null }) ? [{ id: null, name }] : []
  })
  const known = named(plants.map(({ botanical }) => botanical))
  return cautionsOf([...known, ...foods], Math.min(steep.jarAbvPercent.value, targets.abvPercent))
}

/** Of what is worked out of a jar, or of an infusion of such plants: of the weakest that it makes. */
export function lowAcidOf(
  of: JarState | readonly { readonly botanical: Botanical }[],
  made: readonly Pick<Outcome, 'abvPercent'>[],
): readonly Message<'cautions'>[] {
  const plants = 'happened' in of ? lowAcidPlantsIn(of) : named(of.map(({ botanical }) => botanical))
  return cautionsOf(plants, Math.min(...made.map(({ abvPercent }) => abvPercent.value)))
}

/** The same before all else that such a reply warns of. */
export function withLowAcid(
  reply: Reply,
  of: Parameters<typeof lowAcidOf>[0] | undefined,
  made: Parameters<typeof lowAcidOf>[1],
): Reply {
  const said = of === undefined ? [] : lowAcidOf(of, made)
  return { ...reply, cautions: [...said.slice(0, 1), ...reply.cautions, ...inMore(said.slice(1))] }
}
