import { parseSymptoms } from '../../core/trouble/find-symptom.ts'
import { parseSigns } from '../../core/trouble/parse-signs.ts'
import { type Sign, signText } from '../../core/trouble/signs.ts'
import { type SymptomId, symptoms } from '../../core/trouble/symptoms.ts'
import { option } from './option.ts'

const writeSigns = (signs: readonly Sign[]): string => signs.map(signText).join(' + ')

/** What only troubles take. */
export const troubleOptions = {
  /** One, or several of one drink. */
  symptom: option({
    read: parseSymptoms,
    write: (ids: readonly SymptomId[]) => ids.map((id) => symptoms[id].en[0]!).join(' + '),
    suggested: 'symptom',
    isName: true,
  }),
  /** Questions that were answered alike. */
  signs: option({ read: parseSigns, write: writeSigns }),
}
