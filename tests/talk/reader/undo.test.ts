import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const onTheShelf = () => talkerFor({ after: null, shelf: 'lemon_ginger' })

describe('undo', () => {
  it.each(['undo', 'annulla', 'take that back'])('takes back what was written down just before: %s', async (text) => {
    const one = await onTheShelf()
    await one.say('shook the lemon')
    expect(await one.say(text)).toMatchObject({ command: 'jar undo', code: null, recorded: 1 })
  })

  it.each([
    '/share ginger',
    '/settings units:metric',
    'how much ginger per litre?',
    'what’s on?',
    'can I use frozen fruit?',
    '/jar show ginger',
  ])('names what was written down before it, and asks: %s', async (text) => {
    const one = await onTheShelf()
    await one.say('shook the lemon')
    await one.say(text)
    const told = await one.say('undo')
    expect(told).toMatchObject({ code: 'question', choices: ['/jar undo lemon'], recorded: 0 })
    expect(await one.say('yes')).toMatchObject({ read: '/jar undo lemon', code: null, recorded: 1 })
  })

  it('asks before it takes back what came before a deed that was only asked about', async () => {
    const one = await talkerFor({ after: null })
    await one.say('/jar start cherry of:500 g sour cherries spirit:1 l vodka 40%')
    expect((await one.say('shake it')).code).toBe('question')
    expect(await one.say('undo that')).toMatchObject({ code: 'question', choices: ['/jar undo cherry'], recorded: 0 })
  })

  it('takes back no step of another jar after bottles were given', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_bottled' })
    await one.say('/jar start ginger of:100 g ginger spirit:700 ml 60%')
    await one.say('/bottles lemon given:1')
    await one.say('undo')
    expect((await one.say('/bottles lemon')).data.jars).toMatchObject([{ bottles: [{ given: 0 }] }])
    expect((await one.say('/jar show ginger')).code).toBeNull()
  })

  it('takes a step back once, and asks which jar is meant next', async () => {
    const one = await onTheShelf()
    await one.say('shook the lemon')
    await one.say('undo')
    expect(await one.say('undo')).toMatchObject({
      code: 'question',
      choices: ['/jar undo lemon', '/jar undo ginger'],
      recorded: 0,
    })
    expect(await one.say('yes')).toMatchObject({ code: 'question', recorded: 0 })
    expect(await one.say('lemon')).toMatchObject({
      read: '/jar undo lemon',
      code: 'question',
      recorded: 0,
      erased: false,
    })
  })

  it('asks which jar is meant where nothing was said before', async () => {
    const one = await onTheShelf()
    one.wait(40)
    expect(await one.say('undo')).toMatchObject({ code: 'question', recorded: 0, erased: false })
  })

  it('gives the line of a jar that is named', async () => {
    const one = await onTheShelf()
    await one.say('shook the lemon')
    expect(await one.say('undo the ginger')).toMatchObject({ choices: ['/jar undo ginger'], recorded: 0 })
  })
})

describe('undo of a step that is named', () => {
  it.each([
    ['undo the filtering', 'jar filter'],
    ['undo the bottling', 'jar bottle'],
    ['annulla lo scuotimento', 'jar shake'],
    ['undo the tasting', 'jar taste'],
    ['please undo the sweetening', 'jar sweeten'],
  ])('names what came after it and takes back nothing: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('remind me about the orange on friday')
    const told = await one.say(text)
    expect(told).toMatchObject({ code: 'question', recorded: 0 })
  })

  it('says why not, with the line for what goes first', async () => {
    const one = await talkerFor({ after: null, shelf: 'lemon_sweetened' })
    await one.say('put off the lemon until friday')
    expect(await one.say('undo the sweetening')).toMatchObject({ choices: ['/jar undo lemon'], recorded: 0 })
    await one.say('/jar undo lemon')
    expect(await one.say('undo the sweetening')).toMatchObject({ read: '/jar undo lemon', recorded: 1 })
    expect((await one.say('/jar show lemon')).data).toMatchObject({ stage: 'strained' })
  })

  it.each([
    ['undo the bottling of the raspberry', '/jar undo raspberry'],
    ['undo the sweetening of the orange', '/jar undo orange'],
    ['annulla la filtrazione del limone', '/jar undo lemon'],
  ])('takes it back where it is the last of its jar: %s', async (text, read) => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('/jar shake sloe')
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1 })
  })

  it('asks about the jar whose last step it is, where another was spoken of', async () => {
    const one = await talkerFor({ after: null, shelf: 'fair' })
    await one.say('/jar shake sloe')
    expect(await one.say('undo the bottling')).toMatchObject({
      code: 'question',
      choices: ['/jar undo raspberry'],
      recorded: 0,
    })
  })
})
