import { planCautions } from './plan-cautions.ts'
import { planHeadlines } from './plan-headline.ts'
import { planNotes, planSure } from './plan-notes.ts'
import { planCells, planRows } from './plan-rows.ts'
import { planUnknownCautions, planUnknownHeadlines, planUnknownNotes } from './plan-unknown.ts'

/** What `/plan` says, by group. */
export const planSentences = {
  headlines: { ...planHeadlines, ...planUnknownHeadlines },
  rows: planRows,
  cells: planCells,
  sure: planSure,
  notes: { ...planNotes, ...planUnknownNotes },
  cautions: { ...planCautions, ...planUnknownCautions },
}
