import { expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

it('says when it will be back, where nothing is due on the day that a jar is put off to', async () => {
  const { ask } = jarDesk()
  await ask('/jar start mine of:10 lemons spirit:1 l 95% when:20 days ago')
  await ask('/jar strain mine measured:900 ml strength:85%')
  await ask('/jar sweeten mine water:900 ml sugar:400 g')
  const noteOf = async (line: string) => (await ask(line)).notes.find(({ key }) => key === 'jar_later_none')?.text
  expect(await noteOf('/jar later mine until:tomorrow')).toMatch(
    /^Nothing is due for mine before .*, so I’ll be back then\.$/,
  )
  // By then something is.
  expect(await noteOf('/jar later mine until:in 9 months')).toBeUndefined()
})
