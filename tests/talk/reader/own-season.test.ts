import { expect, it } from 'vitest'
import { talker } from './told.ts'

const SLOES = '/jar start sloes of:450 g sloes spirit:700 ml gin 40% sugar:200 g when:2026-09-01'
const GINGER = '/jar start ginger of:150 g ginger spirit:700 ml vodka 40% when:2026-09-01'

async function season(...lines: readonly string[]) {
  const maker = talker()
  for (const line of lines) await maker.hear(line)
  return maker
}

it.each(['gave a bottle to my neighbour', 'one bottle went to my aunt as a present', 'opened a bottle with friends'])(
  '%s: is no number of bottles that were filled',
  async (line) => {
    const maker = await season(GINGER, 'strained the ginger, 650 ml', 'done', 'tasted it, 4 out of 5, a bit fiery')
    // How many it filled is asked.
    expect((await maker.say('bottled it')).code).toBe('question')
    const { read, recorded } = await maker.say(line)
    expect(read ?? '').not.toMatch(/^\/jar bottle/)
    expect(recorded).toBe(0)
  },
)

it('offers the bottles next where nothing is to be added', async () => {
  const maker = await season(SLOES)
  const { outcome } = await maker.hear('/jar strain sloes measured:780 ml')
  const offered = outcome.ok && 'reply' in outcome ? outcome.reply.actions.map(({ label }) => label.key) : []
  expect(offered[0]).toBe('jar_bottle')
})

it.each([
  ['the chilli is hot enough', false],
  ['the chilli is spicy enough for me', false],
  ['the chilli is too hot', true],
])('%s: is a trouble: %s', async (line, isTrouble) => {
  const maker = await season('/jar start chilli of:2 dried chillies spirit:700 ml vodka 40%')
  expect((await maker.say(line)).command === 'trouble').toBe(isTrouble)
})

it('calls a London dry a gin, and no dry liqueur', async () => {
  const { read } = await (await season()).say('a bottle of London dry and 400 g of blackberries')
  expect(read).toContain('london dry')
  expect(read).not.toContain('to-sweetness')
})
