import { expect, test } from 'vitest'
import { testDesk } from '../../bot/test-desk.ts'
import { talkerFor } from './told.ts'

test('loose words are read, an option with a name is never taken for another', async () => {
  const { data, error } = await testDesk().jsonOf('/plan 10 lemons in a litre of vodka to-strength:24%')
  expect(error).toBeUndefined()
  expect(data).toMatchObject({ abvPercent: expect.closeTo(24, 6), spiritMl: expect.closeTo(1000, 3) })
})

test.each([
  '/syrup 1 l strength:90% to-sweetness:25%',
  'syrup 1 l strength:90% to-sweetness:25%',
  'dilute 1 l 95% to -5%',
  'dilute -1 l of 95% to 30%',
])('%s is not answered', async (line) => {
  expect((await testDesk().jsonOf(line)).error).toBeDefined()
})

test.each([
  ['/jar strain lemon 930 ml 87%', '/jar strain lemon measured:930 ml strength:87%'],
  ['/jar taste lemon 4', '/jar taste lemon rating:4'],
])('%s is done, not only offered', async (line, read) => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  expect(await one.say(line)).toMatchObject({ read, code: null, recorded: 1 })
})

test('what is done as it was typed is not read and done once more', async () => {
  const one = await talkerFor({ after: null, shelf: 'lemon' })
  const { update } = one.store
  let updates = 0
  one.store.update = (...asked) => {
    updates++
    return update(...asked)
  }
  expect(await one.say('/jar strain lemon measured:930 ml 87%')).toMatchObject({ code: null, recorded: 1 })
  expect(updates).toBe(1)
})
