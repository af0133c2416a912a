import { describe, expect, it } from 'vitest'
import { findPlants } from '../../../core/recipe/plan/find-plants.ts'

const only = (text: string) => findPlants(text)[0]!

describe('citrus by its weight', () => {
  // Whole fruit as the catalogue's rows have them: a lemon 85 to 150 g, an orange 96 to 184 g, a lime 67 g.
  it.each([
    ['1 kg lemons', 9],
    ['1 kg di limoni', 9],
    ['2 lb oranges', 6],
    ['5 kg oranges', 36],
    ['1 kg limes', 15],
  ])('is that of whole fruit, whose peel goes in: %s', (text, count) => {
    const plant = only(text)
    expect(plant).toMatchObject({ count, ofZest: true })
    expect(plant.massG).toEqual(only(`${count} ${plant.botanical.names.en[0]}`).massG)
    expect(plant.typed.amount?.assumed).toContain('whole_fruit')
  })

  it.each(['1 kg lemon peel', '1 kg scorza di limone', '300 g lemon zest', '1 kg orange rind'])(
    'is that of the peel where the peel was named: %s',
    (text) => {
      expect(only(text)).toMatchObject({ count: null, ofZest: false })
    },
  )

  it('is that of the peel where two of the largest fruit weigh more', () => {
    expect(only('299 g lemons')).toMatchObject({ count: null, massG: { value: 299 } })
    expect(only('300 g lemons')).toMatchObject({ count: 3 })
  })

  it('is as it was of what is no citrus', () => {
    expect(only('1 kg sloes')).toMatchObject({ count: null, massG: { value: 1000 } })
  })
})
