import { z } from 'zod'
import { checkUnknown, checkUnknownAlone } from './check-unknown.ts'
import { costOptions } from './cost-options.ts'
import { jarOptions } from './jar-options.ts'
import { personOptions } from './person-options.ts'
import { planOptions } from './plan-options.ts'
import { quantityOptions } from './quantity-options.ts'
import { shoppingOptions } from './shopping-options.ts'
import { troubleOptions } from './trouble-options.ts'

const { amount, strength, sugar, spirits, sweetness, wishedStrength } = quantityOptions
const { anyPlants, bottles, yesNo } = planOptions
const { jar, name, note, when } = jarOptions

/** What every command takes that plans a batch. */
const batch = {
  of: anyPlants.optional(),
  from: planOptions.code.optional(),
  spirit: spirits.optional(),
  strength: strength.optional(),
  bottles: bottles.optional(),
  'to-strength': wishedStrength.optional(),
  'to-sweetness': sweetness.optional(),
}

const howItIsPlanned = {
  'ready-by': planOptions.readyBy.optional(),
  'steep-at': quantityOptions.spiritStrength.optional(),
  sugar: quantityOptions.sugarOrKind.optional(),
  water: quantityOptions.waterOrKind.optional(),
  'unknown-ok': yesNo.optional(),
  days: planOptions.days.optional(),
  'all-in': yesNo.optional(),
}

/** The options of a batch; the day it begins has another name in each command. */
export const planShape = { ...batch, ...howItIsPlanned }

