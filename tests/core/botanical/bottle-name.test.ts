import { describe, expect, it } from 'vitest'
import { readDrink } from '../../../core/botanical/drink/read-drink.ts'
import { refusal } from '../quantity/refusal.ts'

const named = (words: string): string | null => readDrink(`${words} gin`, { water: false }).named
const ASKS = 'ambiguous unknown_drink'

// Common practice, no source: what stands on a bottle is short.
describe('what stands before a drink is the name on its bottle', () => {
  it('in four words, not in five', () => {
    expect(named('Allotment Pride Fairmead Winthorpe')).toBe('Allotment Pride Fairmead Winthorpe')
    expect(refusal(() => named('Allotment Pride Fairmead Winthorpe Garrick'))).toBe(ASKS)
  })

  it('in 40 letters, not in 41', () => {
    const name = 'Allotment pridewinterfairoldreservegarde'
    expect(name).toHaveLength(40)
    expect(named(name)).toBe(name)
    expect(refusal(() => named(`${name}n`))).toBe(ASKS)
  })

  it('unless it is two slips from an undrinkable word of nine letters, or one from a shorter one', () => {
    // Household, with two slips; basement, with one and with two.
    expect(refusal(() => named('Hounehald'))).toBe(ASKS)
    expect(refusal(() => named('Basemint'))).toBe(ASKS)
    expect(named('Bacemint')).toBe('Bacemint')
  })
})
