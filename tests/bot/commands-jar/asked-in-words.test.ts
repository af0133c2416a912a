import { expect, it, test } from 'vitest'
import { jarDesk } from './desk.ts'

async function oneJar() {
  const desk = jarDesk('2026-08-01')
  await desk.ask('/jar start lemon of:10 lemons spirit:1 l 95%')
  return desk
}

// Typed as makers say it; from memory.
test.each(['took it out of the freezer', 'took the bottle out of the freezer', 'l’ho tolto dal freezer'])(
  'records no straining of what only came out of the cold: %s',
  async (said) => {
    const desk = await oneJar()
    await desk.textOf(said)
    expect((await desk.storyOf('lemon')).happened.map(({ kind }) => kind)).toEqual(['started'])
  },
)

it('still hears of a straining', async () => {
  const desk = await oneJar()
  await desk.textOf('took the peels out')
  expect((await desk.storyOf('lemon')).strained).not.toBeNull()
})

test.each([
  ['what should I drink first?', '/bottles'],
  ['which bottle should be drunk first', '/bottles'],
  ['cosa bevo prima?', '/bottles'],
  ['how long does the lemon keep?', '/keeping lemon'],
  ['how long will my lemon last', '/keeping lemon'],
])('reads “%s” as %s', async (said, line) => {
  expect((await (await oneJar()).textOf(said)).replaceAll('\u00a0', ' ')).toContain(`read as ${line}`)
})
