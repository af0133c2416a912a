import { expect, it, test } from 'vitest'
import { talker } from './told.ts'

/** A jar that was planned for bottles, and another by its spirit; both are bottled. */
const BY_BOTTLES = [
  '/jar start plum of:2 lb plums strength:80 proof bottles:4',
  '/jar start lime of:10 limes spirit:1 fifth 151 proof rum',
]

const begun = async (...lines: readonly string[]) => {
  const one = talker()
  for (const line of lines) await one.say(line)
  return one
}

test.each([
  ['shopping list for 2 of the lime', '/again lime spirit:2 fifth 151 proof rum'],
  ['what do I need to buy for three more of the lime?', '/again lime spirit:3 fifth 151 proof rum'],
  ['shopping list for two jars of the plum', '/again plum bottles:8'],
  ['make the lime again but double', '/again lime spirit:2 fifth 151 proof rum'],
  ['make the plum again, twice as much', '/again plum bottles:8'],
  ['make the plum again but half', '/again plum bottles:2'],
])('“%s” is twice, or as often, what was planned', async (said, read) => {
  expect((await (await begun(...BY_BOTTLES)).say(said)).read).toBe(read)
})

it('is of the jar that was spoken of, not of a plan before it', async () => {
  const one = await begun(
    '/jar start lime of:10 limes spirit:1 fifth 151 proof rum',
    '6 lemons and 700 ml vodka',
    '/jar strain lime measured:3 cups',
    '/jar sweeten lime sugar:6 oz water:2 cups',
    '/jar bottle lime bottles:2 x 12 fl oz',
  )
  expect((await one.say('make it again but double')).read).toBe('/again lime spirit:2 fifth 151 proof rum')
})

it('and of bottles in which nothing was told of their size, in those of its kitchen', async () => {
  const one = await begun('/jar start plum of:2 lb plums strength:80 proof bottles:4')
  const { outcome } = await one.hear('/again plum bottles:8')
  const data = outcome.ok && 'reply' in outcome ? outcome.reply.data : {}
  // 12 fl oz is 354.9 ml (NIST Handbook 44).
  expect(data.bottles).toMatchObject([{ count: 8, volumeMl: expect.closeTo(354.88, 1) }])
})

test.each(['something with bourbon', 'anything nice with rum', 'ideas for gin', 'qualcosa con la grappa'])(
  '“%s” behind a plan is asked of the spirit, not of the last fruit',
  async (said) => {
    const one = await begun('12 oranges and a litre of vodka')
    const { outcome } = await one.hear(said)
    expect(outcome.ok && outcome.path === 'handbook' && 'reply' in outcome && outcome.reply.data.entry).toBe(
      'brown_spirit',
    )
  },
)

test('the same with another spirit is the same', async () => {
  const one = await begun('12 oranges and a litre of vodka')
  expect((await one.say('with bourbon instead')).read).toMatch(/^\/plan of:12 oranges spirit:1 litre bourbon/)
})
