import { SULPHITES_FROM_MG_PER_L } from '../../../core/label/allergens.ts'
import type { ForGuests } from '../../../core/label/for-guests.ts'
import {
  CAFFEINE_HIGH_MG_PER_L,
  LIQUORICE_MG_PER_L,
  LIQUORICE_WARNED_G_PER_L,
} from '../../../core/label/guest-advice.ts'
import { bestOf, type Label, label } from '../../../core/label/label.ts'
import { type LabelPlant, labelPlantsForGuests } from '../../../core/label/parse-label-plants.ts'
import { type Region, regionNamed, regions } from '../../../core/label/parse-region.ts'
import { strengthTolerance } from '../../../core/label/strength-tolerance.ts'
import { USUAL_MATERIAL } from '../../../core/quantity/materials.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { abvPercent, sugarGPerL } from '../../../core/quantity/measured/precision.ts'
import type { Portion } from '../../../core/recipe/portion.ts'
import { call } from '../../calls/call.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Reply, Row } from '../../chat/reply.ts'
import type { Message } from '../../text/words.ts'
import { assumptionNotes, kitchenOf } from '../options/input-units.ts'
import { byDepth } from '../reply/first-screen.ts'
import { caution, measuredData, note, row } from '../reply/outcome-reply.ts'

/** Looked at where none was named. */
const BOTH: readonly Region[] = ['eu', 'us']

/** Fruit of which the EU takes only natural flavouring, as far as it is in the catalogue. */
const NATURAL_ONLY = [
  ...['lemon_peel', 'orange_peel', 'bitter_orange_peel', 'mandarin_peel', 'lime_peel', 'grapefruit_peel'],
  ...['bergamot_peel', 'citron_peel', 'yuzu_peel', 'kumquat', 'blackcurrant', 'sour_cherry', 'raspberry', 'blueberry'],
]

/** What stands on a label, to a tenth of a per cent. */
const printedPercent = ({ abvPercent: { value } }: Label): number => Math.round(value * 10) / 10

const printedRows = (found: Label, asked: readonly Region[]): readonly Row[] =>
  (['eu', 'us', 'uk'] as const).flatMap((region) => {
    const tolerance = strengthTolerance[region]
    if (!asked.includes(region)) return []
    const values = { region, labelPercent: printedPercent(found), tolerance }
    return [row(`label_${region}`, { group: 'cells', key: 'printed', values })]
  })

const plantNotes = (
  plants: readonly LabelPlant[],
  { unknown }: ForGuests,
  asked: readonly Region[],
): readonly Message<'notes'>[] => {
  const strange = plants.filter(({ ids }) => ids.length === 0)
  const isEu = asked.includes('eu')
  const isLemon = plants.length > 0 && plants.every(({ ids }) => ids.length === 1 && ids[0] === 'lemon_peel')
  return [
    ...strange.map(({ typed }): Message<'notes'> => {
      return { group: 'notes', key: unknown.includes(typed) ? 'unknown_plant' : 'allergen_known', values: { typed } }
    }),
    ...(isEu && isLemon ? [note('lemon_name')] : []),
    ...(isEu && plants.some(({ ids }) => ids.some((id) => NATURAL_ONLY.includes(id))) ? [note('natural_only')] : []),
  ]
}

/** From how much on the law of the EU asks for the words; that of Great Britain was the same when it left (from memory). */
const lawNotes = ({ allergens, advice }: ForGuests, asked: readonly Region[]): readonly Message<'notes'>[] => {
  if (!asked.includes('eu') && !asked.includes('uk')) return []
  const liquorice = { fromMgPerL: LIQUORICE_MG_PER_L.warned, rootGPerL: LIQUORICE_WARNED_G_PER_L }
  const caffeine = { fromMgPerL: CAFFEINE_HIGH_MG_PER_L }
  const sulphites = { fromMgPerL: SULPHITES_FROM_MG_PER_L }
  return [
    ...(advice.includes('liquorice') ? [{ group: 'notes', key: 'law_liquorice', values: liquorice } as const] : []),
    ...(advice.includes('caffeine') ? [{ group: 'notes', key: 'law_caffeine', values: caffeine } as const] : []),
    ...(allergens.includes('sulphites') ? [{ group: 'notes', key: 'law_sulphites', values: sulphites } as const] : []),
  ]
}

