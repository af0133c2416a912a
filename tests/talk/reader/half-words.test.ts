import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const SYRUP = '/syrup infusion:700 ml strength:80% to-strength:28% to-sweetness:150 g/L'

describe('a few words after what was said', () => {
  it.each(['how much', 'and how much is that', 'quanto?'])('are of what was worked out: %s', async (text) => {
    const told = await (await talkerFor({ after: SYRUP })).say(text)
    expect(told).toMatchObject({ read: SYRUP, command: 'syrup' })
  })

  it.each(['how long', 'how long should I leave it', 'for how long do I steep it'])(
    'are of a jar: %s',
    async (text) => {
      expect(await (await talkerFor({ after: null, shelf: 'lemon' })).say(text)).toMatchObject({ command: 'jar show' })
    },
  )

  it.each(['on again', 'turn them back on', 'resume'])('end a silence: %s', async (text) => {
    const told = await (await talkerFor({ after: '/reminders pause-until:for good' })).say(text)
    expect(told.read).toBe('/reminders pause-until:none')
  })

  it.each(['when can I drink it', 'when can we open them?', 'quando lo posso bere'])(
    'are of a bottled jar: %s',
    async (text) => {
      expect((await (await talkerFor({ after: null, shelf: 'lemon_bottled' })).say(text)).command).toBe('jar show')
    },
  )

  it('label the jar that was spoken of', async () => {
    const one = await talkerFor({ after: '/jar show lemon', shelf: 'lemon_ginger' })
    expect(await one.say('print me a label')).toMatchObject({ read: '/jar label lemon' })
  })

  it('undo the last step of a jar that is named, by its line', async () => {
    const one = await talkerFor({ after: '/jar list', shelf: 'fair' })
    expect(await one.say('undo the last thing we did on the orange')).toMatchObject({
      choices: ['/jar undo orange'],
      recorded: 0,
    })
  })
})

describe('a nod', () => {
  it.each(['ok', 'okay', 'great', 'va bene'])('records nothing: %s', async (text) => {
    const one = await talkerFor({ after: '/jar show lemon', shelf: 'lemon_strained' })
    expect((await one.say(text)).recorded).toBe(0)
  })

  it('is answered with the question that is open', async () => {
    const one = await talkerFor({ after: 'stop messaging me', shelf: 'lemon_ginger' })
    expect(await one.say('ok')).toMatchObject({ code: 'question', recorded: 0 })
  })

  it('is no greeting', async () => {
    const told = await (await talkerFor({ after: SYRUP })).say('ok then')
    expect(told.data).toEqual({ said: 'talk_right' })
  })
})

it('offers both ends of a silence', async () => {
  const told = await (await talkerFor({ after: null, shelf: 'lemon' })).say('stop messaging me')
  expect(told.choices).toEqual(['/reminders pause-until:in 2 weeks', '/reminders pause-until:for good'])
})
