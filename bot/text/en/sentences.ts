import { actions } from './actions.ts'
import { cautions } from './cautions.ts'
import { headlines } from './headlines.ts'
import { notes } from './notes.ts'
import { cells, rows } from './rows.ts'
import { sure } from './sure.ts'

/** What replies say, by group and key. */
export const sentences = { headlines, rows, cells, sure, notes, cautions, actions }
