import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { newAsker } from '../asker.ts'
import { jarDesk, LEMON } from './desk.ts'

const NAMES = [
  'لیمو',
  '柠檬酒',
  'ליים',
  'Zitröne',
  'limone 🍋',
  'ไทย',
  'water mint',
  'note to self',
  'o"brien',
  'a\\b',
  '1',
  '+',
]

describe('names of jars', () => {
  it.each(NAMES)('%s is started, found and offered back', async (name) => {
    const desk = jarDesk()
    await desk.ask(LEMON.replace('lemon', name))
    expect((await desk.ask(`/jar shake ${name}`)).data.name).toBe(name)
    const outcome = await desk.run(`/jar strain ${name} measured:900 ml`)
    const line = outcome.ok ? lineOf(outcome.reply.actions[0]!.call) : ''
    expect(line.startsWith('/jar sweeten ')).toBe(true)
    expect((await desk.ask(line)).data.stage).toBe('sweetened')
    await desk.ask(`/syrup jar:${name} to-strength:25% to-sweetness:400 g/L`)
  })

  it.each(['zing 2', 'ZING2', 'z ing2'])('%s is too near to zing2 to be told apart', async (name) => {
    const desk = jarDesk()
    await desk.ask(LEMON.replace('lemon', 'zing2'))
    const { code, message, option } = await desk.refused(LEMON.replace('lemon', name))
    expect([code, option]).toEqual(['bad_value', 'name'])
    expect(message).toContain('You already have a jar called “zing2”')
  })

  it('with amounts behind them are told from those', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const strained = (await desk.ask('/jar strain lemon 440 ml 87%')) as unknown as { readonly read: string }
    expect(strained.read).toBe('/jar strain lemon measured:440 ml strength:87%')
    await desk.ask('/jar undo lemon')
    const read = (await desk.ask('/jar strain lemon 87%')) as unknown as { readonly read: string }
    expect(read.read).toBe('/jar strain lemon strength:87%')
    const meant = 'Type: /jar sweeten lemon sugar:500 g water:1.5 l'
    expect((await desk.refused('/jar sweeten lemon sugar 500 g and 1.5 l')).message).toContain(meant)
    expect((await desk.refused('/jar sweeten lemon 500 g sugar 300 g sugar')).message).not.toContain('Type:')
  })

  it('with more behind them show where the options’ names belong', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const saidOf = async (line: string) => (await desk.refused(line)).message
    expect(await saidOf('/jar sweeten lemon 700 ml 200 g')).toContain('Strain it first')
    expect((await desk.ask('/jar strain lemon measured:440 ml 87%')).data).toMatchObject({ stage: 'strained' })
    await desk.ask('/jar undo lemon')
    expect(await saidOf('/jar shake lemon now')).toContain('“lemon now”. Did you mean lemon?')
  })

  it('stay in the line that is offered where plants and spirit stand behind them without names', async () => {
    const desk = jarDesk()
    const named = (await desk.refused('/jar start name:fair 10 lemons and 1 l 95%')).message
    expect(named).toContain('/jar start fair of:10 lemons spirit:1 l 95%')
  })

  it('stand in the examples of what is lacking', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON.replace('lemon', '🍊'))
    expect((await desk.refused('/jar taste 🍊')).message).toMatch(/ \/jar taste 🍊 rating:4$/)
    expect((await desk.refused('/jar rename 🍊')).message).toMatch(/ \/jar rename 🍊 to:/)
    expect((await desk.refused('/jar start x of:ginger')).message).toMatch(
      /What spirit have you got\?.*\/jar start x of:/,
    )
    expect((await desk.refused('/jar start x of:ginger spirit:1 l vodka')).message).toContain(' strength:40%')
    expect((await desk.refused('/jar start x of:ginger spirit:1 l 40% start:today')).message).toContain(
      'spirit:1 l 40% when:today',
    )
  })

  it('with a colon is quoted in lines that are offered', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON.replace('lemon', '"of: lemon, \\"best\\""'))
    const outcome = await desk.run('/jar strain "of: lemon, \\"best\\"" measured:900 ml')
    const line = outcome.ok ? lineOf(outcome.reply.actions[0]!.call) : ''
    expect(line).toContain('/jar sweeten "of: lemon, \\"best\\"" sugar:')
    await desk.ask(line)
  })

  it('by #id, and by the id where the place keeps lines to be pressed', async () => {
    const desk = jarDesk()
    const { data } = await desk.ask(LEMON)
    expect((await desk.ask(`/jar shake #${data.id}`)).data.name).toBe('lemon')
    const pressed = jarDesk('2026-11-01', { ...newAsker(), place: { kind: 'private' } })
    const jar = await pressed.ask(LEMON)
    const outcome = await pressed.run('/jar strain lemon measured:900 ml')
    expect(outcome.ok && lineOf(outcome.reply.actions[0]!.call)).toMatch(
      new RegExp(`^/jar sweeten #${jar.data.id} sugar:`),
    )
  })

  it('renamed, the jar is found by its new name alone', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    await desk.ask(LEMON.replace('lemon', 'other'))
    expect((await desk.refused('/jar rename lemon to:Other')).option).toBe('to')
    await desk.ask('/jar rename lemon to:LEMON')
    await desk.ask('/jar rename lemon to:midwinter')
    expect((await desk.refused('/jar shake lemon')).code).toBe('not_found')
    expect((await desk.ask('/jar shake midw')).data.name).toBe('midwinter')
    await desk.ask('/jar undo midwinter')
    await desk.ask('/jar undo midwinter')
    await desk.ask('/jar shake lemon')
  })

  it.each(['all', '#abc', '/x', 'x:', '  ', 'x'.repeat(41)])('%s cannot be one', async (name) => {
    const desk = jarDesk()
    const { code } = await desk.refused(`/jar start "${name}" of:lemon spirit:1 l 95%`)
    expect(code).toBe('bad_value')
  })

  it('shows what people typed without the marks that turn a line around', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    const text = await desk.textOf('/jar taste lemon note:\u202egood')
    expect(text).toContain('good')
    expect(text).not.toContain('\u202e')
  })
})
