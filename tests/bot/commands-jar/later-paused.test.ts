import { expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

it('says that a pause of all reminders stands, where a jar was put off to a day within it', async () => {
  const { ask } = jarDesk()
  await ask('/jar start mine of:10 lemons spirit:1 l 95% when:20 days ago')
  const noteOf = async (line: string) => (await ask(line)).notes.find(({ key }) => key === 'jar_later_paused')?.text
  expect(await noteOf('/jar later mine until:in 2 days')).toBeUndefined()
  await ask('/reminders pause-until:in 9 days')
  const said = await noteOf('/jar later mine until:in 3 days')
  expect(said).toMatch(/^But reminders are paused until .*, and stay so\. To hear from me on /)
  // The day of the pause itself is no day within it.
  expect(await noteOf('/jar later mine until:in 9 days')).toBeUndefined()
  const [, line = ''] = /(\/reminders .*)$/.exec(said ?? '') ?? []
  await ask(line)
  expect(await noteOf('/jar later mine until:in 3 days')).toBeUndefined()
  await ask('/reminders pause-until:for good')
  expect(await noteOf('/jar later mine until:in 3 days')).toMatch(/^But reminders are stopped, and stay so\./)
})
