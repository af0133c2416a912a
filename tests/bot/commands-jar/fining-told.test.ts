import { expect, it } from 'vitest'
import { testDesk } from '../test-desk.ts'

const strained = async () => {
  const desk = testDesk({ width: 100 })
  await desk.textOf('/jar start of:1 kg plums spirit:1 l 40% name:plum when:1 nov')
  await desk.textOf('/jar strain plum measured:900 ml')
  return desk
}

const entries = async (desk: ReturnType<typeof testDesk>) => await desk.textOf('/jar show plum')

it('asks what it was fined with where nobody knows the agent, or none is named, and records nothing before', async () => {
  const desk = await strained()
  expect(await desk.textOf('fined the plum with pixie dust')).toContain('pixie dust')
  expect(await entries(desk)).not.toContain('fined')
  expect(await desk.textOf('I racked the plum and fined it')).toBe(
    'What was it fined with? You can type: /jar filter plum racked:yes fining:egg white',
  )
  expect(await entries(desk)).not.toMatch(/fined|racked/)
  await desk.textOf('/jar filter plum fining:with isinglass')
  expect(await entries(desk)).toMatch(/fined with isinglass/)
})

it('records what a straining is told with apart, so that the egg is kept', async () => {
  const desk = testDesk({ width: 100 })
  await desk.textOf('/jar start of:1 kg plums spirit:1 l 40% name:plum when:1 nov')
  await desk.textOf('strained the plum, 900 ml, and fined it with egg white')
  const text = await entries(desk)
  expect(text).toMatch(/strained/)
  expect(text).toMatch(/fined with egg white/)
})
