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
  expect(await (await oneJar()).textOf(said)).toContain(`read as ${line}`)
})

test.each([
  ['try 50 ml with 4 g sugar', '/adjust jar:lemon glass:50 ml glass-sugar:4 g'],
  ['i tried 50 ml with 4 g of sugar', '/adjust jar:lemon glass:50 ml glass-sugar:4 g'],
  ['try 50 ml with 5 ml water', '/adjust jar:lemon glass:50 ml glass-water:5 ml'],
  ['prova 50 ml con 4 g di zucchero', '/adjust jar:lemon glass:50 ml glass-sugar:4 g'],
])('reads “%s” as a trial in a glass, scaled up to the jar and recorded as one entry', async (said, line) => {
  const desk = await oneJar()
  desk.at('2026-08-20')
  await desk.ask('/jar strain lemon measured:930 ml')
  await desk.ask('/jar sweeten lemon sugar:300 g water:1.5 l')
  const text = await desk.textOf(said)
  expect(text).toContain(`read as ${line}`)
  const done = /(\/jar add lemon \S.*?)(?: {3}|$)/m.exec(text)![1]!
  await desk.ask(done.trim())
  expect((await desk.storyOf('lemon')).happened.at(-1)?.kind).toBe('added')
})
