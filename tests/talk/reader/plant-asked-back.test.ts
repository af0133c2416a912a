import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

describe('what is answered of one plant keeps the others', () => {
  it.each([
    [
      '3 lb damsons, 1 cinnamon stick, a fifth of rum',
      'cassia',
      '3 lb damsons + 1 cassia stick spirit:1 fifth rum 40%',
    ],
    [
      '1 cinnamon stick, 2 kg pears, a litre of gin',
      'Ceylon',
      '1 ceylon cinnamon stick + 2 kg pears spirit:1 litre gin 40%',
    ],
    ['9 figs, cinnamon and a pint of brandy', '1 g cassia', '9 figs + 1 g cassia spirit:1 pint brandy 40%'],
    ['900 g prugne, 1 stecca di cannella e un litro di grappa', 'ceylon', null],
    [
      '1 kg pears, 2 chillies, a litre of rum',
      'they are dried',
      '1 kg pears + 2 dried chillies spirit:1 litre rum 40%',
    ],
    ['2 chillies and 8 limes in a fifth of tequila', 'fresh', '2 fresh chillies + 8 limes spirit:1 fifth tequila 40%'],
    [
      '9 limes, 1 cinnamon stick, a pint of gin',
      'the ceylon one',
      '9 limes + 1 ceylon cinnamon stick spirit:1 pint gin 40%',
    ],
  ])('%s, %s', async (said, answer, of) => {
    const one = await talkerFor({ after: null })
    expect((await one.say(said)).code).toBe('ambiguous')
    const { read } = await one.say(answer)
    if (of === null) expect(read).toMatch(/of:900 g prugne \+ 1 .*cannella|ceylon/)
    else expect(read).toBe(`/plan of:${of}`)
  })

  it.each([
    ['it’s the hard thick bark one, cassia', 'cassia'],
    ['says Ceylon on the packet', 'ceylon cinnamon'],
    ['probably cassia, it’s thick and hard', 'cassia'],
    ['quella di ceylon, arrotolata fine', 'ceylon cinnamon'],
    ['Ceylon, the good stuff from the corner shop', 'ceylon cinnamon'],
  ])('finds the name among what is said of it: %s', async (answer, plant) => {
    const one = await talkerFor({ after: '/plan of:cinnamon spirit:1 l 40%' })
    expect((await one.say(answer)).read).toBe(`/plan of:${plant} spirit:1 l 40%`)
  })

  it.each(['not cassia, the other', 'cassia or ceylon, I can’t tell', 'is ceylon better?'])(
    'takes none that is denied, asked or one of two: %s',
    async (answer) => {
      const one = await talkerFor({ after: '/plan of:cinnamon spirit:1 l 40%' })
      expect((await one.say(answer)).read ?? '').not.toMatch(/of:(?:cassia|ceylon cinnamon) spirit/)
    },
  )

  it('takes no other plant for it', async () => {
    const one = await talkerFor({ after: null })
    await one.say('9 limes, 1 cinnamon stick, a pint of gin')
    const { read } = await one.say('plums')
    expect(read ?? '').not.toMatch(/limes \+ .*plums/)
  })
})

describe('the title of a recipe is no plant of it', () => {
  it.each([
    ['Gran’s cherry cordial, 2 lb sour cherries, a fifth of brandy', '2 lb sour cherries spirit:1 fifth brandy 40%'],
    ['orange liqueur, 6 blood oranges, a litre of 95%', '6 blood oranges spirit:1 litre 95%'],
    ['plum cordial: 2 kg plums and a litre of gin', '2 kg plums spirit:1 litre gin 40%'],
    ['lemon cordial with 5 limes and a litre of gin', 'lemon + 5 limes spirit:1 litre gin 40%'],
  ])('%s', async (said, of) => {
    const one = await talkerFor({ after: null })
    expect((await one.say(said)).read).toBe(`/plan of:${of}`)
  })
})

describe('whoever cannot tell which kind it is', () => {
  // What shops sell as cinnamon is mostly cassia, with the more coumarin: BfR 26/2012.
  it.each([
    'the one everybody sells at the supermarket',
    'ordinary shop cinnamon',
    'I really can’t tell',
    'no clue, sorry',
    'plain cinnamon',
    'the packet doesn’t say',
    'non saprei, quella del supermercato',
  ])('goes for cassia, says so and starts it: %s', async (answer) => {
    const one = await talkerFor({ after: null })
    await one.say('2 lb plums, 1 cinnamon stick, a litre of brandy')
    const { read, code, notes } = await one.say(answer)
    expect([read, code]).toEqual(['/plan of:2 lb plums + 1 cassia stick spirit:1 litre brandy 40%', null])
    expect(notes).toContain('kind_taken')
    expect((await one.say('start it')).read).toBe('/jar start of:2 lb plums + 1 cassia stick spirit:1 litre brandy 40%')
  })

  it('asks once more where no kind is the usual one', async () => {
    const one = await talkerFor({ after: null })
    await one.say('2 chillies and 8 limes in a fifth of tequila')
    expect((await one.say('no idea')).code).toBe('ambiguous')
    expect((await one.say('fresh')).read).toMatch(/2 fresh chillies \+ 8 limes/)
  })

  it.each([
    ['Ceylon', '1 ceylon cinnamon stick'],
    ['actually, it’s the Ceylon one', '1 ceylon cinnamon stick'],
    ['sorry, mine is Ceylon cinnamon', '1 ceylon cinnamon stick'],
    ['è di Ceylon', '1 ceylon cinnamon stick'],
    ['not Ceylon', null],
    ['lemons', null],
  ])('another kind of what is in the plan: %s', async (said, plant) => {
    const one = await talkerFor({ after: null })
    await one.say('2 lb plums, 1 cassia stick, a litre of brandy')
    const { read } = await one.say(said)
    if (plant === null) expect(read ?? '').not.toMatch(/ceylon|plums \+ .*lemon/)
    else expect(read).toBe(`/plan of:2 lb plums + ${plant} spirit:1 litre brandy 40%`)
  })

  it('counts a cassia cinnamon stick by its name', async () => {
    const one = await talkerFor({ after: null })
    const { read, notes } = await one.say('2 lb plums, 1 cassia cinnamon stick, a litre of brandy')
    expect(read).toBe('/plan of:2 lb plums + 1 cassia cinnamon stick spirit:1 litre brandy 40%')
    expect(notes).not.toContain('left_out')
  })

  it.each(['yes', 'ok, start that one', 'go ahead'])(
    'takes less of it where so much was too much: %s',
    async (said) => {
      const one = await talkerFor({ after: null })
      await one.say('2 lb plums, 1 cinnamon stick, 700 ml brandy')
      expect((await one.say('not sure')).code).toBe('over_ceiling')
      expect((await one.say(said)).read).toBe('/plan of:2 lb plums + 3.5 g cassia spirit:700 ml brandy 40%')
      expect((await one.say('start it')).read).toMatch(/^\/jar start of:2 lb plums \+ 3.5 g cassia/)
    },
  )

  it('takes the other kind where so much of the usual one was too much', async () => {
    const one = await talkerFor({ after: null })
    await one.say('2 lb plums, 1 cassia stick, 700 ml brandy')
    expect((await one.say('it’s Ceylon')).read).toBe(
      '/plan of:2 lb plums + 1 ceylon cinnamon stick spirit:700 ml brandy 40%',
    )
  })
})
