import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const LEMON = ['/jar start lemon of:10 lemons spirit:1 l 95% when:40 days ago']

const behind = async (lines: readonly string[]) => {
  const one = await talkerFor({ after: null })
  for (const line of [...LEMON, ...lines]) expect(await one.say(line), line).toMatchObject({ code: null })
  return one
}

describe('what was strained is told by two bare numbers, behind whatever was said before', () => {
  it.each([
    [[]],
    [['what’s on?']],
    [['show me the lemon']],
    [['shook it']],
    [['tasted the lemon, lovely']],
    [['how do i strain']],
    [['is it ready?']],
  ])('%j', async (lines) => {
    const one = await behind(lines)
    expect(await one.say('strained it, 930, 87')).toMatchObject({
      read: '/jar strain lemon measured:930 ml strength:87%',
      recorded: 1,
    })
  })

  it('and a number that may be a strength behind none that is a volume is not taken for one', async () => {
    const one = await behind([])
    expect(await one.say('strained it, 87, 30')).toMatchObject({ recorded: 0 })
  })
})

describe('what was measured is told behind a straining that was written down without it', () => {
  it.each([
    ['930', '/jar correct lemon measured:930 ml'],
    ['930, 87', '/jar correct lemon measured:930 ml strength:87%'],
    ['930 ml at 87', '/jar correct lemon measured:930 ml strength:87%'],
    ['it was 930 ml', '/jar correct lemon measured:930 ml'],
    ['about 930 ml', '/jar correct lemon measured:930 ml'],
    ['930 ml of 38 %', '/jar correct lemon measured:930 ml strength:38%'],
    ['87', '/jar correct lemon strength:87%'],
  ])('%s', async (text, read) => {
    const one = await behind(['strained the lemon'])
    expect(await one.say(text)).toMatchObject({ read, code: null, recorded: 1 })
  })

  it('its strength behind its volume', async () => {
    const one = await behind(['strained the lemon', 'it was 930 ml'])
    expect(await one.say('and 87%')).toMatchObject({ read: '/jar correct lemon strength:87%', recorded: 1 })
  })

  it.each(['30%', 'how much for 930 ml?', 'what about 930 ml at 87 to 25%', 'I want 2 litres of it', '500 ml bottles'])(
    'but not where it is wished or asked: %s',
    async (text) => {
      const one = await behind(['strained the lemon'])
      expect((await one.say(text)).recorded).toBe(0)
    },
  )

  it('nor what is said otherwise than it was measured', async () => {
    const one = await behind(['strained the lemon, 930 ml at 87'])
    expect((await one.say('600 ml at 40')).recorded).toBe(0)
  })

  it('nor behind another answer, where it may be of that', async () => {
    const one = await behind(['strained the lemon', '/syrup infusion:700 ml strength:60%'])
    expect((await one.say('930 ml at 87')).recorded).toBe(0)
  })
})
