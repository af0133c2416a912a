import { lineTyped } from '../../calls/write-line.ts'
import type { Format } from '../format.ts'
import type { Feature, Written } from '../language.ts'
import type { ChatProblems } from '../messages/chat-problems.ts'
import type { GaugedLiqueur, MeasureMessages } from '../messages/measure.ts'

/** Strength and sugar as they are said in one sentence. */
const both = ({ abvPercent, sugarGPerL }: GaugedLiqueur, format: Format): string => {
  const strength = abvPercent.value === 0 ? 'no alcohol' : `about ${format.strength(abvPercent)}`
  const sugar = sugarGPerL.value === 0 ? 'no sugar' : `${format.sweetness(sugarGPerL)} of sugar`
  return `${strength} and ${sugar}`
}

const within = ({ abvPercent, sugarGPerL }: GaugedLiqueur, format: Format): string =>
  sugarGPerL.plusMinus === 0
    ? `Within ±${format.give.strength(abvPercent)}`
    : `Within ±${format.give.strength(abvPercent)} and ±${format.give.sweetness(sugarGPerL)}`

/** Help for `/measure`. */
export const measureText = {
  summary: 'How strong and sweet a finished liqueur is: by instruments, or by its recipe',
  options: {
    jar: 'One of your jars: I’ll record what you measured. Alone: what its recipe says',
    brix: 'What a refractometer shows in it: 26.5, or 26.5 at 24 C',
    hydrometer: 'What a hydrometer shows in it: 1.035, 8.7 Brix, 4.9 Baumé or 23%, each also at 24 C',
    before: 'What the hydrometer shows before you boil the alcohol off: 1.059',
    after: 'What it shows once boiled off and topped up again, such as 1.096',
    strength: 'Its true strength, as a laboratory tells it: 32%. I’ll take it for the jar',
    sweetness: 'Its sugar, if you know it: 250 g/L',
    when: 'The day, if it wasn’t today: yesterday, Saturday, 24 December',
  },
  examples: [
    '/measure brix:26.5 hydrometer:1.035',
    '/measure before:1.059 after:1.096',
    '/measure hydrometer:1.035 sweetness:180 g/L',
    '/measure',
  ],
}

/** What `/measure` says. */
export const measureSentences = {
  headlines: {
    gauged: (found, format) => `It has ${both(found, format)}.`,
    measure_by_recipe: ({ name, isMeasured, ...found }, format) =>
      isMeasured
        ? `As it was measured, ${name} has ${both(found, format)}.`
        : `By its recipe ${name} has ${both(found, format)}.`,
    measure_boil: () => 'Now boil the alcohol off: 100 ml of it in a pan, with 100 ml of water.',
    measure_ways: () => 'Measure it with what you have.',
  },
  sure: {
    gauged_two_instruments: (found, format) =>
      `${within(found, format)}. Two instruments come that near on real drinks. My formula hasn’t been tested on measured liqueurs.`,
    gauged_boiled: (found, format) =>
      `${within(found, format)}, if you filled it up to the same mark. My formula hasn’t been tested on measured liqueurs.`,
    measure_off_by: (found, format) => `${within(found, format).replace('Within', 'That may be off by')}.`,
    gauged_known_sugar: (found, format) =>
      `${within(found, format)}. It’s only as good as the sugar you know: 10 g/L is 2 to 3.5 % vol.`,
  },
  notes: {
    measure_doubtful: () =>
      'Hardly any liqueur is that strong and that sweet. Read both again: one slipped digit does that.',
    measure_both: () => 'Filter it first, and read both at 20 °C.',
    measure_brix_warm: () =>
      'I brought the Brix to 20 °C. If your refractometer corrects itself (ATC), leave its temperature out.',
    measure_floats: () => 'Filter it first, spin the hydrometer to shake the bubbles off, and read it at 20 °C.',
    measure_boiled_so: () =>
      'That’s for 100 ml boiled with 100 ml of water down to 80 ml. Cooled, it’s filled up with water to 100 ml at 20 °C.',
    measure_simmer: () => 'Simmer it down to about 80 ml, lid off.',
    measure_fill_up: () =>
      'Let it cool and pour it back. Rinse the pan with a little water, and fill up to exactly 100 ml at 20 °C.',
    measure_if_weighed: (found, format) =>
      `Had you weighed it all instead of pouring, it’d be ${within(found, format).replace('Within ', '')}.`,
    measure_weighing_no_help: () => 'Weighing wouldn’t make it much better.',
    measure_surprising: ({ name, abvPercent }, format) =>
      `I expected about ${format.round.strength(abvPercent)}. If it’s a typo: ${lineTyped('jar undo', { jar: name })}`,
    measure_scale: () =>
      'Only a scale? Weigh a bottle empty, brim-full of water, then brim-full of liqueur. Take the empty bottle off both, and divide liqueur by water: that’s what a hydrometer would show.',
  },
  actions: {
    measure_read_again: () => 'Read it again, with what it shows then',
    measure_two: () => 'Refractometer and hydrometer',
    measure_boiling: () => 'Hydrometer, boiled with water, no flame',
    measure_sugar: () => 'Hydrometer, sugar known',
    measure_recipe: () => 'No instrument',
  },
  cautions: {
    measure_boil: () =>
      'Never boil it neat or over a flame. Water in first, electric ring, hood on, window open, jars well away.',
  },
} satisfies Feature<MeasureMessages>

/** What is lacking, or one too many, each with a whole line. */
export const measureProblems = {
  measure_more: ({ have, example }) => {
    if (have === 'after') return `And what did it show before you boiled it? Type ${example}`
    if (have === 'hydrometer') return `And how sweet is it? Type ${example}`
    return `And what does a hydrometer show in it? Type ${example}`
  },
  measure_one_way: ({ example }) => `That’s two ways at once. Use one: ${example}`,
  boiled_lighter: ({ example }) =>
    `Without its alcohol it’s heavier, not lighter. Is it the other way round? Type ${example}`,
} satisfies Partial<Written<ChatProblems>>
