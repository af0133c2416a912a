import { describe, expect, it } from 'vitest'
import type { Shelf } from '../shelves.ts'
import { talkerFor } from './told.ts'

const IN_US = '/plan of:8 lemons spirit:1 pint 190 proof'
const IN_METRIC = '/plan of:8 lemons spirit:1 l 95%'

async function toldAfter(after: string, text: string, shelf?: Shelf) {
  const one = await talkerFor({ after, ...(shelf !== undefined && { shelf }) })
  const before = await one.store.read('local')
  const { outcome, read } = await one.hear(text)
  if (!outcome.ok || !('reply' in outcome)) throw new Error(`${text}: ${JSON.stringify(outcome)}`)
  expect(await one.store.read('local')).toEqual(before)
  const { kitchen, data, headline } = outcome.reply
  return { read, kitchen, data: data as Readonly<Record<string, unknown>>, headline }
}

/** What is bought, each amount in a bottle or a bag of those units. Common practice, no source. */
describe('an answer that is wished in other measures is said again in them, and nothing is kept', () => {
  it.each([
    [IN_US, 'in ml and grams please', 'metric', 500],
    [IN_US, 'in metric', 'metric', 500],
    [IN_US, 'what is that in metric units?', 'metric', 500],
    [IN_US, 'could I have that in grams and millilitres', 'metric', 500],
    [IN_METRIC, 'in US units please', 'us', 355],
    [IN_METRIC, 'in cups and ounces', 'us', 355],
    [IN_METRIC, 'in tazze', 'us', 355],
  ] as const)('%s, then %s', async (after, text, units, bottleMl) => {
    const { read, kitchen, data } = await toldAfter(after, text)
    expect(read).toBe(after)
    expect(kitchen).toMatchObject(after === IN_US ? { volume: units, mass: units } : {})
    if (after === IN_METRIC) expect(kitchen).toBe(units)
    const [bottles] = data.bottles as readonly { readonly volumeMl: number }[]
    expect(bottles?.volumeMl).toBeCloseTo(bottleMl, 0)
  })

  it('shows a step of a jar by what comes next, or by the jar, and writes down nothing twice', async () => {
    const strained = '/jar strain lemon measured:930 ml strength:87%'
    expect(await toldAfter(strained, 'in cups please', 'lemon')).toMatchObject({
      read: '/syrup jar:lemon',
      kitchen: 'us',
    })
    const shaken = '/jar shake lemon'
    expect(await toldAfter(shaken, 'in ounces please', 'lemon')).toMatchObject({ read: '/jar show lemon' })
    expect(await toldAfter('/jar list', 'in cups please', 'lemon')).toMatchObject({ read: '/jar list' })
  })

  it('asks for no units of alcohol', async () => {
    const one = await talkerFor({ after: IN_METRIC })
    expect((await one.say('how many units in a glass of it')).call?.path).toBe('serving')
  })
})

it.each(['in cups please', 'in cups'])('tells all of a recipe, and what to buy for it: %s', async (said) => {
  const one = await talkerFor({ after: null })
  await one.say('900 g damsons and a litre of gin')
  for (const [line, path] of [
    [said, 'plan'],
    ['shopping list', 'shopping'],
  ] as const) {
    const { outcome } = await one.hear(line)
    expect(outcome.ok && 'reply' in outcome ? outcome : null).toMatchObject({ path })
    expect(JSON.stringify(outcome.ok && 'reply' in outcome ? outcome.reply.kitchen : null)).toMatch(/us/)
  }
})
