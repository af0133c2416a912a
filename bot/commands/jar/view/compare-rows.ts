import { abvPercent, mix, volumeMl } from '../../../../core/liquid/liquid.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { liquidOf } from '../../../../core/recipe/portion.ts'
import { propagate } from '../../../../core/recipe/propagate.ts'
import type { Row } from '../../../chat/reply.ts'
import { row } from '../../calculate/outcome-reply.ts'
import { ingredientsOf, notesOf, ratingsOf, restedDays, steepedDays } from '../known/batch-facts.ts'
import type { JarView } from './jar-view.ts'

/** Amounts nearer than a jug can tell are the same. */
const SAME_SHARE = 0.02
/** Strengths and sweetnesses that nobody tastes apart. Common practice, no source. */
const SAME_PERCENT = 0.2
const SAME_G_PER_L = 3

type Both<Fact> = readonly [one: Fact, other: Fact]

interface Facts {
  readonly spirit: { readonly volumeMl: Measured; readonly abvPercent: Measured }
  readonly plants: readonly { readonly id: string | null; readonly name: string; readonly gPerL: Measured }[]
  readonly jarSugarGPerL: Measured
  readonly jarWaterGPerL: Measured
  readonly view: JarView
}

const perLitre = ({ value, plusMinus }: Measured, spiritMl: number): Measured => ({
  value: (1000 * value) / spiritMl,
  plusMinus: (1000 * plusMinus) / spiritMl,
})

function factsOf(view: JarView): Facts {
  const { spirits, plants, waterG, sugarG } = ingredientsOf(view.story)
  const spirit = propagate({ spirits }, (values) => {
    const poured = mix(...values.spirits.map(liquidOf))
    return { volumeMl: volumeMl(poured), abvPercent: abvPercent(poured) }
  })
  const spiritMl = spirit.volumeMl.value
  return {
    spirit,
    plants: plants.map(({ id, name, massG }) => ({ id, name, gPerL: perLitre(massG, spiritMl) })),
    jarSugarGPerL: perLitre(sugarG, spiritMl),
    jarWaterGPerL: perLitre(waterG, spiritMl),
    view,
  }
}

const isNear = (one: Measured, other: Measured, within: number): boolean => Math.abs(one.value - other.value) <= within

const isSameAmount = (one: Measured, other: Measured): boolean =>
  isNear(one, other, SAME_SHARE * Math.max(one.value, other.value))

const isClose = (one: Measured, other: Measured): boolean =>
  isNear(one, other, Math.hypot(one.plusMinus, other.plusMinus))

function spiritRows([one, other]: Both<Facts>): readonly Row[] {
  const isSame =
    isSameAmount(one.spirit.volumeMl, other.spirit.volumeMl) &&
    isNear(one.spirit.abvPercent, other.spirit.abvPercent, SAME_PERCENT)
  const both = [one.spirit, other.spirit] as const
  return isSame ? [] : [row('compare_spirit', { group: 'cells', key: 'compare_spirit', values: { both } })]
}

const doseRow = (label: Row['label'], both: Both<Measured | null>): readonly Row[] => {
  const [one, other] = both
  if (one !== null && other !== null && isSameAmount(one, other)) return []
  return [{ label, cell: { group: 'cells', key: 'compare_dose', values: { both } } }]
}

function plantRows([one, other]: Both<Facts>): readonly Row[] {
  const keyOf = ({ id, name }: Facts['plants'][number]): string => (id === null ? `“${name}` : id)
  const all = new Map([...other.plants, ...one.plants].map((plant) => [keyOf(plant), plant]))
  const doseOf = ({ plants }: Facts, key: string) => plants.find((plant) => keyOf(plant) === key)?.gPerL ?? null
  const keys = [...new Set([...one.plants, ...other.plants].map(keyOf))]
  return keys.flatMap((key) => {
    const { id, name } = all.get(key)!
    return doseRow({ group: 'rows', key: 'compare_plant', values: { id, name } }, [
      doseOf(one, key),
      doseOf(other, key),
    ])
  })
}

