import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const STARTED = '/jar start raspberry of:500 g raspberries spirit:700 ml vodka 40%'

it.each(['strained the raspberry and it smells like acetone', 'strained the raspberry, and there’s mould on it'])(
  'warns before it confirms what was written down: %s',
  async (sentence) => {
    const desk = testDesk()
    await desk.run(STARTED)
    const told = await desk.firstOf(sentence)
    const warned = told.search(/Don’t (?:taste|drink or bottle) it(?: yet)?:/)
    expect(warned).toBeGreaterThan(-1)
    expect(told.indexOf('Raspberry is strained')).toBeGreaterThan(warned)
  },
)

it('keeps the order where nothing is wrong', async () => {
  const desk = testDesk()
  await desk.run(STARTED)
  const told = await desk.firstOf('shook the raspberry and tasted it, a 4')
  expect(told.indexOf('is shaken')).toBeGreaterThan(-1)
  expect(told.indexOf('4 of 5')).toBeGreaterThan(told.indexOf('is shaken'))
})
