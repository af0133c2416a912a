import { expect, it } from 'vitest'
import { contactOf } from '../../../bot/talk/emergency/contacts.ts'
import { jarDesk } from '../commands-jar/desk.ts'

const NOBODY = 'If anyone’s had some, call a poison centre or the emergency number now.'

const told = async (line: string, country: string | null): Promise<string> => {
  const desk = jarDesk()
  if (country !== null) await desk.ask(`/settings country:${country}`)
  return (await desk.textOf(line)).replaceAll('\n', ' ')
}

it.each(['/trouble smells of acetone', '/trouble smells of paint thinner'])(
  '%s: what to do if it was drunk',
  async (line) => {
    expect(await told(line, null)).toContain(NOBODY)
    const { emergency, poisonCentre } = contactOf('US')!
    const inUs = await told(line, 'US')
    expect([inUs.includes(emergency), inUs.includes(poisonCentre!.number)]).toEqual([true, true])
  },
)

it('calls the emergency number where there is no poison centre for the public', async () => {
  expect(await told('/trouble smells of acetone', 'GB')).toContain('call 999 now, even if they feel well')
})

it('says nothing of it where what is thrown away has poisoned nobody', async () => {
  const said = await told('/trouble mould yes:growth', null)
  expect(said).toMatch(/^Throw it away/)
  expect(said).not.toContain('If anyone’s had some')
})