/** Sugar or water that went in with the plants. */
const withPlantsRows = (key: 'compare_jar_sugar' | 'compare_jar_water', both: Both<Measured>): readonly Row[] =>
  isNear(...both, 1) ? [] : doseRow({ group: 'rows', key, values: undefined }, both)

/** What they were to become, where that was said. */
function plannedRows([one, other]: Both<JarView>): readonly Row[] {
  const [first, second] = [one.story.started.plan.targets, other.story.started.plan.targets]
  const isSame =
    first === null || second === null
      ? first === second
      : Math.abs(first.abvPercent - second.abvPercent) <= SAME_PERCENT &&
        Math.abs(first.sugarGPerL - second.sugarGPerL) <= SAME_G_PER_L
  return isSame
    ? []
    : [row('compare_planned', { group: 'cells', key: 'compare_planned', values: { both: [first, second] } })]
}

/** The season of the plants differs with it. */
function begunRows([one, other]: Both<JarView>): readonly Row[] {
  const both = [one.story.started.day, other.story.started.day] as const
  return both[0] === both[1] ? [] : [row('compare_begun', { group: 'cells', key: 'compare_begun', values: { both } })]
}

function daysRow(key: 'compare_days' | 'compare_rest', both: Both<number | null>): readonly Row[] {
  return both[0] === both[1] ? [] : [row(key, { group: 'cells', key: 'compare_days', values: { both } })]
}

function outcomeRows([one, other]: Both<JarView>): readonly Row[] {
  if (one.contents.isEmpty || other.contents.isEmpty) return []
  const [made, madeToo] = [one.contents.outcome, other.contents.outcome]
  const strengths = [made.abvPercent, madeToo.abvPercent] as const
  const sweets = [made.sugarGPerL, madeToo.sugarGPerL] as const
  return [
    ...(isNear(...strengths, SAME_PERCENT)
      ? []
      : [
          row('compare_strength', {
            group: 'cells',
            key: 'compare_strength',
            values: { both: strengths, isClose: isClose(...strengths) },
          }),
        ]),
    ...(isNear(...sweets, SAME_G_PER_L)
      ? []
      : [
          row('compare_sweetness', {
            group: 'cells',
            key: 'compare_sweetness',
            values: { both: sweets, isClose: isClose(...sweets) },
          }),
        ]),
  ]
}

function likingRows([one, other]: Both<JarView>): readonly Row[] {
  const ratings = [ratingsOf(one.story).at(-1) ?? null, ratingsOf(other.story).at(-1) ?? null] as const
  const notes = [notesOf(one.story), notesOf(other.story)] as const
  return [
    ...(ratings[0] === ratings[1]
      ? []
      : [row('compare_rating', { group: 'cells', key: 'compare_rating', values: { both: ratings } })]),
    ...(notes[0].join('\n') === notes[1].join('\n')
      ? []
      : [row('compare_notes', { group: 'cells', key: 'compare_notes', values: { both: notes } })]),
  ]
}

/** What two batches do not have in common, a row each. */
export function compareRows(views: Both<JarView>): readonly Row[] {
  const [one, other] = views
  const facts = [factsOf(one), factsOf(other)] as const
  return [
    ...spiritRows(facts),
    ...plantRows(facts),
    ...withPlantsRows('compare_jar_water', [facts[0].jarWaterGPerL, facts[1].jarWaterGPerL]),
    ...withPlantsRows('compare_jar_sugar', [facts[0].jarSugarGPerL, facts[1].jarSugarGPerL]),
    ...begunRows(views),
    ...daysRow('compare_days', [steepedDays(one.story), steepedDays(other.story)]),
    ...plannedRows(views),
    ...outcomeRows(views),
    ...daysRow('compare_rest', [restedDays(one.story), restedDays(other.story)]),
    ...likingRows(views),
  ]
}
