import type { CalendarDay } from '../../../../core/quantity/quantities.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { type BatchSaid, buyText, fillsText } from './plan-headline.ts'
import { plantName, unknownName } from './plan-words.ts'

interface Named {
  readonly names: readonly string[]
}

interface UnknownPlanSaid extends BatchSaid, Named {
  readonly strainOn: CalendarDay | null
}

const them = ({ names }: Named, one: string, many: string): string => (names.length === 1 ? one : many)

/** First line of a plan with a plant that is not in the catalogue. */
export const planUnknownHeadlines = {
  plan_unknown: (values: UnknownPlanSaid, format: Format) => {
    const { names, strainOn } = values
    const strain =
      strainOn === null ? 'say days: for a day to strain' : `strain on ${format.day(strainOn)}, as you said`
    return (
      `I do not know ${listed(names.map(unknownName))} and vouch for nothing. With your amount: ${buyText(values, format)};` +
      ` ${strain}; when it is fit to drink I cannot say; ${fillsText(values, format)}.`
    )
  },
}

export const planUnknownCautions = {
  plan_unknown: (values: Named) =>
    `${listed(values.names.map(unknownName))}: I do not know whether ${them(values, 'this is', 'these are')} food or poison: I refuse only the poisons that I have a name for.` +
    ` Have ${them(values, 'it', 'each')} named to species by somebody who knows, and look that up in an official list of foods` +
    ' (the EU novel-food catalogue, or your national food authority). Never take anything you only picked.' +
    ' In doubt ask a doctor or a poison centre, and leave it out.',
}

export const planUnknownNotes = {
  plan_unknown_yours: (values: Named) =>
    `The amount of ${listed(values.names.map(unknownName))} is yours, and so are the days: I give no dose and no times for` +
    ` ${them(values, 'it', 'them')}, and know no limit, no interaction and no allergy.`,
  plan_unknown_range: (
    {
      waterPercent,
      keptMinMlPerG,
      keptMaxMlPerG,
    }: { readonly waterPercent: number; readonly keptMinMlPerG: number; readonly keptMaxMlPerG: number },
    format: Format,
  ) =>
    `What such a plant brings and keeps I do not know: I took 0 to ${format.plain(waterPercent, 0)} % of water and` +
    ` ${format.plain(keptMinMlPerG, 1)} to ${format.plain(keptMaxMlPerG, 1)} ml kept by each gram (estimated), and the ± holds all of that;` +
    ' sugar of its own is not counted.',
  plan_unknown_days: () => 'How long do you steep it? Say it with days:, and I name the day to strain.',
  plan_unknown_nearest: ({ ids }: { readonly ids: readonly string[] }) =>
    `The nearest that I know: ${listed(ids.map(plantName))}. If you mean that, write its name.`,
}
