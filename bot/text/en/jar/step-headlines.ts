import type { Happening, HappeningEntry, HappeningKind, Started } from '../../../../core/jar/entry/entry.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import { quoted } from '../../../chat/grammar/write-line.ts'
import type { Format } from '../../format.ts'
import { headlines } from '../headlines.ts'
import { listed } from '../phrases.ts'
import { didWords } from './did-words.ts'
import { happeningText, ingredientsText, untilText } from './happening-words.ts'
import { plantInText } from './in-jar-words.ts'

/** With its year, so that a day typed without one can be checked; nothing where it is today. */
const onDayText = (day: IsoDay | null, format: Format): string =>
  day === null ? '' : ` on ${format.day(dayFromIso(day))}`

/** When something was, null where that is today. */
interface Late {
  readonly day: IsoDay | null
}

interface Recorded extends Late {
  readonly name: string
  readonly happening: Happening | HappeningEntry
}

/** An option of an entry, as it was typed before and is now, of `when` the day; null where nothing was. */
export interface Corrected {
  readonly option: string
  readonly was: string | null
  readonly now: string
}

/** What goes in at once, without the plants of later days. */
const firstDay = (started: Started): Started => ({
  ...started,
  plants: started.plants.filter(({ addOn }) => addOn === null),
})

/** `; add 80 g coffee beans, whole on 17 September 2026`; empty where nothing goes in later. */
const laterText = ({ plants }: Started, format: Format): string => {
  const later = plants.flatMap((plant) => (plant.addOn === null ? [] : [{ ...plant, addOn: plant.addOn }]))
  const days = [...new Set(later.map(({ addOn }) => addOn))].sort()
  return days
    .map((day) => {
      const names = later.filter(({ addOn }) => addOn === day).map((plant) => plantInText(plant, format))
      return `; add ${listed(names)} on ${format.day(dayFromIso(day))}`
    })
    .join('')
}

const correctedText = ({ option, was, now }: Corrected, format: Format): string => {
  const said = (text: string) => (option === 'when' ? format.day(dayFromIso(text)) : text)
  return was === null
    ? `${option}: ${said(now)}, where nothing was said`
    : `${option}: ${said(now)}, no longer ${said(was)}`
}

const keptText = ({ kind }: Happening, name: string): string => {
  if (kind === 'discarded') return `; it stays in /notebook, and /jar undo ${quoted(name)} takes it back`
  return kind === 'emptied' ? '; it stays in /notebook' : ''
}

/** First lines after something was recorded of a jar: which jar, what, and when if that is not today. */
export const stepHeadlines = {
  jar_started: ({ name, day, started }: Late & { readonly name: string; readonly started: Started }, format: Format) =>
    `${name}: started${onDayText(day, format)}. Put in ${ingredientsText(firstDay(started), format)}${laterText(started, format)}.`,
  jar_recorded: ({ name, happening, day }: Recorded, format: Format) =>
    `${name}: ${happeningText(happening, format, onDayText(day, format))}${keptText(happening, name)}.`,
  jar_strained: (
    { name, happening, day, syrup }: Recorded & { readonly syrup: Parameters<typeof headlines.syrup>[0] | null },
    format: Format,
  ) =>
    `${name}: ${happeningText(happening, format, onDayText(day, format))}.` +
    (syrup === null ? '' : ` ${headlines.syrup(syrup, format)}`),
  jar_renamed: ({ before, name }: { readonly before: string; readonly name: string }) =>
    `“${before}” is now “${name}”.`,
  jar_all_shaken: ({ names, day }: Late & { readonly names: readonly string[] }, format: Format) =>
    `Shaken${onDayText(day, format)}: ${listed(names)}.`,
  jar_all_put_off: (
    { names, ...until }: { readonly names: readonly string[] } & Parameters<typeof untilText>[0],
    format: Format,
  ) => `Quiet until ${untilText(until, format)}: ${listed(names)}.`,
  jar_already: (
    { names, kind, day }: Late & { readonly names: readonly string[]; readonly kind: HappeningKind },
    format: Format,
  ) =>
    `${listed(names)}: recorded as ${didWords[kind]}${day === null ? ' today' : onDayText(day, format)} already; nothing changed.`,
  jar_open_since: ({ name, day }: Late & { readonly name: string }, format: Format) =>
    `${name} is open already, since ${day === null ? 'today' : format.day(dayFromIso(day))}; nothing changed.`,
  jar_moved_on: ({ name }: { readonly name: string }) =>
    `${name} has moved on since that line was made for it, so nothing was recorded.`,
  jar_same_again: ({ name, happening, day }: Recorded, format: Format) =>
    `${name}: it was ${happeningText(happening, format)}${day === null ? ' today' : onDayText(day, format)} already, so I recorded nothing; did you really do it twice?`,
  jar_begun_again: ({ name, day }: Late & { readonly name: string }, format: Format) =>
    `${name} was begun just so${day === null ? ' today' : onDayText(day, format)} already, so I began no other.`,
  jar_corrected: (
    values: {
      readonly name: string
      /** Where it was named by its number. */
      readonly entry: number | null
      readonly kind: HappeningKind
      readonly changes: readonly Corrected[]
      /** Worked out anew; null where none is wanted. */
      readonly syrup: Parameters<typeof headlines.syrup>[0] | null
    },
    format: Format,
  ) =>
    `${values.name}, ${values.entry === null ? didWords[values.kind] : `entry ${values.entry} (${didWords[values.kind]})`}: ${values.changes.map((change) => correctedText(change, format)).join('; ')}.` +
    (values.syrup === null ? '' : ` ${headlines.syrup(values.syrup, format)}`),
  /** Without a happening: what was taken back is a correction. */
  jar_undone: (values: Late & { readonly name: string; readonly happening: Happening | null }, format: Format) => {
    const { name, happening, day } = values
    const when = onDayText(day, format)
    const what = happening === null ? `the correction${when}` : happeningText(happening, format, when)
    return `${name}: taken back: ${what}.`
  },
  jar_all_undone: (
    { names, happening }: { readonly names: readonly string[]; readonly happening: Happening | null },
    format: Format,
  ) => `${listed(names)}: taken back${happening === null ? '' : `: ${happeningText(happening, format)}`}.`,
  jar_kept_after_all: ({ names }: { readonly names: readonly string[] }) =>
    `That was kept after all${names.length === 0 ? '' : `: ${listed(names)}`}. I haven't written it twice. If you did it again, say it once more.`,
  jar_undone_before: ({ names }: { readonly names: readonly string[] }) =>
    `${listed(names)}: that is taken back already; nothing changed.`,
  jar_undo_held: ({ names }: { readonly names: readonly string[] }) =>
    `${listed(names)}: another entry was made since, so nothing was taken back; /jar undo and the name takes back the last one.`,
  jar_gone: ({ name }: { readonly name: string }) =>
    `${name}: its start is taken back, so the jar is gone; /jar start begins it again.`,
}