/** What each command takes. The first option of a command is the one whose name may be left out. */
export const signatures = {
  plan: z
    .object({
      ...batch,
      start: planOptions.start.optional(),
      ...howItIsPlanned,
      have: shoppingOptions.have.optional(),
    })
    .superRefine(checkUnknown),
  syrup: z.object({
    infusion: amount.optional(),
    jar: jar.optional(),
    strength: strength.optional(),
    'to-strength': wishedStrength.optional(),
    'to-sweetness': sweetness.optional(),
    ratio: quantityOptions.ratio.optional(),
    'at-most': quantityOptions.wishedVolume.optional(),
    of: planOptions.plants.optional(),
    spirit: spirits.optional(),
    sugar: quantityOptions.sweetener.optional(),
    water: quantityOptions.filler.optional(),
  }),
  mix: z.object({
    spirit: spirits.optional(),
    strength: strength.optional(),
    water: quantityOptions.waters.optional(),
    sugar: sugar.optional(),
    freezer: personOptions.freezer.optional(),
  }),
  dilute: z.object({ spirit: spirits, strength: strength.optional(), 'to-strength': wishedStrength }),
  blend: z.object({ parts: quantityOptions.parts, freezer: personOptions.freezer.optional() }),
  adjust: z.object({
    liqueur: amount.optional(),
    jar: jar.optional(),
    strength: strength.optional(),
    sweetness: sweetness.optional(),
    'to-strength': wishedStrength.optional(),
    'to-sweetness': sweetness.optional(),
    'spirit-strength': quantityOptions.spiritStrength.optional(),
    sugar: quantityOptions.sweetener.optional(),
    glass: quantityOptions.volume.optional(),
    'glass-spirit': spirits.optional(),
    'glass-water': amount.optional(),
    'glass-sugar': sugar.optional(),
  }),
  measure: z.object({
    jar: jar.optional(),
    brix: quantityOptions.brix.optional(),
    hydrometer: quantityOptions.hydrometer.optional(),
    before: quantityOptions.hydrometer.optional(),
    after: quantityOptions.hydrometer.optional(),
    strength: strength.optional(),
    sweetness: sweetness.optional(),
    when: when.optional(),
  }),
  trouble: z.object({
    symptom: troubleOptions.symptom.optional(),
    jar: jar.optional(),
    of: quantityOptions.botanicals.optional(),
    strength: strength.optional(),
    sweetness: sweetness.optional(),
    days: planOptions.days.optional(),
    yes: troubleOptions.signs.optional(),
    no: troubleOptions.signs.optional(),
    'what-if': yesNo.optional(),
    about: jarOptions.place.optional(),
    given: jarOptions.maker.optional(),
  }),
  keeping: z.object({
    jar: jar.optional(),
    of: quantityOptions.botanicals.optional(),
    strength: strength.optional(),
    sweetness: sweetness.optional(),
  }),
  shopping: z.object({
    jars: jarOptions.jars.optional(),
    plans: shoppingOptions.codes.optional(),
    have: shoppingOptions.have.optional(),
    bottles: bottles.optional(),
    'spirit-size': quantityOptions.wishedVolume.optional(),
  }),
  cost: z.object({
    jar: jar.optional(),
    plan: planOptions.code.optional(),
    bottles: bottles.optional(),
    prices: costOptions.prices.optional(),
  }),
  serving: z.object({ pour: quantityOptions.volume, strength, country: quantityOptions.country.optional() }),
  label: z.object({
    strength,
    sweetness,
    of: quantityOptions.labelPlants.optional(),
    sugar: quantityOptions.sweetener.optional(),
    region: quantityOptions.region.optional(),
  }),
  botanical: z.object({
    of: quantityOptions.botanical.optional(),
    spirit: spirits.optional(),
    month: quantityOptions.month.optional(),
  }),
  cautions: z.object({ of: quantityOptions.botanicals }),
  settings: z.object({
    units: personOptions.units.optional(),
    country: personOptions.country.optional(),
    zone: personOptions.zone.optional(),
    freezer: personOptions.freezer.optional(),
  }),
  reminders: z.object({
    place: personOptions.place.optional(),
    time: personOptions.time.optional(),
    zone: personOptions.reminderZone.optional(),
    shake: personOptions.shake.optional(),
    drink: yesNo.optional(),
    'pause-until': personOptions.pauseUntil.optional(),
  }),
  'jar list': z.object({ picture: yesNo.optional() }),
  'jar start': z
    .object({
      name: name.optional(),
      ...planShape,
      enzyme: jarOptions.enzyme.optional(),
      'second-of': jar.optional(),
      when: when.optional(),
    })
    .superRefine(checkUnknown),
  'jar shake': z.object({ jar: jarOptions.jarOrAll, when: when.optional() }),
  'jar taste': z.object({
    jar,
    rating: jarOptions.rating.optional(),
    when: when.optional(),
    note: note.optional(),
  }),
  'jar add': z
    .object({
      jar,
      of: anyPlants.optional(),
      spirit: spirits.optional(),
      strength: strength.optional(),
      water: quantityOptions.waters.optional(),
      sugar: sugar.optional(),
      as: jarOptions.addedAs.optional(),
      enzyme: jarOptions.enzyme.optional(),
      'unknown-ok': yesNo.optional(),
      when: when.optional(),
      after: jarOptions.entry.optional(),
      already: yesNo.optional(),
    })
    .superRefine(checkUnknownAlone),
  'jar strain': z.object({
    jar,
    measured: amount.optional(),
    strength: strength.optional(),
    rinse: amount.optional(),
    when: when.optional(),
  }),
  'jar sweeten': z.object({
    jar,
    water: quantityOptions.waters.optional(),
    sugar: quantityOptions.sugarOrKind.optional(),
    'on-fruit': yesNo.optional(),
    'from-fruit': jarOptions.drawn.optional(),
    when: when.optional(),
    after: jarOptions.entry.optional(),
    again: yesNo.optional(),
  }),
  'jar filter': z.object({
    jar,
    measured: amount.optional(),
    racked: yesNo.optional(),
    fining: jarOptions.fining.optional(),
    when: when.optional(),
    again: yesNo.optional(),
  }),
  'jar take-out': z.object({ jar, of: jarOptions.plantsIn, when: when.optional() }),
  'jar split': z.object({ jar, amount: jarOptions.pouredOff, into: name, when: when.optional() }),
  'jar combine': z.object({
    jar,
    with: jar,
    amount: jarOptions.pouredOff.optional(),
    'with-amount': jarOptions.pouredOff.optional(),
    into: name.optional(),
    when: when.optional(),
  }),
  'jar note': z.object({
    jar,
    where: jarOptions.place.optional(),
    vessel: jarOptions.place.optional(),
    was: jarOptions.place.optional(),
    when: when.optional(),
    note: note.optional(),
  }),
  'jar bottle': z.object({ jar, bottles, when: when.optional(), already: yesNo.optional() }),
  bottles: z.object({
    jar: jar.optional(),
    given: bottles.optional(),
    opened: bottles.optional(),
    when: when.optional(),
    already: yesNo.optional(),
  }),
  'jar open': z.object({ jar, when: when.optional() }),
  'jar empty': z.object({ jar, when: when.optional() }),
  'jar discard': z.object({ jar, when: when.optional() }),
  'jar rename': z.object({ jar, to: name }),
  'jar later': z.object({ jar: jarOptions.jarOrAll, until: jarOptions.until }),
  'jar correct': z
    .object({
      jar,
      entry: jarOptions.entry.optional(),
      of: anyPlants.optional(),
      spirit: spirits.optional(),
      measured: amount.optional(),
      strength: strength.optional(),
      rinse: amount.optional(),
      water: quantityOptions.waters.optional(),
      sugar: quantityOptions.sugarOrKind.optional(),
      bottles: bottles.optional(),
      rating: jarOptions.rating.optional(),
      'unknown-ok': yesNo.optional(),
      when: when.optional(),
      already: yesNo.optional(),
      note: note.optional(),
    })
    .superRefine(checkUnknownAlone),
  'jar undo': z.object({ jar, after: jarOptions.entries.optional() }),
  'jar show': z.object({ jar: jar.optional(), 'ready-by': planOptions.readyBy.optional() }),
  'jar tag': z.object({ jar }),
  'jar label': z.object({ jar, by: jarOptions.maker.optional(), already: yesNo.optional() }),
  notebook: z.object({
    compare: jarOptions.jars.optional(),
    export: personOptions.exportFormat.optional(),
    import: personOptions.file.optional(),
  }),
  calendar: z.object({ jar: jarOptions.jarOrAll.optional() }),
  share: z.object({
    jar: jar.optional(),
    withdraw: personOptions.share.optional(),
    make: personOptions.shareToMake.optional(),
    of: anyPlants.optional(),
    spirit: spirits.optional(),
    strength: strength.optional(),
    bottles: bottles.optional(),
    'to-strength': wishedStrength.optional(),
  }),
  again: z.object({
    jar,
    of: anyPlants.optional(),
    spirit: spirits.optional(),
    strength: strength.optional(),
    'to-strength': wishedStrength.optional(),
    'to-sweetness': sweetness.optional(),
    sugar: quantityOptions.sugarOrKind.optional(),
    water: quantityOptions.waterOrKind.optional(),
    days: planOptions.days.optional(),
    bottles: bottles.optional(),
    name: name.optional(),
  }),
  forget: z.object({
    /** Takes whatever is typed without an option's name, so that a stray word confirms nothing. */
    jar: jar.optional(),
    confirm: personOptions.confirm.optional(),
  }),
}

export type Signatures = typeof signatures

/** The words after the slash: `jar sweeten`. */
export type Path = keyof Signatures

/** What a command is given: each option's text and the value that it is. */
export type InputOf<Called extends Path> = z.output<Signatures[Called]>

/** What a command is called and what it takes. */
export const signature = <Called extends Path>(path: Called): { path: Called; input: Signatures[Called] } => ({
  path,
  input: signatures[path],
})
