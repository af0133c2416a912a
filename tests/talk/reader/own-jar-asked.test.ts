import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('asked of a jar that stands there', () => {
  it.each([
    ['when can we drink this?', 'lemon', '/jar show lemon'],
    ['how soon is it drinkable', 'lemon', '/jar show lemon'],
    ['so when will the sloe be ready to drink', 'fair', '/jar show sloe'],
    ['quando possiamo berlo?', 'lemon', '/jar show lemon'],
    ['how much syrup do I need', 'lemon_strained', '/syrup jar:lemon'],
    ['what’s the syrup for it', 'lemon_strained', '/syrup jar:lemon'],
    ['how much water for this one', 'lemon_strained', '/syrup jar:lemon'],
    ['ok how much sugar goes in', 'fair', '/syrup jar:lemon'],
    ['quanto sciroppo serve', 'lemon_strained', '/syrup jar:lemon'],
    ['how much sugar and water?', 'lemon', '/syrup jar:lemon'],
    ['how much syrup will I need later', 'lemon', '/syrup jar:lemon'],
    ['what will I need for the syrup', 'lemon', '/syrup jar:lemon'],
    ['how many cups of sugar', 'lemon', '/syrup jar:lemon'],
    ['how much sugar for the sloe', 'fair', '/syrup jar:sloe'],
    ['quanto zucchero ci vorrà', 'lemon', '/syrup jar:lemon'],
  ] as const)('%s', async (text, shelf, read) => {
    const one = await talkerFor({ after: null, shelf })
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 0 })
  })

  it('asks which where there are several', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    one.wait(40)
    expect(await one.say('when can I drink it')).toMatchObject({
      code: 'question',
      choices: ['/jar show lemon', '/jar show ginger'],
    })
  })

  it('asks of which of two that steep the syrup is', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    one.wait(40)
    expect((await one.say('how much sugar and water?')).choices).toEqual(['/syrup jar:lemon', '/syrup jar:ginger'])
    expect((await one.say('the ginger')).read).toBe('/syrup jar:ginger')
  })

  it('means the jar that was spoken of', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('shook the ginger')
    expect((await one.say('how much sugar and water do I need')).read).toBe('/syrup jar:ginger')
  })

  it('takes the plan that is open rather than a jar', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
    await one.say('/plan of:3 oranges spirit:1 l 40%')
    expect((await one.say('how much sugar')).read).toBe('/plan of:3 oranges spirit:1 l 40%')
    expect((await one.say('how much sugar for the lemon')).read).toBe('/syrup jar:lemon')
  })

  it.each([
    'when can I drink alcohol after antibiotics',
    'how much sugar in 2 l of water at 30%',
    'how much sugar does honey have',
  ])('is nothing of the jar: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_strained' })
    expect((await one.say(text)).read ?? '').not.toMatch(/jar:lemon|show lemon/)
  })
})

describe('an example of its own', () => {
  it.each(['sure', 'yes', 'sure?'])('is not run by a nod, and not remembered: %s', async (text) => {
    const one = await talkerFor({ after: null })
    await one.say('what’s on?')
    expect((await one.say(text)).command).not.toBe('plan')
    expect((await one.say('drier')).command).not.toBe('plan')
  })

  it.each(['sure?', 'are you sure?', 'really?', 'sicuro?'])('is doubted by its mark: %s', async (text) => {
    const one = await talkerFor({ after: null })
    await one.say('/plan of:3 oranges spirit:1 l 40%')
    expect(await one.say(text)).toMatchObject({ read: '/plan of:3 oranges spirit:1 l 40%', code: null, recorded: 0 })
  })
})

describe('said with nothing else', () => {
  it.each(['how much', 'and how long?', 'per quanto'])('is asked of what was spoken of last: %s', async (text) => {
    const planned = await talkerFor({ after: null, shelf: 'fair' })
    await planned.say('/plan of:3 oranges spirit:1 l 40%')
    expect((await planned.say(text)).read).toBe('/plan of:3 oranges spirit:1 l 40%')
    const shown = await talkerFor({ after: null, shelf: 'fair' })
    await shown.say('/jar show sloe')
    expect((await shown.say(text)).read).toBe('/jar show sloe')
  })

  it.each(['ok', 'sure', 'great'])('rates nothing by a nod: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('/jar show sloe')
    expect(await one.say(text)).toMatchObject({ recorded: 0 })
  })

  it('leaves a question open over a nod', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('remind me on friday')
    await one.say('hello')
    expect(await one.say('the lemon')).toMatchObject({ read: '/jar later lemon until:friday', recorded: 1 })
  })
})

describe('somebody else who wants the recipe', () => {
  it.each([
    'my neighbour wants the recipe for the raspberry',
    'Bea asked for the raspberry recipe',
    'mia zia vuole la ricetta del lampone',
  ])('is told the line that shares it, and nothing is shared: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    const told = await one.say(text)
    expect(told).toMatchObject({ code: 'question', choices: ['/share raspberry'], recorded: 0 })
    expect((await one.store.read('local')).shares).toEqual([])
  })
})

it.each([
  ['move the sloe to the pantry', '/jar note sloe where:pantry'],
  ['moving the orange down to the cellar', '/jar note orange where:cellar'],
  ['please shift the raspberry jar into the fridge', '/jar note raspberry where:fridge'],
  ['sposto il limone in cantina', '/jar note lemon where:cantina'],
])('notes where a jar is moved to: %s', async (text, read) => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1 })
})

it('moves nothing that is only asked about', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  expect(await one.say('should I move the lemon to the fridge?')).toMatchObject({ recorded: 0 })
})

it('leaves no word of a new name out', async () => {
  const one = await talkerFor({ after: null, shelf: 'fair' })
  const { outcome } = await one.hear('rename the sloe to nannas hedgerow')
  expect('reply' in outcome && outcome.reply.notes.map(({ key }) => key)).not.toContain('left_out')
  expect((await one.say('/jar show nannas hedgerow')).code).toBeNull()
})

it.each(['is it boozy', 'how boozy is it?', 'is it very strong', 'bottle it', 'strain it now', 'filter it'])(
  'shows how the jar spoken of last stands, and writes nothing down: %s',
  async (text) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('/jar show orange')
    expect(await one.say(text)).toMatchObject({ read: '/jar show orange', code: null, recorded: 0 })
  },
)
