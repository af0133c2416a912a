import { describe, expect, it } from 'vitest'
import { parseSharedCode, parseShareRef, shareRef, withoutOwner } from '../../../bot/calls/share-ref.ts'
import { MOST_SHARES } from '../../../core/jar/state/shares.ts'
import type { Share } from '../../../store/person.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const OWNER = '123456789012345678'
const LEMON = '/jar start lemon of:10 lemons spirit:1 l 95% to-strength:30% to-sweetness:250 g/L'
const PNG = [0x89, 0x50, 0x4e, 0x47]

const deskOf = (nowMs = Date.UTC(2026, 10, 20, 12)) => testDesk({ asker: newAsker(), nowMs, width: 80 })
type Desk = ReturnType<typeof deskOf>

const sharesOf = async ({ asker }: Desk) => (await asker.store.read(asker.userId)).shares
const begun = async (...more: readonly string[]): Promise<Desk> => {
  const desk = deskOf()
  for (const line of [LEMON, ...more]) expect((await desk.jsonOf(line)).error, line).toBeUndefined()
  return desk
}

describe('/share at the terminal', () => {
  it('writes the picture, and gives the code in a line that can be copied', async () => {
    const desk = await begun()
    const text = await desk.textOf('/share lemon')
    const [share] = await sharesOf(desk)
    expect(text).toContain('Lemon: a liqueur of lemon peel, aiming for about 30 % with 250 g/L')
    expect(text).toContain('files/larderbell-batch.png')
    expect(text.split('\n').some((line) => line.endsWith(`/plan from:${share!.code}`))).toBe(true)
    const [file] = desk.files()
    expect([...file!.bytes.slice(0, 4)]).toEqual(PNG)
    expect(share).toMatchObject({ postedIn: null, withdrawn: false, made: 0 })
    expect(desk.faults()).toEqual([])
  })

  it('is once a batch that was posted nowhere, and another once more was done to it', async () => {
    const desk = await begun()
    const one = await desk.jsonOf('/share lemon')
    expect((await desk.jsonOf('/share lemon')).data).toEqual(one.data)
    await desk.jsonOf('/jar strain lemon measured:920 ml strength:78% when:2026-11-20')
    const other = await desk.jsonOf('/share lemon')
    expect(other.data.share).not.toBe(one.data.share)
    expect(await sharesOf(desk)).toHaveLength(2)
  })

  it('tells of what was made what came out, and of what has no wish what is in it', async () => {
    const desk = await begun(
      '/jar strain lemon measured:920 ml strength:78%',
      '/jar sweeten lemon water:750 ml sugar:560 g',
      '/jar bottle lemon bottles:3 x 500 ml',
    )
    expect(await desk.textOf('/share lemon')).toMatch(
      /Lemon: a liqueur of lemon peel, about 3\d % with 2\d[05] g\/L of\s+sugar\./,
    )
    const plain = deskOf()
    await plain.jsonOf('/jar start mint of:80 g lemon peel spirit:1 l 60%')
    expect((await plain.jsonOf('/share mint')).error).toBeUndefined()
  })

  it('keeps what is noted later to its maker', async () => {
    const desk = await begun('/jar taste lemon rating:5 note:a very private remark')
    const { data } = await desk.jsonOf('/share lemon')
    expect(JSON.stringify(data)).not.toContain('private')
  })

  it('lists them, and withdraws one', async () => {
    const desk = await begun()
    expect(await desk.textOf('/share')).toContain('You’re not sharing anything yet.')
    const { share } = (await desk.jsonOf('/share lemon')).data
    expect((await desk.jsonOf('/share')).data.shares).toMatchObject([{ share, name: 'lemon', made: 0, posted: false }])
    expect(await desk.textOf(`/share withdraw:${share}`)).toBe(
      'Lemon is no longer shared. Anyone who kept its code can still make it.',
    )
    expect(await desk.textOf(`/share withdraw:${share}`)).toBe(
      'Lemon was withdrawn before. Anyone who kept its code can still make it.',
    )
    expect((await sharesOf(desk))[0]).toMatchObject({ withdrawn: true })
    expect((await desk.jsonOf('/share withdraw:zzzzzzzz')).error).toMatchObject({ code: 'not_found' })
  })

  it.each([
    ['/share walnut', 'not_found'],
    ['/share lemon withdraw:abc', 'too_many_options'],
    ['/share lemon spirit:1 l 40%', 'too_many_options'],
    ['/share spirit:1 l 40%', 'missing_option'],
    ['/share make:nothing', 'bad_value'],
    [`/share make:${shareRef({ owner: OWNER, shareId: 'abcdefgh' })}`, 'not_found'],
  ])('%s is refused in a sentence', async (line, code) => {
    const desk = await begun()
    const { error } = await desk.jsonOf(line)
    expect(error.code).toBe(code)
    expect(error.message).not.toMatch(/undefined|null|\n/)
    expect(await sharesOf(desk)).toEqual([])
  })

  it('keeps a plant that only its maker answers for to its maker', async () => {
    const desk = deskOf()
    await desk.jsonOf('/jar start meadow of:30 g jaboticaba spirit:1 l 50% unknown-ok:yes days:20 days')
    expect((await desk.jsonOf('/share meadow')).error.message).toContain('jaboticaba')
  })

  it(`keeps ${MOST_SHARES} at most, and drops one that was withdrawn for a new one`, async () => {
    const desk = await begun()
    const { code } = (await desk.jsonOf('/share lemon')).data
    const { store, userId } = desk.asker
    const of = (index: number): Share => ({
      id: `s${String(index).padStart(7, '0')}`,
      jarId: 'aaaaa',
      code,
      postedIn: null,
      withdrawn: false,
      made: 0,
    })
    const full = Array.from({ length: MOST_SHARES }, (_, index) => of(index))
    await store.update(userId, (person) => ({ ...person, shares: full }))
    expect((await desk.jsonOf('/share lemon')).error).toMatchObject({ code: 'limit' })
    await desk.jsonOf(`/share withdraw:${of(7).id}`)
    expect((await desk.jsonOf('/share lemon')).error).toBeUndefined()
    const ids = (await sharesOf(desk)).map(({ id }) => id)
    expect(ids).toHaveLength(MOST_SHARES)
    expect(ids).not.toContain(of(7).id)
  })
})

