import { expect, it } from 'vitest'
import { fruitSlip } from '../../../core/botanical/find/fruit-slip.ts'

// Slips as people type them; no source.
it.each([
  ['lemmons', 'lemons'],
  ['limmes', 'limes'],
  ['peches', 'peaches'],
  ['peeches', 'peaches'],
  ['aplles', 'apples'],
  ['aples', 'apples'],
  ['grappes', 'grapes'],
  ['limni', 'limoni'],
  ['melle', 'mele'],
])('takes %s for %s', (typed, name) => expect(fruitSlip(typed)?.name).toBe(name))

// Other words and names, and what is near a poison's name.
it.each(
  'lemons lemurs perches peers pesce plumbs gripes pairs slows soles lemony yews laurells laurels hemlok hemlock privett daffodill fraagola cokeberry morelle lims cherubs beans'.split(
    ' ',
  ),
)('takes %s for no fruit', (typed) => expect(fruitSlip(typed)).toBeNull())
