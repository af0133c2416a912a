import type { OverCeiling } from '../../../core/botanical/limits/ceilings.ts'
import { LOW_ACID_ABV_PERCENT } from '../../../core/botanical/limits/low-acid.ts'
import { LEAST_SPIRIT_ML, type SpiritToAdd } from '../../../core/jar/limits/spirit-to-add.ts'
import {
  delleUnits,
  KEEPS_ABOVE_UNITS,
  type Keeping,
  LEAST_UNITS,
  type StrengthAndSugar as Weak,
  weaknessOf,
} from '../../../core/liquid/keeping.ts'
import { dayFromIso } from '../../../core/quantity/time/calendar-day.ts'
import { symptoms } from '../../../core/trouble/symptoms.ts'
import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature } from '../language.ts'
import type { DangerMessages, PlantTold } from '../messages/jar-danger.ts'
import { plantName } from './cook-names.ts'
import { weakText } from './jar-problems.ts'
import { hasHave, isAre } from './jar-verbs.ts'
import { listed } from './phrases.ts'
import { lookAgain, openText, toldText } from './told-of-jar.ts'
import { gramsAtMost, noteText } from './words.ts'

const weak = (of: Weak, format: Format): string => weakText(weaknessOf(of), format)

/** Steps of a jug, and a strength as on a label. */
const spiritText = ({ spiritMl, abvPercent, drink = 'spirit' }: SpiritToAdd, format: Format): string =>
  `${format.round.atLeast(spiritMl)} of ${format.wished.strength(abvPercent, 1)} ${drink}`

const plantsText = (plants: readonly PlantTold[]): string =>
  listed(plants.map(({ id, name }) => (id === null ? name : plantName(id))))

const added = (add: SpiritToAdd | null, does: string, format: Format): string =>
  add === null ? '' : ` ${spiritText(add, format)} ${does}.`

/** Of the least that is poured for it. */
const edge = (add: SpiritToAdd | null): string =>
  add !== null && add.spiritMl <= LEAST_SPIRIT_ML ? ' It’s at the very edge.' : ''

const overText = ({ of }: OverCeiling, format: Format): string => {
  const holds = of.map(({ id, massG }) => `${gramsAtMost(massG, format)} ${plantName(id)}`)
  return `${listed(holds)}, and ${listed(of.map(({ mostG }) => gramsAtMost(mostG, format)))} is the most for that much`
}

/** What stops a gassing jar from hurting somebody. */
const STAND_IT_COLD =
  'Stand it in the fridge, under a towel. When it’s cold, loosen the lid away from your face, with glasses on.' +
  ' Don’t seal it again. Don’t bottle it or give it away.'

const KEEPS: { readonly [Word in Keeping]: string } = {
  keeps: 'yeast isn’t expected in it',
  undecided: 'may or may not keep',
  ferments: 'can ferment',
}

/** What it was after all, on a button. */
const WAS: Readonly<Partial<Record<string, string>>> = {
  growth: 'It was only pith',
  not_for_drinking: 'It was bought for drinking',
  plant_unsure: 'I know the plant for sure',
}

