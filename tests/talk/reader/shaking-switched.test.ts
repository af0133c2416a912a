import { expect, test } from 'vitest'
import { talkerFor } from './told.ts'

const heard = async (...lines: readonly string[]) => {
  const one = await talkerFor({ after: null, shelf: 'lemon_ginger' })
  for (const line of lines.slice(0, -1)) await one.say(line)
  return one.say(lines.at(-1)!)
}

test.each([
  'no more shaking reminders for the ginger',
  'stop telling me to shake the ginger',
  'please don’t remind me about the ginger any more',
  'non ricordarmi più di agitare lo zenzero',
])('%s: of that jar alone, and no other is silenced', async (line) => {
  const { call, recorded } = await heard(line)
  expect(call?.path).not.toBe('reminders')
  expect(recorded).toBe(0)
})

test('until when the one jar is left alone is asked', async () => {
  const one = await heard('no more shaking reminders for the ginger')
  expect(one).toMatchObject({ command: 'jar later', code: 'question', recorded: 0 })
})

test.each(['remind me to shake them again', 'start nagging me to shake it', 'ricordami di nuovo di scuoterlo'])(
  '%s turns the shaking on',
  async (line) => {
    expect((await heard(line)).call).toEqual({ path: 'reminders', options: { shake: 'daily' } })
  },
)

test.each(['turn off the shaking reminders', 'stop reminding me to shake'])('%s turns it off', async (line) => {
  expect((await heard(line)).call).toEqual({ path: 'reminders', options: { shake: 'off' } })
})

test('what is turned on again is what was turned off', async () => {
  const shaking = await heard('no more shaking reminders', 'turn them on again')
  expect(shaking.call?.options).toEqual({ shake: 'daily' })
  const all = await heard('quiet for a week', 'ok switch them back on please')
  expect(all.call?.options).toEqual({ 'pause-until': 'none' })
})

test.each(['shall I shake it again?', 'shook the lemon again'])('%s switches nothing', async (line) => {
  expect((await heard(line)).call?.path).not.toBe('reminders')
})

test('being left alone is a pause, with its end', async () => {
  expect((await heard('leave us in peace this week')).call?.options).toEqual({ 'pause-until': 'next Monday' })
  expect(await heard('leave me alone')).toMatchObject({ command: 'reminders', code: 'question' })
})

test('a month is its first day', async () => {
  expect((await heard('remind me about the ginger in March')).call).toMatchObject({
    path: 'jar later',
    options: { jar: 'ginger', until: '1 March' },
  })
  expect((await heard('remind me in May')).choices).toEqual([
    '/jar later lemon until:1 May',
    '/jar later ginger until:1 May',
  ])
})
