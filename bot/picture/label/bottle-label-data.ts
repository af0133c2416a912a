import type { DangerKind } from '../../../core/jar/limits/judge-jar.ts'
import { finedWith, ingredientsTold, sweeteningsIn } from '../../../core/jar/state/batch-facts.ts'
import { bestUntil } from '../../../core/jar/state/best-until.ts'
import type { JarState } from '../../../core/jar/state/jar-state.ts'
import type { JarView } from '../../../core/jar/tasks/jar-view.ts'
import { forGuests } from '../../../core/label/for-guests.ts'
import { asInvertSugarGPerL } from '../../../core/liquid/invert-sugar.ts'
import { type Keeping, keepingAt } from '../../../core/liquid/keeping.ts'
import { isTooStrongNeat } from '../../../core/liquid/neat.ts'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { ChatError } from '../../chat/chat-error.ts'
import { clean } from '../../text/clean.ts'
import type { BottleLabelData } from '../../text/messages/pictures.ts'
import { isFlammable } from '../draw/flammable-mark.ts'

/** The sizes that a label is wanted for: those of the last bottling, else those planned. */
export function bottleSizesOf({ story }: JarView): readonly number[] {
  const bottles = story.bottled?.bottles ?? story.started.bottles
  return [...new Set(bottles.map(({ volumeMl }) => volumeMl))]
}

/** What went in beside spirit and plants, whenever it did; of the plants' own water and sugar nothing is said. */
const wentIn = (story: JarState) => ({
  hasWater: story.happened.some(
    (entry) =>
      ('waterG' in entry && entry.waterG.value > 0) || (entry.kind === 'strained' && entry.rinseWaterG.value > 0),
  ),
  sweeteners: sweeteningsIn(story).map(({ material }) => material),
})

/** What a bottle will hold: before the syrup is in, what was planned; throws where nothing was. */
function becomes({ story, contents, dangers }: JarView): Pick<
  BottleLabelData,
  'abvPercent' | 'strength' | 'hasWater' | 'sweeteners'
> & {
  readonly sugarGPerL: number
} {
  const { abvPercent, sugarGPerL } = contents.outcome
  // What ferments is what it is, whatever was planned.
  const isWeak = dangers.some(({ kind }) => kind === 'ferments')
  if (story.sweetened !== null || story.bottled !== null || isWeak) {
    return { abvPercent, sugarGPerL: sugarGPerL.value, strength: contents.strength, ...wentIn(story) }
  }
  const { targets } = story.started
  if (targets === null) throw new ChatError('not_found', 'label_unplanned', { jar: story.name })
  const { hasWater, sweeteners } = wentIn(story)
  const planned = targets.sugarGPerL > 0 ? [story.started.sweetener ?? USUAL_MATERIAL] : []
  return {
    abvPercent: exactly(targets.abvPercent),
    sugarGPerL: targets.sugarGPerL,
    strength: 'planned',
    hasWater: hasWater || targets.abvPercent < abvPercent.value - abvPercent.plusMinus,
    sweeteners: targets.sugarGPerL > 0 ? [...new Set([...sweeteners, ...planned])] : [],
  }
}

/** Whether what it is planned to become keeps; null where it is that already. */
function plannedKeeping({ strength }: Pick<BottleLabelData, 'strength'>, { started }: JarState): Keeping | null {
  const { targets } = started
  return strength !== 'planned' || targets === null ? null : keepingAt(targets.abvPercent, targets.sugarGPerL)
}

/** The least of a spirit drink, % vol, and of a liqueur, g/L of invert sugar: Regulation (EU) 2019/787, Article 2 and Annex I, 33. */
const SPIRIT_PERCENT = 15
const LIQUEUR_INVERT_GPERL = 100

/** What it is, whatever its maker calls it. */
function kindOf(abvPercent: number, sugarGPerL: number): BottleLabelData['kind'] {
  if (abvPercent < SPIRIT_PERCENT) return null
  return asInvertSugarGPerL(sugarGPerL) >= LIQUEUR_INVERT_GPERL ? 'liqueur' : 'steeped_spirit'
}

/** The label of one of the `bottleSizesOf`, or without a volume; throws `label_unplanned`. */
export function bottleLabelData(view: JarView, volumeMl: number | null, maker: string | null = null): BottleLabelData {
  const { jar, story } = view
  const { sugarGPerL, ...made } = becomes(view)
  const { plants } = ingredientsTold(story)
  // A jar that may not keep while it steeps may become what does.
  const now = view.dangers.find(({ kind }) => kind !== 'undecided' || made.strength !== 'planned')
  const planned = plannedKeeping(made, story)
  const danger: DangerKind | null = now?.kind ?? (planned === 'keeps' ? null : planned)
  const drink = planned === null ? undefined : { abvPercent: made.abvPercent.value, keeping: planned }
  return {
    id: jar.id,
    name: story.name,
    ...made,
    kind: danger === null ? kindOf(made.abvPercent.value, sugarGPerL) : null,
    maker: maker === null ? null : clean(maker),
    isFlammable: isFlammable(made.abvPercent),
    isTooStrong: isTooStrongNeat(made.abvPercent.value),
    danger,
    volumeMl,
    bottled: story.bottled?.day ?? null,
    bestBefore: danger === null ? bestUntil(story, drink) : null,
    plants: plants.map(({ id, name }) => ({ id, name })),
    ...forGuests(plants, made.sweeteners, finedWith(story)),
  }
}
