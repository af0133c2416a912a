import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('a recipe that is pasted line by line', () => {
  it.each([
    [
      ['Gran’s cherry cordial', '3 lbs sour cherries', '4 cups bourbon', '1 1/4 cups sugar', 'let it sit 8 weeks'],
      '/plan of:3 lbs sour cherries spirit:4 cups bourbon 40% sugar:1 1/4 cups days:8 weeks',
    ],
    [['500 g plums', '100 g sugar', 'a fifth of brandy'], '/plan of:500 g plums sugar:100 g spirit:1 fifth brandy 40%'],
    [['9 oranges', '4 cloves', 'a litre of vodka'], '/plan of:9 oranges + 4 cloves spirit:1 litre vodka 40%'],
    [
      ['450 g sloes', '1 l gin', '3 months', '200 g sugar'],
      '/plan of:450 g sloes spirit:1 l gin 40% days:3 months sugar:200 g',
    ],
    [['9 limoni', '1 l alcol 95%', '600 g zucchero'], '/plan of:9 limoni spirit:1 l 95% sugar:600 g'],
  ])('%j', async (lines, read) => {
    const one = await talkerFor({ after: null })
    for (const line of lines.slice(0, -1)) await one.say(line)
    expect(await one.say(lines.at(-1)!)).toMatchObject({ read, code: null, recorded: 0 })
  })

  it('a pinch goes to the plan that is there', async () => {
    const one = await talkerFor({ after: null })
    await one.say('500 g pears in a litre of brandy')
    expect((await one.say('a pinch of cinnamon')).read).toMatch(/^\/plan of:500 g pears \+ .*cinnamon spirit:1 litre/)
  })

  it('a plant with its amount behind a whole plan is a plan of its own, and a question is no line of a recipe', async () => {
    const one = await talkerFor({ after: null })
    await one.say('500 g pears in a litre of brandy')
    expect((await one.say('how much sugar?')).read ?? '').not.toContain('sugar:')
    expect((await one.say('3 kg damsons')).read ?? '').not.toContain('pears + 3 kg damsons')
  })
})