describe('a marked code', () => {
  const CODE = async () => (await (await begun()).jsonOf('/share lemon')).data.code as string

  it('tells whose it is until a jar is begun', async () => {
    const code = await CODE()
    const ref = shareRef({ owner: OWNER, shareId: '3m8qv0zt' })!
    expect(parseShareRef(ref)).toEqual({ owner: OWNER, shareId: '3m8qv0zt' })
    expect(parseSharedCode(`${code}@${ref}`)).toMatchObject({ owner: OWNER, shareId: '3m8qv0zt' })
    expect(withoutOwner(`${code}@${ref}`)).toBe(`${code}@3m8qv0zt`)
    expect(parseSharedCode(`${code}@3m8qv0zt`)).toMatchObject({ owner: null, shareId: '3m8qv0zt' })
    expect(parseSharedCode(code)).toMatchObject({ owner: null, shareId: null })
    expect(shareRef({ owner: 'local', shareId: '3m8qv0zt' })).toBeNull()
  })

  it.each(['@', '@x', '@.3m8qv0zt', '@3M8QV0ZT!', '@a.b.3m8qv0zt', '@3m8qv0z'])('is damaged with %s', async (mark) => {
    const desk = deskOf()
    const { error } = await desk.jsonOf(`/plan from:${await CODE()}${mark}`)
    expect(error).toMatchObject({ code: 'bad_value', option: 'from' })
  })
})

describe('pictures of jars', () => {
  it.each([
    ['/jar tag lemon', ['larderbell-jar-tag.png']],
    ['/jar label lemon', ['larderbell-label-1.png', 'larderbell-label-2.png']],
    ['/jar list picture:yes', ['larderbell-shelf.png']],
    ['/jar list', []],
    ['/jar list picture:no', []],
  ])('%s', async (line, names) => {
    const desk = await begun(
      '/jar strain lemon measured:920 ml strength:78%',
      '/jar sweeten lemon water:750 ml sugar:560 g',
      '/jar bottle lemon bottles:3 x 500 ml + 350 ml',
    )
    await desk.textOf(line)
    const files = desk.files()
    expect(files.map(({ name }) => name)).toEqual(names)
    for (const { bytes } of files) expect([...bytes.slice(0, 4)]).toEqual(PNG)
    expect(desk.faults()).toEqual([])
  })

  it('is none of no jar', async () => {
    const desk = deskOf()
    await desk.textOf('/jar list picture:yes')
    expect(desk.files()).toEqual([])
  })
})
