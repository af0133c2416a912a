import type { ProductFile } from '../../../../core/botanical/evidence/product-files.ts'
import type { SteepEvidence } from '../../../../core/botanical/evidence/steep-evidence.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { spanText } from './botanical-words.ts'

/** What has been measured of when steeping is done, and how little that says. */
export const evidenceWords: { readonly [Key in SteepEvidence['key']]: string } = {
  peel_seven_days_conventional:
    'A paper on lemon peel in 96 % spirit calls at least 7 days the usual steep (J. Food Process Eng. 2016, read in summary); how much is out on which day cannot be read there.',
  peel_dose_over_strength:
    'After 30 days in 10 to 50 % vol the amount of yuzu peel counted for more than the strength (Korean J. Food Preserv. 2019, abstract); no figures by the day.',
  peel_by_analogy:
    'Nobody I know of has measured this peel by the day: what is said of lemon is carried over (derived).',
  coffee_beans_three_weeks:
    'Caffeine from mostly whole beans peaked at 21 days in 80 % vol; 14 were too few and 30 gave no more (Int. J. Eng. Adv. Technol. 2019, abstract).',
  coffee_ground_hours_in_water:
    'In cold water ground coffee is done in 6 to 7 hours (Sci. Rep. 2017); in spirit it has not been measured.',
  ginger_hours_not_enough:
    'Two hours of stirring drew 23 % of what boiling drew from ginger, probably dried powder (Korean J. Food Preserv. 2019): hours are not enough. The days have not been measured.',
  chilli_fast_when_hot:
    'Hot and stirred, dried chilli gives most of its heat in 20 minutes (thesis, Lund 2017); at room temperature it has not been measured, so taste.',
  basil_colour_only:
    'I found no measurement of how basil steeps; only how fast its green fades is known (J. Agric. Food Chem. 2010).',
  vanilla_ageing_rule:
    'The 60 days often named for vanilla are a rule of ageing, not a measured end (second hand and from memory, please check).',
  walnut_little_after_15_days:
    'Between 15 and 90 days little more came out of green walnuts; how ripe they were counted for more (Food Chem. 2005, abstract). Longer is for taste.',
  herbs_three_weeks:
    'Of eight herbs, this one among them, some plant acids came out early and others late within a month (J. Sci. Food Agric. 2019, abstract); the scent was not measured, so it is no reason to steep longer.',
  seeds_three_weeks_at_70:
    'In grape spirit 40 g/L for 3 weeks at 70 % vol came out best, tasters’ liking counted in (J. Sci. Food Agric. 2016, abstract).',
}

const drinks: { readonly [Id in ProductFile['id']]: string } = {
  sorrento: 'the protected lemon liqueur of Sorrento',
  amalfi: 'the protected lemon liqueur of the Costa d’Amalfi',
  galicia: 'the protected coffee liqueur of Galicia',
  pacharan: 'the protected sloe drink of Navarre',
  mirto: 'the protected myrtle liqueur of Sardinia',
  genepi: 'the protected genepi of Piedmont',
}

interface Bounds {
  readonly min: number | null
  readonly max: number | null
}

const within = ({ min, max }: Bounds, format: Format): string => {
  if (min === null) return `at most ${format.plain(max ?? 0)}`
  return max === null ? `at least ${format.plain(min)}` : `${format.plain(min)} to ${format.plain(max)}`
}

const daysWithin = ({ min, max }: { readonly min: number; readonly max: number | null }, format: Format): string =>
  max === null ? `at least ${spanText(min, min, format)}` : spanText(min, max, format)

/** What the legal file of a protected drink asks for, per litre of finished drink. */
export const productFileWords = (file: ProductFile, format: Format): string => {
  const { finishedGPerL: dose, steepDays, spiritPercent, drinkPercent, sugarGPerL } = file
  const asked = [
    ...(dose === null
      ? []
      : [
          `${within(dose, format)} g of ${dose.of === 'plant' ? 'the plant' : 'whole fruit'} in a litre of finished drink`,
        ]),
    ...(steepDays === null ? [] : [`${daysWithin(steepDays, format)} of steeping`]),
    ...(spiritPercent === null ? [] : [`spirit of ${within(spiritPercent, format)} % vol`]),
    ...(drinkPercent === null ? [] : [`${within(drinkPercent, format)} % vol in the drink`]),
    ...(sugarGPerL === null ? [] : [`${within(sugarGPerL, format)} g/L of sugar`]),
  ]
  const other = dose === null ? '' : ' That is per litre of drink, not of spirit as above.'
  return `The file of ${drinks[file.id]} asks for ${listed(asked)}.${other}`
}
