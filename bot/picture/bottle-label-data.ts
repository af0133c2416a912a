import type { PlantIn } from '../../core/jar/event.ts'
import { type Allergen, allergensOf } from '../../core/label/allergens.ts'
import { addDays, dayFromIso, type IsoDay, isoDay } from '../../core/quantity/calendar.ts'
import { exactly, type Measured } from '../../core/quantity/measured.ts'
import { KEEPS_DAYS } from '../../core/recipe/plan/schedule.ts'
import { ChatError } from '../chat/chat-error.ts'
import { ingredientsOf } from '../commands/jar/batch-facts.ts'
import type { JarView } from '../commands/jar/jar-view.ts'
import { keepsAYear } from '../commands/plan-rows.ts'

export interface BottleLabelData {
  readonly name: string
  readonly abvPercent: Measured
  /** True where it is what the jar is to become. */
  readonly isPlanned: boolean
  /** What the bottle holds; null where it is not known. */
  readonly volumeMl: number | null
  readonly bottled: IsoDay | null
  /** Null below what keeps about a year. */
  readonly bestBefore: IsoDay | null
  readonly plants: readonly Pick<PlantIn, 'id' | 'name'>[]
  readonly hasSugar: boolean
  readonly allergens: readonly Allergen[]
  /** Plants outside the catalogue, of which nobody knows. */
  readonly unknown: readonly string[]
}

/** The sizes that a label is wanted for: those of the last bottling, else those planned. */
export function bottleSizesOf({ story }: JarView): readonly number[] {
  const bottles = story.bottled?.bottles ?? story.started.plan.bottles
  return [...new Set(bottles.map(({ volumeMl }) => volumeMl))]
}

/** What a bottle will hold: before the syrup is in, what was planned; throws where nothing was. */
function becomes({ story, contents }: JarView): Pick<BottleLabelData, 'abvPercent' | 'isPlanned' | 'hasSugar'> {
  if (story.sweetened !== null || story.bottled !== null) {
    const { abvPercent, sugarGPerL } = contents.outcome
    return { abvPercent, isPlanned: false, hasSugar: sugarGPerL.value > 0 }
  }
  const { targets } = story.started.plan
  if (targets === null) throw new ChatError('not_found', 'label_unplanned', { jar: story.name })
  return { abvPercent: exactly(targets.abvPercent), isPlanned: true, hasSugar: targets.sugarGPerL > 0 }
}

/** The label of one of the `bottleSizesOf`, or without a volume; throws `label_unplanned`. */
export function bottleLabelData(view: JarView, volumeMl: number | null): BottleLabelData {
  const { story } = view
  const made = becomes(view)
  const { plants } = ingredientsOf(story)
  const ready = story.readyOn
  const isKept = ready !== null && keepsAYear(made.abvPercent.value)
  return {
    name: story.name,
    ...made,
    volumeMl,
    bottled: story.bottled?.day ?? null,
    bestBefore: isKept ? isoDay(addDays(dayFromIso(ready), KEEPS_DAYS)) : null,
    plants: plants.map(({ id, name }) => ({ id, name })),
    allergens: allergensOf(plants.flatMap(({ id }) => (id === null ? [] : [id]))),
    unknown: plants.flatMap(({ id, name }) => (id === null ? [name] : [])),
  }
}
