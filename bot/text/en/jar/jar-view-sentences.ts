import { againSentences } from './again-sentences.ts'
import { compareSentences } from './compare-sentences.ts'
import { forgetSentences } from './forget-sentences.ts'
import { listSentences } from './list-sentences.ts'
import { notebookSentences } from './notebook-sentences.ts'
import { showSentences } from './show-sentences.ts'

/** What is said when jars and batches are looked at. */
export const jarViewSentences = {
  headlines: {
    ...listSentences.headlines,
    ...showSentences.headlines,
    ...notebookSentences.headlines,
    ...compareSentences.headlines,
    ...forgetSentences.headlines,
  },
  rows: { ...listSentences.rows, ...showSentences.rows, ...notebookSentences.rows, ...compareSentences.rows },
  cells: { ...listSentences.cells, ...showSentences.cells, ...notebookSentences.cells, ...compareSentences.cells },
  notes: {
    ...listSentences.notes,
    ...showSentences.notes,
    ...notebookSentences.notes,
    ...forgetSentences.notes,
    ...againSentences.notes,
  },
  actions: { ...listSentences.actions, ...notebookSentences.actions, ...forgetSentences.actions },
}
