import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const lemon = () => talkerFor({ after: null, shelf: 'lemon' })

// Sentences as makers type them; what each tells is common sense, no source.
describe('what is told of a jar in a sentence is kept with it', () => {
  it.each([
    'there is fur on top of the lemon',
    'the lemon jar has fur on top',
    'it’s got furry mould on it',
    'there’s glass in it',
    'i found glass in the lemon',
    'a bit of glass broke off into the lemon',
    'the lemon smells of petrol',
    'the lemon smells of methylated spirit',
    'my lemon jar smells like meths',
    'a mouse fell into the lemon',
    'c’è della muffa pelosa sul limone',
    'mould has started to grow in the lemon',
    'the lemon has grown some mould',
    'there’s blue mould in the lemon jar',
    'nel vaso del limone si è formata la muffa',
    'sul limone c’è muffa verde',
    'c’è del vetro nel limone',
    'il limone puzza di benzina',
    'il limone puzza di alcol denaturato',
  ])('to be thrown away: %s', async (text) => {
    const one = await lemon()
    expect(await one.say(text)).toMatchObject({
      command: 'trouble',
      recorded: 1,
      data: { discard: { verdict: 'throw_away' } },
    })
    expect(await one.say('bottled the lemon, 2 x 500 ml')).toMatchObject({ recorded: 0 })
    expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
  })

  it.each([
    ['the lemon is fizzing', 'not_yet'],
    ['the lid of the lemon is bulging', 'not_yet'],
    ['il limone frizza', 'not_yet'],
    ['my lemon has gone mouldy', 'in_question'],
    ['the lemon smells of glue', 'in_question'],
    ['the lemon smells of varnish', 'in_question'],
    ['il limone puzza di colla', 'in_question'],
    ['il limone ha la muffa', 'in_question'],
    ['the lemon went warm in the sun', 'in_question'],
    ['is the fur on my lemon dangerous?', 'to_throw_away'],
    ['why is the lemon fizzing?', 'not_yet'],
    ['note for the lemon: mould on top', 'in_question'],
  ])('as far as is known: %s is %s', async (text, danger) => {
    const one = await lemon()
    await one.say(text)
    expect((await one.say('/jar show lemon')).data.dangers).toEqual([danger])
  })

  it.each([
    'what if the lemon goes mouldy?',
    'could the lemon go mouldy?',
    'how would i know if the lemon went off?',
    'what happens if glass gets into the lemon?',
    'e se il limone fa la muffa?',
    'my neighbour’s lemon has mould',
    'the lemon is cloudy',
    'il limone è torbido',
    'the lemon isn’t mouldy',
    'it was nothing',
    'the lemon is far too sweet',
  ])('and nothing of what is supposed, harmless, denied or somebody else’s: %s', async (text) => {
    const one = await lemon()
    expect((await one.say(text)).recorded).toBe(0)
  })
})

describe('what turned out to be nothing', () => {
  it.each([
    'false alarm',
    'false alarm, it’s only pith',
    'it was nothing',
    'it’s not mould, just pith',
    'it isnt mould',
    'turned out to be nothing',
    'the white stuff was only pectin',
    'the lemon was only pith',
    'falso allarme',
    'non è muffa',
    'era solo la parte bianca',
    'non è muffa, è solo buccia',
    'non era niente',
  ])('takes it back: %s', async (text) => {
    const one = await lemon()
    await one.say('/trouble mould jar:lemon yes:something grows')
    expect(await one.say(text)).toMatchObject({ command: 'jar note', code: null, recorded: 1 })
    expect((await one.say('/jar show lemon')).data.dangers).toEqual([])
  })

  it.each([
    'was it only pith?',
    'it’s only mouldy on top',
    'the mould is gone now',
    'no sign of mould any more',
    'it’s not mouldy any more',
    'there is still mould on it',
    'i scooped the mould off',
    'non è più muffa',
    'shook the lemon',
    'it tastes of nothing',
    'nothing to do today?',
  ])('and nothing else does: %s', async (text) => {
    const one = await lemon()
    await one.say('/trouble mould jar:lemon yes:something grows')
    await one.say(text)
    expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
  })

  it('asks which of two jars it was', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('/trouble mould jar:sloe yes:something grows')
    await one.say('/trouble mould jar:orange yes:something grows')
    const told = await one.say('false alarm')
    expect(told).toMatchObject({ code: 'question', recorded: 0 })
    expect(told.choices.toSorted()).toEqual(['/jar note orange was:false alarm', '/jar note sloe was:false alarm'])
    expect(await one.say('the sloe was only pith')).toMatchObject({ read: '/jar note sloe was:the sloe was only pith' })
  })
})

it.each([
  ['the lemon is fizzing', 'what is proof?', 'yes'],
  ['my lemon has gone mouldy', 'can I freeze sloes', 'yes'],
  ['il limone frizza', 'what is proof?', 'sì'],
])('asks again where a yes comes behind another answer: %s, %s, %s', async (trouble, between, yes) => {
  const one = await lemon()
  const { read } = await one.say(trouble)
  await one.say(between)
  expect(await one.say(yes)).toMatchObject({ read, recorded: 0 })
  expect((await one.say(yes)).read).toContain('yes:')
})

it.each(['yes', 'ok', 'yes please'])('a danger is never agreed away: %s', async (text) => {
  const one = await lemon()
  await one.say('/trouble mould jar:lemon yes:growth')
  expect(await one.say(text)).toMatchObject({ recorded: 0 })
  expect((await one.say('/jar show lemon')).data.dangers).toEqual(['to_throw_away'])
})
