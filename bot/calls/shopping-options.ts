import { LONGEST_CODE } from '../../core/recipe/code/batch-code.ts'
import type { Have } from '../../core/shopping/have.ts'
import { parseHave } from '../../core/shopping/parse-have.ts'
import { option } from './option.ts'
import { PLANTS } from './quantity-options.ts'
import { parseSharedCode, sharedCode } from './share-ref.ts'

const readCodes = (text: string) => text.split('+').map(parseSharedCode)

/** What only shopping takes. */
export const shoppingOptions = {
  /** Batches' codes, joined with `+`. */
  codes: option({
    read: readCodes,
    write: (codes) => codes.map(sharedCode).join(' + '),
    most: 8 * LONGEST_CODE,
  }),
  have: option({
    read: parseHave,
    write: (have: readonly Have[]) => have.map(({ typed }) => typed).join(' + '),
    ...PLANTS,
  }),
}
