import type { DangerKind } from '../../../../core/jar/limits/judge-jar.ts'
import type { Stage } from '../../../../core/jar/state/jar-state.ts'
import type { Measured } from '../../../../core/quantity/measured/measured.ts'
import { dayFromIso, type IsoDay } from '../../../../core/quantity/time/calendar-day.ts'
import type { Format } from '../../format.ts'
import { MONTHS } from '../day-text.ts'
import { dangerWords } from './danger-sentences.ts'
import { daysWords } from './day-words.ts'
import { type InJar, inJarText } from './in-jar-words.ts'
import { noteText } from './note-words.ts'

/** `Nov 2026`. */
export const monthWords = (iso: IsoDay): string => {
  const { year, month } = dayFromIso(iso)
  return `${MONTHS[month - 1]?.slice(0, 3)} ${year}`
}

interface Batch {
  readonly startedOn: IsoDay
  readonly stage: Stage
  readonly steepedDays: number | null
  /** Null where the jar holds nothing. */
  readonly made: { readonly volumeMl: Measured; readonly abvPercent: Measured; readonly sugarGPerL: Measured } | null
  readonly rating: number | null
  readonly danger: DangerKind | null
}

interface WholeBatch extends Batch {
  readonly inJar: InJar
  readonly notes: readonly string[]
}

const running = new Set<Stage>(['steeping', 'strained', 'sweetened', 'resting', 'ready'])

const stageText = ({ stage, steepedDays }: Batch): readonly string[] => [
  ...(running.has(stage) || stage === 'discarded' ? [stage] : []),
  ...(steepedDays === null ? [] : [`steeped ${daysWords(steepedDays)}`]),
]

const sweetText = (sugarGPerL: Measured, format: Format): readonly string[] =>
  sugarGPerL.value === 0 ? [] : [format.sweetness(sugarGPerL)]

const ratingText = (rating: number | null): readonly string[] => (rating === null ? [] : [`rated ${rating}`])

const dangerText = (danger: DangerKind | null): readonly string[] =>
  danger === null ? [] : [`! ${dangerWords[danger]}`]

const batchText = (batch: WholeBatch, format: Format): string => {
  const { startedOn, made, inJar, rating, notes, danger } = batch
  const sentences = [
    ...dangerText(danger),
    [monthWords(startedOn), ...stageText(batch)].join(', '),
    inJarText(inJar, format),
    ...(made === null
      ? []
      : [
          [
            `${format.volume(made.volumeMl)} at ${format.strength(made.abvPercent)}`,
            ...sweetText(made.sugarGPerL, format),
          ].join(', '),
        ]),
    ...ratingText(rating).map((text) => `${text} of 5`),
    ...notes.map(noteText),
  ]
  return sentences.join('; ')
}

/** What `/notebook` says. */
export const notebookSentences = {
  headlines: {
    notebook: ({ running, finished }: { readonly running: number; readonly finished: number }) => {
      const [now, past] = [running === 0 ? [] : [`${running} running`], finished === 0 ? [] : [`${finished} finished`]]
      return `Your batches, the newest first: ${[...now, ...past].join(', ')}.`
    },
    notebook_empty: () => 'Nothing is in the notebook yet; /jar start begins the first batch.',
  },

  rows: {
    batch: ({ name }: { readonly name: string }) => name,
  },

  cells: {
    batch: batchText,
    /** Where there are many. */
    batch_short: (batch: Batch, format: Format) =>
      [
        ...dangerText(batch.danger),
        monthWords(batch.startedOn),
        ...stageText(batch),
        ...(batch.made === null
          ? []
          : [format.strength(batch.made.abvPercent), ...sweetText(batch.made.sugarGPerL, format)]),
        ...ratingText(batch.rating),
      ].join(', '),
  },

  notes: {
    notebook_short: () => '/jar show and a name tells the whole story of one batch.',
  },

  actions: {
    notebook_compare: () => 'What differed between the last two',
  },
}
