import { describe, expect, it } from 'vitest'
import { NOBODY } from '../../../store/person.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { deskWith, jarOf, startedAs } from './jars.ts'

const person = {
  jars: [
    jarOf('aaaa1', [
      { ...startedAs('lemon'), on: '2026-11-01' },
      { kind: 'shaken', on: '2026-11-02' },
    ]),
    jarOf('aaaa2', [{ ...startedAs('walnut'), on: '2026-11-01' }]),
  ],
  settings: { ...NOBODY.settings, units: 'us' as const, shake: 'off' as const },
}

describe('/forget', () => {
  it('says what would go and erases nothing until it is asked again', async () => {
    const desk = await deskWith(person, { width: 200 })
    const text = await desk.textOf('/forget')
    expect(text).toContain(
      '2 jars with 3 entries and 2 settings. Copies and files I made for you go too. Nothing is deleted yet.',
    )
    expect(text).toContain('/forget confirm:yes')
    expect(text).toContain('/help jar discard')
    expect((await desk.jsonOf('/forget')).data).toEqual({
      erased: false,
      jars: 2,
      entries: 3,
      copies: null,
      files: null,
      shares: 0,
    })
    expect(await desk.textOf('/forget confirm:no')).toBe('Nothing was deleted.')
    expect((await desk.asker.store.read('local')).jars).toEqual(person.jars)
  })

  it('counts apart what no list of running jars shows', async () => {
    const hidden = [
      jarOf('aaaa3', [
        { ...startedAs('plum'), on: '2026-11-01' },
        { kind: 'discarded', on: '2026-11-02' },
      ]),
      jarOf('aaaa4', [
        { ...startedAs('gone'), on: '2026-11-01' },
        { kind: 'undone', of: 1, on: '2026-11-01' },
      ]),
    ]
    const desk = await deskWith({ jars: [...person.jars, ...hidden] }, { width: 200 })
    expect(await desk.textOf('/forget')).toContain('2 jars (and 1 in the notebook, 1 undone) with 7 entries')
    expect((await desk.jsonOf('/forget')).data).toMatchObject({ jars: 4, entries: 7 })
    const rest = await deskWith({ jars: hidden }, { width: 200 })
    expect(await rest.textOf('/forget confirm:yes')).toMatch(
      /^Deleted: no running jars \(but 1 in the notebook, 1 undone\) with 4 entries,/,
    )
  })

  it('erases everything once confirmed, and says what, copies included', async () => {
    const asker = newAsker()
    await asker.store.update('local', () => ({ ...NOBODY, ...person }))
    const remove = async (userId: string) => ({ ...(await asker.store.remove(userId)), copies: 7 })
    const desk = testDesk({
      asker: { ...asker, forgetFiles: async () => 2, store: { ...asker.store, remove } },
      width: 200,
    })
    expect(await desk.textOf('/forget confirm:yes')).toBe(
      'Deleted: 2 jars with 3 entries, and your settings. Gone too: 7 copies and 2 files I’d saved for you. I have nothing left about you.',
    )
    expect(await asker.store.read('local')).toEqual(NOBODY)
    expect((await desk.jsonOf('/forget confirm:yes')).data).toEqual({
      erased: true,
      jars: 0,
      entries: 0,
      copies: 7,
      files: 2,
      shares: 0,
    })
  })

  it('counts no share that was taken back', async () => {
    const [jar] = person.jars
    const share = {
      id: 'b4yzgd2s',
      jarId: jar!.id,
      code: '11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N',
      postedIn: null,
      made: 0,
    }
    const shares = [
      { ...share, withdrawn: true },
      { ...share, id: 'b4yzgd2t', withdrawn: false },
    ]
    const desk = await deskWith({ ...person, shares }, { width: 200 })
    expect(await desk.textOf('/forget')).toContain('1 share.')
  })

  it('erases by a button only what the button named', async () => {
    const desk = await deskWith(person, { width: 200 })
    const { store } = desk.asker
    for (const line of ['/forget confirm:yes 1/3/0', '/forget confirm:yes 2/2/0', '/forget confirm:yes 2/3/1']) {
      expect((await desk.jsonOf(line)).data).toMatchObject({ erased: false, jars: 2, entries: 3 })
      expect(await desk.textOf(line)).toContain(
        'something else now than when that button was made, so nothing was deleted',
      )
    }
    expect((await store.read('local')).jars).toEqual(person.jars)
    expect((await desk.jsonOf('/forget confirm:no 2/3/0')).data).toMatchObject({ erased: false })
    expect((await desk.jsonOf('/forget confirm:yes 2/3/0')).data).toMatchObject({ erased: true })
  })

  it.each([
    '/forget yes',
    '/forget no',
    '/forget walnuts',
    '/forget lemon confirm:yes',
    '/forget lemon confirm:yes 2/3/0',
    '/forget jar:yes confirm:yes',
  ])('erases nothing at %s', async (line) => {
    const desk = await deskWith(person)
    expect((await desk.jsonOf(line)).data).toMatchObject({ erased: false, jars: 2 })
    expect((await desk.asker.store.read('local')).jars).toEqual(person.jars)
  })

  it('sends who names one jar to /jar discard, and a bare yes to what does it', async () => {
    const desk = await deskWith(person, { width: 200 })
    expect(await desk.textOf('/forget lem')).toContain('To throw away lemon alone: /jar discard lemon')
    expect(await desk.textOf('/forget yes')).toContain('type in full: /forget confirm:yes')
  })

  it('takes nothing but yes or no', async () => {
    const desk = await deskWith(person)
    for (const answer of ['perhaps', 'yes 2/3', '2/3/0', 'yes 2/3/x']) {
      expect((await desk.jsonOf(`/forget confirm:${answer}`)).error).toMatchObject({ option: 'confirm' })
    }
    expect((await desk.asker.store.read('local')).jars).toEqual(person.jars)
  })
})
