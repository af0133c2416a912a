import { describe, expect, test } from 'vitest'
import { newTalkMemory } from '../../../bot/talk/memory/remembered.ts'
import { newAsker } from '../../bot/asker.ts'
import { jarDesk } from '../../bot/commands-jar/desk.ts'

const deskOf = async (...lines: readonly string[]) => {
  const desk = jarDesk('2026-11-30', { ...newAsker(), talk: newTalkMemory() })
  for (const line of lines) await desk.ask(line)
  return desk
}

const QUINCE = '/jar start quince of:500 g quince spirit:1 l vodka 40%'
const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95%'

describe('whether a jar of which nothing is told can be kept', () => {
  test.each([
    'can I keep the quince one',
    'is the quince one still ok',
    'is the quince still good?',
    'can we still drink the quince',
    'should I keep the quince one or bin it',
    'has the quince gone off?',
    'is the quince one all right',
    'posso tenere le mele cotogne?',
    'is it still fine, the quince one?',
  ])('is answered by its strength: %s', async (line) => {
    const text = await (await deskOf(QUINCE, LEMON)).textOf(line)
    expect(text).toMatch(/^read as \/keeping quince\n/)
    expect(text).toContain('At 29 % vol nothing spoils it while it’s shut.')
  })

  test('says first that it ferments where it does, and what it was told of where something stands', async () => {
    const weak = await deskOf(QUINCE, '/jar strain quince measured:1 l', '/jar sweeten quince sugar:50 g water:900 ml')
    expect(await weak.textOf('can I keep the quince one')).toMatch(/It doesn’t keep as it is/)
    const told = await deskOf(QUINCE, '/trouble mould jar:quince yes:growth')
    expect(await told.textOf('can I keep the quince one')).toContain('Throw it away: something grows in it')
  })

  test.each(['is ginger still good in February', 'does ginger keep'])(
    'is of no jar where the plant is meant: %s',
    async (line) => {
      const desk = await deskOf('/jar start ginger of:500 g ginger spirit:1 l vodka 40%')
      expect(await desk.textOf(line)).not.toMatch(/^read as \/keeping ginger/)
    },
  )
})
