import { actions } from './actions.ts'
import { botanicalSentences } from './botanical/botanical-sentences.ts'
import { cautions } from './cautions.ts'
import { headlines } from './headlines.ts'
import { labelSentences } from './label/label-sentences.ts'
import { servingSentences } from './label/serving-sentences.ts'
import { notes } from './notes.ts'
import { planSentences } from './plan/plan-sentences.ts'
import { cells, rows } from './rows.ts'
import { sure } from './sure.ts'

/** What replies say, by group and key. */
export const sentences = {
  headlines: {
    ...headlines,
    ...servingSentences.headlines,
    ...labelSentences.headlines,
    ...planSentences.headlines,
    ...botanicalSentences.headlines,
  },
  rows: {
    ...rows,
    ...servingSentences.rows,
    ...labelSentences.rows,
    ...planSentences.rows,
    ...botanicalSentences.rows,
  },
  cells: {
    ...cells,
    ...servingSentences.cells,
    ...labelSentences.cells,
    ...planSentences.cells,
    ...botanicalSentences.cells,
  },
  sure: { ...sure, ...labelSentences.sure, ...planSentences.sure },
  notes: {
    ...notes,
    ...servingSentences.notes,
    ...labelSentences.notes,
    ...planSentences.notes,
    ...botanicalSentences.notes,
  },
  cautions: {
    ...cautions,
    ...servingSentences.cautions,
    ...labelSentences.cautions,
    ...planSentences.cautions,
    ...botanicalSentences.cautions,
  },
  actions: { ...actions, ...servingSentences.actions },
}
