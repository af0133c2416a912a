import type { Source } from '../../../../core/jar/state/contents.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { dayFromIso } from '../../../../core/quantity/time/calendar-day.ts'
import { quoted } from '../../../chat/grammar/write-line.ts'
import type { Format } from '../../format.ts'
import { listed } from '../phrases.ts'
import { plantName } from '../plan/plan-words.ts'
import { cautionNames } from './caution-names.ts'
import { correctNotes } from './correct-notes.ts'
import { type TaskSaid, tasksText } from './duty-words.ts'
import { noteText } from './note-words.ts'
import { stepHeadlines } from './step-headlines.ts'
import { unusualNotes } from './unusual-notes.ts'

interface NotMeasured {
  readonly name: string
  readonly entry: number
  readonly isStrengthRead: boolean
}

interface NowSaid {
  readonly volumeMl: Measured
  readonly abvPercent: Measured
  readonly sugarGPerL: Measured
  readonly volume: Source
  readonly strength: Source
}

type Sweet = Pick<NowSaid, 'abvPercent' | 'sugarGPerL'>

/** What a number goes back to. */
const from = {
  measured: 'as you measured',
  computed: 'computed from what you measured',
  estimated: 'estimated',
} as const

const nowText = ({ volumeMl, abvPercent, sugarGPerL, volume, strength }: NowSaid, format: Format): string => {
  const much = `${format.volume(volumeMl)} ± ${format.give.volume(volumeMl)}`
  const sweet =
    sugarGPerL.value > 0 ? `, ${format.sweetness(sugarGPerL)} ± ${format.give.sweetness(sugarGPerL)} of sugar` : ''
  const strong = `at ${format.strength(abvPercent)} ± ${format.give.strength(abvPercent)}${sweet}`
  return volume === strength
    ? `${much} ${strong} (${from[volume]})`
    : `${much} (${from[volume]}) ${strong} (${from[strength]})`
}

