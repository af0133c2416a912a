import type { Botanical } from '../../../core/botanical/botanical.ts'
import { inForm } from '../../../core/botanical/find/in-form.ts'
import { givenPerLitre } from '../../../core/recipe/plan/plant-of.ts'
import { inMore } from '../../chat/depth.ts'
import type { Row } from '../../chat/reply.ts'
import { row } from '../reply/outcome-reply.ts'

const spanRow = (key: 'botanical_usual' | 'botanical_rest', minDays: number, maxDays: number, plant: Botanical): Row =>
  row(key, { group: 'cells', key: 'botanical_span', values: { minDays, maxDays, trust: plant.timesDays.trust } })

function timeRows(plant: Botanical): readonly Row[] {
  const { tasteFrom, usualMin, usualMax, latest, restMin, restMax } = plant.timesDays
  return [
    row('botanical_taste', { group: 'cells', key: 'botanical_taste', values: { fromDays: tasteFrom } }),
    spanRow('botanical_usual', usualMin, usualMax, plant),
    row('botanical_latest', { group: 'cells', key: 'botanical_latest', values: { latestDays: latest } }),
    spanRow('botanical_rest', restMin, restMax, plant),
  ]
}

function pieceRows({ zestGPerFruit: zest, pieces }: Botanical): readonly Row[] {
  return [
    ...(zest === null ? [] : [row('botanical_zest', { group: 'cells', key: 'botanical_zest', values: { zest } })]),
    ...(pieces.length === 0
      ? []
      : [row('botanical_pieces', { group: 'cells', key: 'botanical_pieces', values: { pieces } })]),
  ]
}

function limitRows(plant: Botanical): readonly Row[] {
  const { ceiling, warnAbove, driedPerFresh } = plant
  const dried = driedPerFresh === null ? null : (inForm(plant, 'dried')?.ceiling ?? null)
  return [
    ...(ceiling === null
      ? []
      : [row('botanical_limit', { group: 'cells', key: 'botanical_limit', values: { limit: ceiling, dried } })]),
    ...(warnAbove === null
      ? []
      : [row('botanical_wise', { group: 'cells', key: 'botanical_wise', values: { limit: warnAbove } })]),
  ]
}

/** What is known of one plant; rows about what does not apply are left out. */
export function plantRows(plant: Botanical): readonly Row[] {
  const { names, form, bulky, driedPerFresh, sugarsFraction, monthsNorth } = plant
  return [
    row('botanical_latin', { group: 'cells', key: 'botanical_latin', values: { latin: names.latin } }),
    row('botanical_form', { group: 'cells', key: 'botanical_form', values: { form, bulky, driedPerFresh } }),
    ...limitRows(plant),
    row('botanical_spirit', { group: 'cells', key: 'botanical_spirit', values: plant.spiritPercent }),
    ...timeRows(plant),
    row('botanical_water', { group: 'cells', key: 'botanical_share', values: { share: plant.waterFraction } }),
    ...(sugarsFraction === null
      ? []
      : [row('botanical_sugars', { group: 'cells', key: 'botanical_share', values: { share: sugarsFraction } })]),
    ...pieceRows(plant),
    ...inMore([row('botanical_given', { group: 'cells', key: 'botanical_given', values: givenPerLitre(plant) })]),
    row('botanical_kept', { group: 'cells', key: 'botanical_kept', values: plant.retainedMlPerG }),
    row('botanical_season', { group: 'cells', key: 'botanical_season', values: { months: monthsNorth } }),
  ]
}
