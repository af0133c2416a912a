import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const said = async (text: string) => (await talkerFor({ after: null, shelf: 'lemon_ginger' })).say(text)

describe('an accident that is told', () => {
  it.each([
    'spilled 100 ml of the lemon',
    'I spilt a bit of the ginger on the table',
    'knocked the ginger over and lost about 200 ml',
    'lost half of it down the sink',
    'the cat kicked the jar over',
    'ho rovesciato il limone',
  ])('is one of spilling: %s', async (text) => {
    expect(await said(text)).toMatchObject({ command: 'handbook', data: { entry: 'spills' }, recorded: 0 })
  })

  it.each(['dropped the ginger jar', 'a bottle fell off the shelf', 'mi è caduto il barattolo'])(
    'may have broken the glass: %s',
    async (text) => {
      expect((await said(text)).read).toMatch(/^\/trouble glass chipped/)
    },
  )

  it('has left it open, let it leak, or blown its lid off', async () => {
    expect((await said('left the lid off the lemon all night')).data.entry).toBe('evaporation')
    expect((await said('the lemon leaked a bit')).read).toBe('/trouble lid leaks jar:lemon')
    expect((await said('the lid’s come off the ginger')).read).toMatch(/^\/trouble lid bulging/)
  })

  it('stands behind a step that is told', async () => {
    expect(await said('strained the lemon but spilt some, 850 ml')).toMatchObject({
      read: '/jar strain lemon measured:850 ml',
      recorded: 1,
    })
    expect((await said('spilled the beans about the surprise')).recorded).toBe(0)
  })
})

describe('asked of what comes out, of the batch that was spoken of', () => {
  it.each(['how strong will it be', 'how strong is it', 'and how many bottles will it make?', 'quanti giorni mancano'])(
    'of a jar: %s',
    async (text) => {
      const one = await talkerFor({ after: null, shelf: 'lemon' })
      expect(await one.say(text)).toMatchObject({ read: '/jar show lemon', recorded: 0 })
    },
  )

  it.each(['so how strong will it be', 'how much will I get', 'what’s in it'])('of a plan: %s', async (text) => {
    const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
    await one.say('/plan of:3 oranges spirit:1 l 40%')
    expect(await one.say(text)).toMatchObject({ read: '/plan of:3 oranges spirit:1 l 40%', recorded: 0 })
  })

  it.each(['haven’t shaken it all week', 'I’ve not shaken the ginger for a week'])(
    'no reminder is put off by what was not done: %s',
    async (text) => {
      const { command, recorded } = await said(text)
      expect({ command, recorded }).not.toMatchObject({ command: 'reminders' })
      expect(recorded).toBe(0)
    },
  )
})
