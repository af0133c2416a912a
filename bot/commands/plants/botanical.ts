import type { Botanical } from '../../../core/botanical/botanical.ts'
import { botanicalById, catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { productFiles } from '../../../core/botanical/evidence/product-files.ts'
import { steepEvidenceOf } from '../../../core/botanical/evidence/steep-evidence.ts'
import type { Found } from '../../../core/botanical/find/find.ts'
import { mayBeDried } from '../../../core/botanical/find/in-form.ts'
import type { DrinkPart } from '../../../core/recipe/drinks-in.ts'
import { givenPerLitre } from '../../../core/recipe/plan/plant-of.ts'
import { usualDose } from '../../../core/recipe/plan/usual-dose.ts'
import { signature } from '../../calls/signatures.ts'
import { defineCommand } from '../../chat/command.ts'
import { inMore } from '../../chat/depth.ts'
import type { Data, Reply, Row } from '../../chat/reply.ts'
import type { Kitchen } from '../../text/messages/kitchen.ts'
import type { Message } from '../../text/words.ts'
import { kitchenOf } from '../options/input-units.ts'
import { missing } from '../options/missing-option.ts'
import { byDepth } from '../reply/first-screen.ts'
import { graveCautions } from '../reply/grave-cautions.ts'
import { measuredData, row } from '../reply/outcome-reply.ts'
import { hazardsOf, isOfLook, memoryNotes } from './botanical-hazards.ts'
import { plantRows } from './botanical-rows.ts'
import { planOf } from './plan-of.ts'
import { doseData, LITRE_ML, pouredOf } from './poured-spirit.ts'
import { ripeReply } from './ripe.ts'

type Note = Message<'notes'>

function plantNotes({ botanical, saidState, corrected }: Found): readonly Note[] {
  const { id, form, preparation, timesDays } = botanical
  const evidence = steepEvidenceOf(id)
  const files = productFiles.filter(({ botanicals }) => botanicals.includes(id))
  const isFormTaken = saidState === null && mayBeDried(botanical, false)
  const usualState = botanicalById(id).form.state
  const knownAs = usualState === form.state ? null : usualState
  const forms = [{ id, state: form.state }]
  const looks = hazardsOf([botanical]).filter(isOfLook)
  return [
    ...(corrected ? [{ group: 'notes', key: 'botanical_corrected', values: { ids: [id] } } as const] : []),
    ...(isFormTaken ? [{ group: 'notes', key: 'botanical_form_taken', values: { forms } } as const] : []),
    ...(preparation.length === 0
      ? []
      : [{ group: 'notes', key: 'botanical_steps', values: { steps: preparation, knownAs } } as const]),
    ...evidence.map(({ key }): Note => ({ group: 'notes', key: 'botanical_evidence', values: { evidence: key } })),
    {
      group: 'notes',
      key: 'botanical_habit',
      values: { byAnalogy: timesDays.byAnalogy, trust: timesDays.trust, measured: evidence.length > 0 },
    },
    ...files.map((file): Note => ({ group: 'notes', key: 'botanical_file', values: { file } })),
    ...looks.map((values): Note => ({ group: 'notes', key: 'botanical_look', values })),
    ...memoryNotes(hazardsOf([botanical]).filter((each) => !isOfLook(each))),
  ]
}

function plantData(plant: Botanical): { readonly [name: string]: Data } {
  const { id, names, form, dose, timesDays, spiritPercent, waterFraction, sugarsFraction, ceiling } = plant
  const given = givenPerLitre(plant)
  const { tasteFrom, usualMin, usualMax, latest, restMin, restMax } = timesDays
  return {
    id,
    latin: names.latin[0] ?? null,
    form: form.state,
    cut: form.cut,
    doseGPerL: { min: dose.minGPerL, typical: dose.typicalGPerL, max: dose.maxGPerL },
    timesDays: { tasteFrom, usualMin, usualMax, latest, restMin, restMax },
    strengthPercent: { min: spiritPercent.min, max: spiritPercent.max },
    waterFraction: waterFraction.value,
    sugarsFraction: sugarsFraction?.value ?? null,
    extractFraction: { min: plant.extractFraction.min, max: plant.extractFraction.max },
    ...measuredData(given),
    ceilingGPerL: ceiling?.gPerLSpirit ?? null,
    hazards: hazardsOf([plant]).map(({ hazard }) => hazard),
  }
}

/** What is wanted to start a jar. */
function firstRows({ ceiling, warnAbove, spiritPercent: { min, max } }: Botanical): readonly Row[] {
  const most = ceiling ?? warnAbove
  return [
    ...(most === null
      ? []
      : [row('botanical_wise', { group: 'cells', key: 'botanical_most', values: { gPerL: most.gPerLSpirit } })]),
    row('botanical_spirit', { group: 'cells', key: 'botanical_percent', values: { min, max } }),
  ]
}

const FIRST_NOTES: ReadonlySet<string> = new Set(['botanical_corrected', 'botanical_steps'])

function plantReply(found: Found, spirit: readonly DrinkPart[] | undefined, kitchen?: Kitchen): Omit<Reply, 'kitchen'> {
  const { botanical } = found
  const poured = spirit === undefined ? null : pouredOf(spirit)
  const { id, form, timesDays } = botanical
  const dose = usualDose(botanical, poured?.volumeMl ?? LITRE_ML)
  return {
    headline: {
      group: 'headlines',
      key: 'botanical',
      values: { id, state: form.state, dose, spirit: poured, timesDays },
    },
    table: [...firstRows(botanical), ...inMore(plantRows(botanical))],
    sure: [],
    notes: byDepth(plantNotes(found), ({ key }: Note) => FIRST_NOTES.has(key)),
    cautions: [
      ...graveCautions([botanical], false),
      ...inMore(
        hazardsOf([botanical])
          .filter((each) => !isOfLook(each))
          .map((values) => ({ group: 'cautions', key: 'botanical_hazard', values }) as const),
      ),
    ],
    actions: [
      {
        label: { group: 'actions', key: 'botanical_plan', values: undefined },
        call: planOf(botanical, kitchen, spirit),
      },
    ],
    data: { ...plantData(botanical), ...doseData(dose, poured) },
  }
}

/** A line that runs. */
const EXAMPLE = '/botanical of:sloes spirit:70 cl gin'

function kindsReply(): Omit<Reply, 'kitchen'> {
  const kinds = [...new Set(catalogue.map(({ kind }) => kind))].map((kind) => ({
    kind,
    ids: catalogue.filter((plant) => plant.kind === kind).map(({ id }) => id),
  }))
  return {
    headline: {
      group: 'headlines',
      key: 'botanical_kinds',
      values: { plants: catalogue.length, kinds: kinds.length },
    },
    table: kinds.map(({ kind, ids }) =>
      row(`botanical_kind_${kind}`, { group: 'cells', key: 'botanical_names', values: { ids } }),
    ),
    sure: [],
    notes: [],
    cautions: [],
    actions: [],
    data: { kinds },
  }
}

export const botanicalCommand = defineCommand({
  ...signature('botanical'),
  topic: 'planning',
  isOfLineAlone: true,
  run(input, context) {
    const { of, spirit, month } = input
    if (spirit !== undefined && of === undefined) throw missing('botanical', 'of', EXAMPLE)
    const reply =
      of !== undefined
        ? plantReply(of.is, spirit?.is, context.kitchen)
        : month !== undefined
          ? ripeReply(month.is, context)
          : kindsReply()
    return { ...reply, kitchen: kitchenOf(input) }
  },
})
