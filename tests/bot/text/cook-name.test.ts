import { expect, it } from 'vitest'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { findBotanical } from '../../../core/botanical/find/find.ts'

it('what a cook calls a plant can be typed, and holds no comma or bracket', () => {
  for (const { id } of catalogue) {
    const name = cookName(id)
    expect(name).not.toMatch(/[(),]/)
    expect([name, findBotanical(name).botanical.id]).toEqual([name, id])
  }
})

it('keeps the capital of a name', () => {
  expect(cookName('earl_grey')).toBe('Earl Grey tea')
  expect(cookName('star_anise')).toBe('star anise')
  expect(cookName('chilli_dried')).toBe('dried chilli')
})