/** How the sugar is counted, and whether a limit is too near. */
const sureOf = ({ tooClose, abvPercent, invertGPerL }: Label, asked: readonly Region[]): Reply['sure'] => [
  ...(invertGPerL.value === 0 || asked.every((region) => region === 'us')
    ? []
    : [{ group: 'sure', key: 'as_invert', values: { invertGPerL, exact: tooClose.includes('sugar') } } as const]),
  ...(tooClose.length === 0
    ? []
    : [{ group: 'sure', key: 'near_limit', values: { near: tooClose, abvPercent, invertGPerL } } as const]),
]

/** What was gone by where something was left open. */
const FIRST_NOTES: ReadonlySet<string> = new Set(['unknown_plant', 'allergen_known', 'own_region'])

export const labelCommand = defineCommand({
  ...signature('label'),
  topic: 'sums',
  isOfLineAlone: true,
  run(input, { settings: { country } }) {
    const strength = input.strength.is
    const own = input.region || country === null ? null : regionNamed(country)
    const asked = input.region ? [input.region.is] : own === null ? BOTH : [own]
    const plants = input.of?.is ?? []
    const ids = plants.flatMap((plant) => plant.ids)
    const isKnown = plants.length > 0 && plants.every((plant) => plant.ids.length > 0)
    const litre: Portion = {
      amount: exactly(1000),
      by: 'volume',
      atC: 20,
      abvPercent: abvPercent(strength, 'label'),
      abvAtC: strength.atC ?? 20,
      sugarGPerL: sugarGPerL(input.sweetness.is),
    }
    const sweetener = input.sugar?.is ?? USUAL_MATERIAL
    const found = label(litre, isKnown ? ids : null, asked, sweetener)
    const guests = labelPlantsForGuests(plants, [sweetener])
    return {
      headline: {
        group: 'headlines',
        key: 'label',
        values: {
          abvPercent: found.abvPercent,
          sugarGPerL: litre.sugarGPerL,
          found: asked.map((region) => ({ region, best: bestOf(found, region) })),
        },
      },
      table: inMore([
        ...found.verdicts.map((verdict) =>
          row(verdict.category.id, { group: 'cells', key: 'verdict', values: { verdict } }),
        ),
        ...printedRows(found, asked),
      ]),
      sure: sureOf(found, asked),
      notes: byDepth(
        [
          ...assumptionNotes(input),
          ...(input.region || own !== null
            ? []
            : [
                {
                  group: 'notes',
                  key: 'both_regions',
                  values: { line: call('label', { ...input, region: 'uk' }) },
                } as const,
              ]),
          ...(own === null || country === null
            ? []
            : [{ group: 'notes', key: 'own_region', values: { region: own, code: country } } as const]),
          ...plantNotes(plants, guests, asked),
          ...lawNotes(guests, asked),
          ...regions.filter((region) => asked.includes(region)).map((region) => note(`${region}_label_says`)),
        ],
        ({ key }: Message<'notes'>) => FIRST_NOTES.has(key),
      ),
      cautions: [
        ...(guests.allergens.length > 0 ? [{ group: 'cautions', key: 'allergens', values: guests } as const] : []),
        { group: 'cautions', key: 'for_guests', values: guests },
        ...inMore([caution('not_for_sale'), caution('law_and_doctor')]),
      ],
      actions: [],
      data: {
        categories: found.verdicts.map(({ category, meets, missing }) => ({ id: category.id, meets, missing })),
        ...measuredData({ sugarAsInvertGPerL: found.invertGPerL }),
        ...guests,
      },
      kitchen: kitchenOf(input),
    }
  },
})