/** What is said of a batch that does not keep, or that nobody may drink. */
export const dangerSentences = {
  headlines: { jar_told_of: toldText },
  rows: { jar_keeping: () => 'Keeping' },
  cells: {
    jar_keeping: ({ keeping, abvPercent, sugarGPerL }, format) => {
      const units = delleUnits(abvPercent.value, sugarGPerL.value)
      return `${KEEPS[keeping]}: about ${format.plain(units, 0)} Delle units of strength and sugar (${LEAST_UNITS} to ${KEEPS_ABOVE_UNITS} is undecided)`
    },
  },
  cautions: {
    jar_refused: ({ name, typed }) =>
      `“${typed}” is in ${name}, and that’s not for drinking. Don’t drink it or give it away. If anyone has drunk it, call your poison centre or emergency number now. Throw it away.`,
    jar_unknown_plant: ({ name, typed }) =>
      `“${typed}” is in ${name}, and I don’t know that as food. Don’t drink it or give it away until you’re sure what it is. If you can’t be, throw it away.`,
    jar_over_ceiling: (values, format) => {
      const { name, over, add, kitchen } = values
      const own = format.in(kitchen)
      const what = `${name} ${hasHave(name)} ${listed(over.map((each) => overText(each, own)))}. Don’t drink it or give it away as it is.`
      const then = add === null ? ' Throw it away.' : added(add, 'would bring it under that', own)
      return `${what}${then} If anyone has drunk it and feels ill, call your poison centre.`
    },
    jar_ferments: ({ name, add, kitchen, ...of }, format) =>
      `${name} can ferment, and a closed jar or bottle of it can burst. It’s at ${weak(of, format.in(kitchen))}. ${STAND_IT_COLD}${added(add, 'would make it keep', format.in(kitchen))}` +
      ' If it fizzes or smells off, throw it away.',
    jar_undecided: ({ name, add, kitchen, ...of }, format) =>
      `${name} ${isAre(name)} at ${weak(of, format.in(kitchen))}, and nobody can say if that keeps. Keep it in the fridge, for weeks and not months, with the fruit under the liquid.${edge(add)}${added(add, 'would make it keep', format.in(kitchen))}`,
    jar_weak_low_acid: ({ name, plants, abvPercent, add, kitchen }, format) =>
      `${name} ${isAre(name)} at about ${format.in(kitchen).wished.strength(abvPercent, 1)}. Under ${LOW_ACID_ABV_PERCENT} % botulism can grow on the ${plantsText(plants)}, and no smell warns you.${added(add, 'would make it strong enough', format.in(kitchen))} Has it been like that for days? Throw it away untasted.`,
    low_acid_weak: ({ plants, abvPercent }, format) =>
      `At ${format.wished.strength(abvPercent, 1)} botulism could grow from the ${plantsText(plants)}, and no smell warns you. Keep it at ${LOW_ACID_ABV_PERCENT} % or more.`,
    low_acid_source: () =>
      'On botulism: Daifas and others, J. Food Prot. 66 (2003), 610. About 7.5 % vol stopped it in broth, and I keep a margin for the inside of the pieces.',
    jar_still_weak: ({ name }) => `Keep ${name} in the fridge: it may not keep.`,
    jar_noted_trouble: ({ name, note, symptom, day }, format) =>
      `On ${format.day(day)} you noted ${noteText(note)}. Don’t bottle ${name} before that’s cleared up: ${lineTyped('trouble', { symptom: symptoms[symptom].en[0]!, jar: name })}`,
    jar_to_throw_away: (told, format) =>
      `${toldText(told)} You told me on ${format.day(dayFromIso(told.trouble.day))}. Don’t drink it or give it away.`,
    jar_not_yet: (told, format) =>
      `${toldText(told)} That was on ${format.day(dayFromIso(told.trouble.day))}. Don’t give it away. Look again: ${lookAgain(told)}`,
    jar_in_question: (told) => `A question about ${told.name} is still open: ${openText(told.trouble)}`,
    can_ferment: (of, format) =>
      `At ${weak(of, format)} it can ferment, and a closed bottle of it can burst. Keep it in the fridge, lid loose, for days. Don’t bottle it or give it away.`,
    keeps_undecided: (of, format) =>
      `At ${weak(of, format)} nobody can say if it keeps. Keep it in the fridge and drink it within weeks.`,
    plan_jar_undecided: (of, format) =>
      `The jar steeps at ${weak(of, format)}, and nobody can say if that keeps. Stand it in the fridge, with the plants under the liquid.`,
  },
  notes: {
    jar_targets_ferment: ({ abvPercent, sugarGPerL, keepsFromPercent }, format) =>
      `As planned it would be at ${weakText({ abvPercent, lowAbvPercent: null, sugarGPerL }, format, keepsFromPercent)}, and that can ferment. With that much sugar it keeps from ${format.plain(keepsFromPercent, 0)} % vol up.`,
  },
  actions: {
    jar_add_spirit: () => 'Make it keep',
    jar_dilute: () => 'Dilute it',
    jar_throw_away: () => 'Throw it away',
    jar_was_nothing: ({ trouble }) => WAS[trouble.because ?? ''] ?? 'It was nothing',
  },
} satisfies Feature<DangerMessages>

/** In few words, for a list. */
export const dangerWords = {
  refused_plant: 'not for drinking',
  refused_spirit: 'not for drinking',
  unknown_plant: 'a plant I don’t know as food',
  over_ceiling: 'not for drinking as it is',
  ferments: 'can ferment: fridge, lid loose',
  to_throw_away: 'throw it away',
  not_yet: 'not to be drunk yet',
  in_question: 'a question is open',
  weak_low_acid: 'too weak for vegetables: botulism',
  undecided: 'fridge',
} as const

/** On the tag of a jar and the label of a bottle. */
export const printedDangers = {
  refused_plant: 'DO NOT DRINK OR GIVE AWAY',
  refused_spirit: 'DO NOT DRINK OR GIVE AWAY',
  unknown_plant: 'DO NOT DRINK OR GIVE AWAY',
  over_ceiling: 'DO NOT DRINK AS IT IS',
  ferments: 'FRIDGE, LID LOOSE. DO NOT SEAL OR GIVE AWAY',
  to_throw_away: 'THROW IT AWAY. DO NOT DRINK',
  not_yet: 'DO NOT DRINK OR GIVE AWAY YET',
  in_question: 'DO NOT DRINK BEFORE IT IS CHECKED',
  weak_low_acid: 'TOO WEAK FOR VEGETABLES. DO NOT GIVE AWAY',
  undecided: 'Keep in the fridge, for weeks only',
} as const
