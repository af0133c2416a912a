import { expect, it } from 'vitest'
import { bottledFair } from '../commands-jar/begun-jars.ts'
import { speech } from '../test-desk.ts'
import { nudgedReply } from './nudged.ts'

/** Raspberries bottled on 5 September 2026: at their best until 5 March 2027, told of on 5 February. */
async function shelf() {
  const desk = await bottledFair('300 g raspberries', { bottles: '2 x 500 ml' })
  desk.at('2026-11-20')
  await desk.ask('/jar open fair')
  return desk
}

const NOW = { nowMs: Date.parse('2027-02-06T12:00:00Z'), assumedZone: 'UTC' }

async function nudge(desk: Awaited<ReturnType<typeof shelf>>, kind: 'console' | 'private' = 'console') {
  const { store, userId } = desk.asker
  return nudgedReply(await store.read(userId), NOW, kind)
}

it('tells how many are left and until about when, with lines that run', async () => {
  const desk = await shelf()
  const { headline, actions } = await nudge(desk)
  expect(speech.words.say(headline, 'metric').replaceAll('\u00a0', ' ')).toBe(
    'Drink fair soon, or give some away: 2 bottles are left, at their best until about March 2027.',
  )
  const lines = actions.map(({ call }) => speech.words.line(call).replaceAll('\u00a0', ' '))
  expect(lines).toEqual(['/bottles fair opened:1', '/bottles fair given:1'])
  desk.at('2027-02-06')
  for (const line of lines) await desk.ask(line)
  // Both are gone now, and nothing is asked any more.
  await expect(nudge(desk)).rejects.toThrow('nothing is due')
})

it('is once, and no more of what was past its best before anybody could be told', async () => {
  const desk = await shelf()
  const { store, userId } = desk.asker
  const person = await store.read(userId)
  expect(() => nudgedReply(person, { ...NOW, nowMs: Date.parse('2027-03-20T12:00:00Z') })).toThrow('nothing is due')
})

it('stands among what comes next and in the calendar, and is switched off', async () => {
  const desk = await shelf()
  desk.at('2026-12-20')
  expect(await desk.textOf('/reminders')).toMatch(
    /Next +on 5 February 2027 at 09:00: drink fair, while it’s at its best/,
  )
  expect(await desk.textOf('/reminders')).toMatch(/Bottles +once, four weeks before/)
  expect((await desk.ask('/calendar')).data.events).toMatchObject([
    { duty: 'drink', dueAt: '2027-02-05T09:00:00.000Z' },
  ])
  expect((await desk.ask('/reminders drink:off')).data).toMatchObject({ drink: 'off', next: null })
  expect((await desk.ask('/calendar')).data.events).toEqual([])
  expect((await desk.ask('/reminders drink:on')).data.next).toMatchObject({
    duties: [{ duty: 'drink', jars: ['fair'] }],
  })
})
