import { z } from 'zod'
import { type FiningId, finings } from '../../core/label/fining.ts'
import { type MaterialId, materials } from '../../core/quantity/materials.ts'
import {
  amount,
  count,
  day,
  instantMs,
  measured,
  measuredStrength,
  measuredSweetness,
  strength,
  sweetness,
  temperature,
  text,
} from './quantities.ts'

const materialIds = Object.keys(materials) as MaterialId[]

const fining = z.enum(Object.keys(finings) as FiningId[])

const readAmount = z.strictObject({ amount: measured, by: z.enum(['volume', 'mass']), atC: temperature })

const portion = z.strictObject({
  ...readAmount.shape,
  abvPercent: measuredStrength,
  abvAtC: temperature.nullable(),
  readsProof: z.boolean().exactOptional(),
  sugarGPerL: measuredSweetness,
})

const knownPortion = z.strictObject({
  ...portion.shape,
  dissolved: z
    .strictObject({ extractGPerL: amount.exactOptional(), sucroseEquivalentShare: amount.exactOptional() })
    .exactOptional(),
})

const readStrength = z.strictObject({
  abvPercent: measuredStrength,
  abvAtC: temperature.nullable(),
  readsProof: z.boolean(),
})

const plant = z.strictObject({
  id: text.nullable(),
  name: text,
  isDried: z.boolean(),
  massG: measured,
  count: amount.nullable(),
  isUsual: z.boolean(),
  words: z.strictObject({ noun: text, isFormSaid: z.boolean(), unit: text.nullable() }).nullable(),
  addOn: day.nullable(),
})

const sweetening = z.strictObject({ material: z.enum(materialIds), massG: measured })

const days = z.strictObject({
  tasteFrom: day.nullable(),
  strainFrom: day.nullable(),
  strainBy: day.nullable(),
  restDays: amount.nullable(),
  isHours: z.boolean(),
  steepHours: z.strictObject({ min: amount, max: amount }).nullable(),
})

const named = z.strictObject({
  isStrengthNamed: z.boolean(),
  isSweetnessNamed: z.boolean(),
  areBottlesNamed: z.boolean(),
  isSpiritNamed: z.boolean(),
  steepAtPercent: amount.nullable(),
  readyBy: day.nullable(),
  steepFor: z.strictObject({ days: amount.nullable(), months: amount.nullable(), nominalDays: amount }).nullable(),
})

const ingredients = {
  plants: z.array(plant),
  spirits: z.array(portion),
  waterG: measured,
  sweetenings: z.array(sweetening),
}

const batch = {
  ...ingredients,
  sweetener: z.enum(materialIds).exactOptional(),
  filler: z.enum(materialIds).exactOptional(),
  targets: z.strictObject({ abvPercent: strength, sugarGPerL: sweetness }).nullable(),
  days,
  bottles: z.array(z.strictObject({ count: count.nullable(), volumeMl: amount })),
  named,
  origin: z.strictObject({ code: text, shareId: text.nullable() }).nullable(),
}

/** What something wrong is called, whether or not it still is. */
const troubleName = z.string().regex(/^[a-z_]{1,40}$/)
const troubleNames = z.array(troubleName).max(60)

const trouble = z
  .strictObject({
    symptom: troubleName,
    verdict: z.enum(['throw_away', 'hold', 'ask']),
    because: troubleName.nullable(),
    question: troubleName.nullable(),
    yes: troubleNames,
    no: troubleNames,
  })
  .exactOptional()

const shapes = {
  started: {
    ...batch,
    name: text,
    enzyme: text.exactOptional(),
    secondOf: z
      .strictObject({
        other: text,
        otherId: text,
        soaked: knownPortion,
        sweetenings: z.array(sweetening).exactOptional(),
        plants: z.array(plant),
      })
      .exactOptional(),
  },
  shaken: {},
  tasted: { rating: z.int().min(1).max(5).nullable(), note: text.nullable(), trouble },
  added: { ...ingredients, as: z.enum(['layer', 'top_up']).exactOptional(), enzyme: text.exactOptional() },
  strained: { measured: readAmount.nullable(), strength: readStrength.nullable(), rinseWaterG: measured },
  filtered: { measured: readAmount.nullable(), isRacked: z.boolean().exactOptional(), fining: fining.exactOptional() },
  measured: {
    method: z.enum(['two_instruments', 'boiled', 'known_sugar']),
    abvPercent: measured,
    sugarGPerL: measured,
  },
  sweetened: {
    waterG: measured,
    sweetenings: z.array(sweetening),
    ofFruit: z.strictObject({ measured: readAmount.nullable() }).exactOptional(),
  },
  fruit_sugared: { sweetenings: z.array(sweetening) },
  taken_out: { plants: z.array(z.strictObject({ id: text.nullable(), name: text, massG: measured })) },
  parted: { kept: measured, other: text, isNew: z.boolean() },
  poured_in: {
    liquid: knownPortion,
    plants: z.array(plant),
    sweetenings: z.array(sweetening).exactOptional(),
    spiritMl: amount,
    other: text,
    into: text.nullable(),
    fined: z.array(fining).exactOptional(),
  },
  noted: {
    note: text.nullable(),
    where: text.nullable(),
    vessel: text.nullable(),
    trouble,
    settled: troubleNames.exactOptional(),
  },
  bottled: { bottles: z.array(z.strictObject({ count, volumeMl: amount })) },
  bottles_out: {
    use: z.enum(['given', 'opened']),
    bottles: z.array(z.strictObject({ count, volumeMl: amount })),
  },
  opened: {},
  emptied: {},
  discarded: {},
  renamed: { name: text },
  put_off: { untilDay: day, untilMs: instantMs.nullable() },
}

/** What can happen to a jar, each with the fields in `also`. */
export const happenings = <Also extends z.core.$ZodLooseShape>(also: Also) =>
  [
    z.strictObject({ ...also, kind: z.literal('started'), ...shapes.started }),
    z.strictObject({ ...also, kind: z.literal('shaken') }),
    z.strictObject({ ...also, kind: z.literal('tasted'), ...shapes.tasted }),
    z.strictObject({ ...also, kind: z.literal('added'), ...shapes.added }),
    z.strictObject({ ...also, kind: z.literal('strained'), ...shapes.strained }),
    z.strictObject({ ...also, kind: z.literal('filtered'), ...shapes.filtered }),
    z.strictObject({ ...also, kind: z.literal('measured'), ...shapes.measured }),
    z.strictObject({ ...also, kind: z.literal('sweetened'), ...shapes.sweetened }),
    z.strictObject({ ...also, kind: z.literal('fruit_sugared'), ...shapes.fruit_sugared }),
    z.strictObject({ ...also, kind: z.literal('taken_out'), ...shapes.taken_out }),
    z.strictObject({ ...also, kind: z.literal('parted'), ...shapes.parted }),
    z.strictObject({ ...also, kind: z.literal('poured_in'), ...shapes.poured_in }),
    z.strictObject({ ...also, kind: z.literal('noted'), ...shapes.noted }),
    z.strictObject({ ...also, kind: z.literal('bottled'), ...shapes.bottled }),
    z.strictObject({ ...also, kind: z.literal('bottles_out'), ...shapes.bottles_out }),
    z.strictObject({ ...also, kind: z.literal('opened') }),
    z.strictObject({ ...also, kind: z.literal('emptied') }),
    z.strictObject({ ...also, kind: z.literal('discarded') }),
    z.strictObject({ ...also, kind: z.literal('renamed'), ...shapes.renamed }),
    z.strictObject({ ...also, kind: z.literal('put_off'), ...shapes.put_off }),
  ] as const
