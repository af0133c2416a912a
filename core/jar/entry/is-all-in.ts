import { isRefused } from '../../domain-error.ts'
import { parseYesNo } from '../../recipe/plan/parse-answers.ts'
import type { Entry } from './entry.ts'

/** Whether a jar was begun with everything in at once, at its maker's word. */
export const isAllIn = ({ typed }: Pick<Entry, 'typed'>): boolean =>
  typed.some(([option, text]) => option === 'all-in' && !isRefused(() => parseYesNo(text)) && parseYesNo(text))
