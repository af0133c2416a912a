import { actions } from './actions.ts'
import { botanicalSentences } from './botanical/botanical-sentences.ts'
import { cautions } from './cautions.ts'
import { emergencySentences } from './emergency/emergency-sentences.ts'
import { exportSentences } from './export-sentences.ts'
import { headlines } from './headlines.ts'
import { dangerSentences } from './jar/danger-sentences.ts'
import { jarViewSentences } from './jar/jar-view-sentences.ts'
import { nudgeSentences } from './jar/nudge-sentences.ts'
import { stepSentences } from './jar/step-sentences.ts'
import { labelSentences } from './label/label-sentences.ts'
import { servingSentences } from './label/serving-sentences.ts'
import { notes } from './notes.ts'
import { planSentences } from './plan/plan-sentences.ts'
import { remindersSentences } from './reminders-sentences.ts'
import { cells, rows } from './rows.ts'
import { settingsSentences } from './settings-sentences.ts'
import { codeSentences } from './share/code-sentences.ts'
import { shareSentences } from './share/share-sentences.ts'
import { spiritSentences } from './spirit-sentences.ts'
import { sure } from './sure.ts'

/** What replies say, by group and key. */
export const sentences = {
  headlines: {
    ...headlines,
    ...servingSentences.headlines,
    ...labelSentences.headlines,
    ...planSentences.headlines,
    ...botanicalSentences.headlines,
    ...settingsSentences.headlines,
    ...remindersSentences.headlines,
    ...nudgeSentences.headlines,
    ...jarViewSentences.headlines,
    ...stepSentences.headlines,
    ...exportSentences.headlines,
    ...shareSentences.headlines,
    ...emergencySentences.headlines,
  },
  rows: {
    ...rows,
    ...servingSentences.rows,
    ...labelSentences.rows,
    ...planSentences.rows,
    ...botanicalSentences.rows,
    ...settingsSentences.rows,
    ...remindersSentences.rows,
    ...jarViewSentences.rows,
    ...stepSentences.rows,
    ...shareSentences.rows,
    ...dangerSentences.rows,
    ...emergencySentences.rows,
  },
  cells: {
    ...cells,
    ...servingSentences.cells,
    ...labelSentences.cells,
    ...planSentences.cells,
    ...botanicalSentences.cells,
    ...settingsSentences.cells,
    ...remindersSentences.cells,
    ...jarViewSentences.cells,
    ...stepSentences.cells,
    ...shareSentences.cells,
    ...dangerSentences.cells,
    ...emergencySentences.cells,
  },
  sure: { ...sure, ...labelSentences.sure, ...planSentences.sure },
  notes: {
    ...notes,
    ...servingSentences.notes,
    ...labelSentences.notes,
    ...planSentences.notes,
    ...codeSentences.notes,
    ...botanicalSentences.notes,
    ...settingsSentences.notes,
    ...remindersSentences.notes,
    ...nudgeSentences.notes,
    ...jarViewSentences.notes,
    ...stepSentences.notes,
    ...exportSentences.notes,
    ...shareSentences.notes,
    ...dangerSentences.notes,
    ...spiritSentences.notes,
    ...emergencySentences.notes,
  },
  cautions: {
    ...cautions,
    ...servingSentences.cautions,
    ...labelSentences.cautions,
    ...planSentences.cautions,
    ...botanicalSentences.cautions,
    ...stepSentences.cautions,
    ...dangerSentences.cautions,
    ...spiritSentences.cautions,
  },
  actions: {
    ...remindersSentences.actions,
    ...actions,
    ...nudgeSentences.actions,
    ...servingSentences.actions,
    ...jarViewSentences.actions,
    ...stepSentences.actions,
    ...exportSentences.actions,
    ...shareSentences.actions,
    ...dangerSentences.actions,
  },
  /** What is in a file, for whoever cannot see it. */
  files: { ...exportSentences.files, ...shareSentences.files },
}
