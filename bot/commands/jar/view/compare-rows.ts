import { notesOf, ratingsOf, restedDays, steepedDays } from '../../../../core/jar/state/batch-facts.ts'
import {
  type BatchFacts,
  batchFacts,
  isClose,
  isSameAmount,
  isSameJarAmount,
  isSameStrength,
  isSameSweetness,
  isSameTarget,
} from '../../../../core/jar/state/compare-batches.ts'
import type { JarView } from '../../../../core/jar/tasks/jar-view.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { Settings } from '../../../../store/person.ts'
import type { Row } from '../../../chat/reply.ts'
import type { Kitchen } from '../../../text/messages/kitchen.ts'
import { row } from '../../reply/outcome-reply.ts'
import { kitchenAmong } from '../known/jar-kitchen.ts'

type Both<Fact> = readonly [one: Fact, other: Fact]

function spiritRows([one, other]: Both<BatchFacts>, kitchens: Both<Kitchen>): readonly Row[] {
  const isSame =
    isSameAmount(one.spirit.volumeMl, other.spirit.volumeMl) &&
    isSameStrength(one.spirit.abvPercent, other.spirit.abvPercent)
  const both = [one.spirit, other.spirit] as const
  return isSame ? [] : [row('compare_spirit', { group: 'cells', key: 'compare_spirit', values: { both, kitchens } })]
}

const doseRow = (label: Row['label'], both: Both<Measured | null>, kitchens: Both<Kitchen>): readonly Row[] => {
  const [one, other] = both
  if (one !== null && other !== null && isSameAmount(one, other)) return []
  return [{ label, cell: { group: 'cells', key: 'compare_dose', values: { both, kitchens } } }]
}

function plantRows([one, other]: Both<BatchFacts>, kitchens: Both<Kitchen>): readonly Row[] {
  const keyOf = ({ id, name }: BatchFacts['plants'][number]): string => (id === null ? `“${name}` : id)
  const all = new Map([...other.plants, ...one.plants].map((plant) => [keyOf(plant), plant]))
  const doseOf = ({ plants }: BatchFacts, key: string) => plants.find((plant) => keyOf(plant) === key)?.gPerL ?? null
  const keys = [...new Set([...one.plants, ...other.plants].map(keyOf))]
  return keys.flatMap((key) => {
    const { id, name } = all.get(key)!
    const doses = [doseOf(one, key), doseOf(other, key)] as const
    return doseRow({ group: 'rows', key: 'compare_plant', values: { id, name } }, doses, kitchens)
  })
}

/** Sugar or water that went in with the plants. */
const withPlantsRows = (
  key: 'compare_jar_sugar' | 'compare_jar_water',
  both: Both<Measured>,
  kitchens: Both<Kitchen>,
): readonly Row[] =>
  isSameJarAmount(...both) ? [] : doseRow({ group: 'rows', key, values: undefined }, both, kitchens)

/** What they were to become, where that was said. */
function plannedRows([one, other]: Both<JarView>): readonly Row[] {
  const [first, second] = [one.story.started.targets, other.story.started.targets]
  const isSame = isSameTarget(first, second)
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

function outcomeRows([one, other]: Both<JarView>, kitchens: Both<Kitchen>): readonly Row[] {
  if (one.contents.isEmpty || other.contents.isEmpty) return []
  const [made, madeToo] = [one.contents.outcome, other.contents.outcome]
  const strengths = [made.abvPercent, madeToo.abvPercent] as const
  const sweets = [made.sugarGPerL, madeToo.sugarGPerL] as const
  return [
    ...(isSameStrength(...strengths)
      ? []
      : [
          row('compare_strength', {
            group: 'cells',
            key: 'compare_strength',
            values: { both: strengths, isClose: isClose(...strengths), kitchens },
          }),
        ]),
    ...(isSameSweetness(...sweets)
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
export function compareRows(views: Both<JarView>, settings: Pick<Settings, 'units'>): readonly Row[] {
  const [one, other] = views
  const kitchens = [kitchenAmong(one.story, settings), kitchenAmong(other.story, settings)] as const
  const facts = [batchFacts(one.story), batchFacts(other.story)] as const
  return [
    ...spiritRows(facts, kitchens),
    ...plantRows(facts, kitchens),
    ...withPlantsRows('compare_jar_water', [facts[0].jarWaterGPerL, facts[1].jarWaterGPerL], kitchens),
    ...withPlantsRows('compare_jar_sugar', [facts[0].jarSugarGPerL, facts[1].jarSugarGPerL], kitchens),
    ...begunRows(views),
    ...daysRow('compare_days', [steepedDays(one.story), steepedDays(other.story)]),
    ...plannedRows(views),
    ...outcomeRows(views, kitchens),
    ...daysRow('compare_rest', [restedDays(one.story), restedDays(other.story)]),
    ...likingRows(views),
  ]
}