/** What every recorded step of a jar says. */
export const stepSentences = {
  headlines: stepHeadlines,
  rows: {
    jar_next: () => 'Next',
    jar_now: () => 'In it now',
    jar_ready: () => 'Ready',
  },
  cells: {
    jar_next: ({ tasks, today }: { readonly tasks: readonly TaskSaid[]; readonly today: IsoDay }, format: Format) =>
      tasksText(tasks, today, format),
    jar_now: nowText,
    jar_ready: ({ day }: { readonly day: IsoDay }, format: Format) => `from ${format.day(dayFromIso(day))}`,
  },
  notes: {
    ...unusualNotes,
    jar_named: ({ name }: { readonly name: string }) =>
      `I call it after what is in it, ${name}. /jar rename ${quoted(name)} asks for another name.`,
    jar_zone_assumed: ({ zone }: { readonly zone: string }) =>
      `I take ${zone} for your time zone; all days and reminders go by it.`,
    jar_not_measured: ({ name, entry, isStrengthRead }: NotMeasured) =>
      `${isStrengthRead ? 'How much it is was not' : 'Nothing was'} measured, so I reckon with what I expect; once you have a reading, /jar correct ${quoted(name)} entry:${entry} asks for it.`,
    /** `at20`: what was read, brought to 20 °C; null where it was read there. */
    jar_reading: (
      { abvPercent, at20 }: { readonly abvPercent: Measured; readonly at20: Measured | null },
      format: Format,
    ) =>
      at20 === null
        ? `The plants’ sugar hides some strength from a hydrometer; put right for it, it is ${format.strength(abvPercent)}.`
        : `Brought to ${format.temperature({ value: 20, plusMinus: 0 })} your reading is ${format.strength(at20)}; the plants’ sugar hides some strength from a hydrometer, and put right for that too it is ${format.strength(abvPercent)}.`,
    jar_targets_unreached: (
      { abvPercent, sugarGPerL }: { readonly abvPercent: number; readonly sugarGPerL: number },
      format: Format,
    ) =>
      `Water and sugar cannot make ${format.plain(abvPercent, 1)} % vol with ${format.plain(sugarGPerL, 0)} g/L of this, as planned; ask for another strength or sweetness.`,
    /** What a jar was taken for. */
    jar_held: ({ name, ...now }: NowSaid & { readonly name: string }, format: Format) =>
      `I took the ${name} jar: ${nowText(now, format)}.`,
    jar_bottled_more: (
      { bottledMl, volumeMl }: { readonly bottledMl: number; readonly volumeMl: Measured },
      format: Format,
    ) =>
      `The bottles hold ${format.pour(bottledMl)}, but I reckoned with ${format.volume(volumeMl)}; if a number slipped, /jar correct puts it right.`,
    jar_sweetened_otherwise: (
      values: {
        readonly name: string
        readonly sugarG: number
        readonly waterMl: number
        /** More than twice as much, or less than half. */
        readonly isFarOff: boolean
      },
      format: Format,
    ) => {
      const { name, sugarG, waterMl, isFarOff } = values
      const [sugar, water] = [`${format.weigh(sugarG)} sugar`, `${format.pour(waterMl)} water`]
      const planned = sugarG === 0 ? water : waterMl === 0 ? `${sugar} and no water` : `${sugar} in ${water}`
      if (isFarOff) return `Planned were about ${planned}: typed right? /jar undo ${quoted(name)} takes it back.`
      return `The plan was ${planned}; if a number slipped, /jar undo ${quoted(name)} takes it back.`
    },
    jar_share_stands: ({ ids }: { readonly ids: readonly string[] }) =>
      ids.length === 1
        ? `Its share (${ids[0]}) still stands, so that others can make it; /share withdraw:${ids[0]} takes it back.`
        : `Its shares (${listed(ids)}) still stand, so that others can make it; /share withdraw: and the id takes one back.`,
    jar_note_swallowed: ({ text }: { readonly text: string }) =>
      `I kept ${noteText(text)} as part of the note, which takes the rest of the line; put it before note:.`,
    jar_usual_amount: (
      { plants }: { readonly plants: readonly { readonly id: string; readonly massG: Measured }[] },
      format: Format,
    ) =>
      `You did not say how much, so I took the usual ${listed(plants.map(({ id, massG }) => `${format.mass(massG)} ${plantName(id)}`))}.`,
    jar_bottled_left: ({ leftMl }: { readonly leftMl: Measured }, format: Format) =>
      `About ${format.volume(leftMl)} are not in bottles yet.`,
    jar_later_past: ({ name, lastDay }: { readonly name: string; readonly lastDay: IsoDay }, format: Format) =>
      `That is after the days for straining ${name}, the last of which is ${format.day(dayFromIso(lastDay))}.`,
    ...correctNotes,
    jar_no_targets: () => 'What it is to become was not planned; say the strength and sweetness you want.',
  },
  cautions: {
    jar_not_neat: (
      { abvPercent, isDiluted }: { readonly abvPercent: Measured; readonly isDiluted: boolean },
      format: Format,
    ) =>
      `${format.strength(abvPercent)}${isDiluted ? '' : ', undiluted'}: never drink it neat; it burns mouth and throat, and little of it is too much. Dilute it first, /dilute says with how much water.`,
    jar_sugar_crystallises: (
      { outcome: { abvPercent, sugarGPerL }, mostGPerL }: { readonly outcome: Sweet; readonly mostGPerL: number },
      format: Format,
    ) =>
      `${format.sweetness(sugarGPerL)} of sugar does not stay dissolved at ${format.strength(abvPercent)}; about ${format.number(mostGPerL, 0)} g/L does (known to about 10 %). Add water, or put right what was typed.`,
    caution_again: ({ names }: { readonly names: readonly (keyof typeof cautionNames)[] }) =>
      `As before: ${names.map((name) => cautionNames[name]).join('; ')}.`,
  },
  actions: {
    jar_sweeten: () => 'Once that is in',
    jar_syrup: () => 'Work out a syrup',
    jar_undo: () => 'Undo',
    jar_once_more: () => 'Once more',
    jar_as_planned: () => 'If it was as planned',
    jar_show_kept: () => 'Show it',
    jar_enter_again: () => 'Enter it again',
    jar_begin_again: () => 'Begin it again',
    jar_begin_another: () => 'Begin another',
    settings_zone: () => 'Keep it, or put yours there',
  },
}
