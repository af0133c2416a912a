import { describe, expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

const HERB = '/jar start herb of:10 g rosemary spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'

const strained = async () => {
  const desk = jarDesk()
  await desk.ask(HERB)
  desk.at('2026-11-20')
  await desk.ask('/jar strain herb measured:920±2 ml strength:78%')
  return { desk }
}

describe('what was typed', () => {
  it('names the plan where something else went in, and what takes a second sweetening back', async () => {
    const { desk } = await strained()
    const textsOf = async (line: string) => (await desk.ask(line)).notes.map(({ text }) => text).join(' ')
    expect(await textsOf('/jar sweeten herb water:115 ml sugar:598 g')).toMatch(
      /plan \(\d+\sg sugar and 1\.\d+\sl water\)/,
    )
    expect(await desk.textOf('/jar sweeten herb water:115 ml sugar:599 g')).toContain('Undo: /jar undo herb')
    await desk.ask('/jar undo herb')
    await desk.ask('/jar undo herb')
    expect(await textsOf('/jar sweeten herb water:1.15 l sugar:590 g')).not.toMatch(/the plan was|planned were/i)
    await desk.ask('/jar undo herb')
    expect(await textsOf('/jar sweeten herb water:1.15 l sugar:390 g')).toContain('The plan was')
  })

  it('says an amount as it was typed, and what was computed from what was measured', async () => {
    const { desk } = await strained()
    const text = await desk.textOf('/jar sweeten herb water:1155 ml sugar:598 g')
    expect(text).toContain('(worked out from what you measured)')
    expect(await desk.textOf('/jar show herb')).toContain('sweetened with 1155 ml water')
  })

  it('keeps what looks like an option in the note, and says so', async () => {
    const { desk } = await strained()
    const { notes } = await desk.ask('/jar taste herb note:thin rating:4')
    expect(notes.map(({ text }) => text).join()).toContain('“rating:4”')
    expect((await desk.ask('/jar taste herb rating:4 note:at ten: thin')).notes).toEqual([])
  })

  it('is told apart from what was taken', async () => {
    const desk = jarDesk()
    expect(await desk.textOf('/jar start peel of:lemon peel spirit:1 l 95%')).toContain(
      'the usual amount: 120 g lemon peel',
    )
    expect(await desk.textOf('/jar start rind of:90 g lemon peel spirit:1 l 95%')).not.toContain('how much')
    expect(await desk.textOf('/again rind to-sweetness:rich')).toContain(
      '/jar start rind 2 of:90 g lemon peel spirit:1 l 95% to-sweetness:rich',
    )
  })

  it('asks spirit for more strength than there is', async () => {
    const { desk } = await strained()
    await desk.ask('/jar sweeten herb water:1.15 l sugar:598 g')
    const { code, message } = await desk.refused('/syrup jar:herb to-strength:40% to-sweetness:250 g/L')
    expect(code).toBe('unreachable')
    const line = /\/adjust .*?(?=\.?$)/m.exec(message)?.[0] ?? ''
    await desk.ask(line)
  })
})
