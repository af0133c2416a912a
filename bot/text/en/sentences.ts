import { actions } from './actions.ts'
import { cautions } from './cautions.ts'
import { headlines } from './headlines.ts'
import { labelSentences } from './label/label-sentences.ts'
import { servingSentences } from './label/serving-sentences.ts'
import { notes } from './notes.ts'
import { cells, rows } from './rows.ts'
import { sure } from './sure.ts'

/** What replies say, by group and key. */
export const sentences = {
  headlines: { ...headlines, ...servingSentences.headlines, ...labelSentences.headlines },
  rows: { ...rows, ...servingSentences.rows, ...labelSentences.rows },
  cells: { ...cells, ...servingSentences.cells, ...labelSentences.cells },
  sure: { ...sure, ...labelSentences.sure },
  notes: { ...notes, ...servingSentences.notes, ...labelSentences.notes },
  cautions: { ...cautions, ...servingSentences.cautions, ...labelSentences.cautions },
  actions: { ...actions, ...servingSentences.actions },
}
