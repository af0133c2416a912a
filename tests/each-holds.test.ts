import { expect, it } from 'vitest'
import { eachHolds } from './each-holds.ts'

it('names all that fail, and an empty list fails', async () => {
  const isSmall = (number: number): void => {
    if (number > 2) throw new Error(`more than two\nat all`)
  }
  await eachHolds([1, 2], String, isSmall)
  await expect(eachHolds([1, 3, 2, 4], String, isSmall)).rejects.toThrow(/3: more than two[\s\S]*4: more than two/)
  await expect(eachHolds([], String, isSmall)).rejects.toThrow()
})
