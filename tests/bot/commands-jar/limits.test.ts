import { describe, expect, it } from 'vitest'
import { jarDesk } from './desk.ts'

type Desk = ReturnType<typeof jarDesk>

const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

/** The line that a refusal ends with. */
const lineIn = (message: string): string => /^.*: (\/(?:jar|plan) .+)$/.exec(plain(message))?.[1] ?? ''

const over = async (desk: Desk, line: string) => {
  const error = await desk.refused(line)
  expect(error, line).toMatchObject({ code: 'over_ceiling' })
  return plain(error.message)
}

const cautionsOf = async (desk: Desk, line: string) =>
  (await desk.ask(line)).cautions.filter(({ key }) => key === 'jar_over_ceiling').map(({ text }) => plain(text))

const begun = async (...lines: readonly string[]): Promise<Desk> => {
  const desk = jarDesk()
  for (const line of lines) await desk.ask(line)
  return desk
}

describe('/jar correct judges the whole jar', () => {
  it('when spirit that was added is less', async () => {
    const desk = await begun(
      '/jar start a of:1 g nutmeg spirit:1 l 95%',
      '/jar add a spirit:20 l 95%',
      '/jar add a of:20 g nutmeg',
    )
    const line = '/jar correct a entry:2 spirit:10 ml 95%'
    const message = await over(desk, line)
    expect(message).toContain('For 1.01 l of spirit use at most 1 g nutmeg')
    expect(lineIn(message)).toBe(`${line} already:yes`)
    expect(await over(desk, '/jar correct a entry:2 spirit:2 l 95%')).toContain('at most 3 g')
    await desk.ask('/jar correct a entry:2 spirit:21 l 95%')
  })

  it('when spirit of the start is less, with plants that came later', async () => {
    const desk = await begun('/jar start b of:1 g nutmeg spirit:10 l 95%', '/jar add b of:9 g nutmeg')
    const line = '/jar correct b entry:1 spirit:1.1 l 95%'
    expect(lineIn(await over(desk, line))).toBe(`${line} already:yes`)
    await over(desk, '/jar correct b spirit:9.9 l 95%')
    await desk.ask('/jar correct b spirit:10.1 l 95%')
  })

  it('when its strength is less, so that less drink comes of it', async () => {
    const desk = await begun('/jar start s of:1 g nutmeg spirit:1 l 95%')
    await over(desk, '/jar correct s strength:40%')
    await desk.ask('/jar correct s strength:80%')
  })

  it('when there are more plants, and says how many fit', async () => {
    const desk = await begun('/jar start b of:1 g nutmeg spirit:10 l 95%', '/jar add b of:8 g nutmeg')
    const later = await over(desk, '/jar correct b entry:2 of:90 g nutmeg')
    expect(lineIn(later)).toMatch(/^\/jar correct b .*of:8\.9 g nutmeg/)
    await desk.ask(lineIn(later))
    const first = await over(desk, '/jar correct b entry:1 of:50 g nutmeg')
    await desk.ask(lineIn(first))
  })

  it('records what is so already, with the caution at every step until it is put right', async () => {
    const desk = await begun('/jar start a of:1 g nutmeg spirit:1 l 95%', '/jar add a spirit:20 l 95%')
    await desk.ask('/jar add a of:20 g nutmeg')
    const [caution] = await cautionsOf(desk, '/jar correct a entry:2 spirit:10 ml 95% already:yes')
    expect(caution).toMatch(/A has 21(?:\.0*)? g nutmeg.*Don’t drink it or give it away/)
    expect(await cautionsOf(desk, '/jar shake a')).toHaveLength(1)
    expect(await cautionsOf(desk, '/jar correct a entry:2 spirit:15 l 95%')).toHaveLength(1)
    expect(await cautionsOf(desk, '/jar add a spirit:6 l 95%')).toEqual([])
  })
})

describe('/jar add', () => {
  it('says how much still fits beside what is in', async () => {
    const desk = await begun('/jar start w of:1 g wormwood spirit:1 l 95%')
    const message = await over(desk, '/jar add w of:9 g fresh sage + 20 g rosemary')
    expect(lineIn(message)).toMatch(/^\/jar add w of:4\.9 g (?:fresh )?sage \+ 20 g rosemary$/)
    await desk.ask(lineIn(message))
    expect(await over(desk, '/jar add w of:1 g fresh sage')).toContain('already')
  })

  it('says when no more fits, what a piece weighs, and how to record what is in', async () => {
    const desk = await begun('/jar start n of:1 g nutmeg spirit:1 l 95%')
    const message = await over(desk, '/jar add n of:1 nutmeg')
    expect(message).toContain('One nutmeg weighs 5 to 7 g. No more of it fits in n.')
    expect(lineIn(message)).toBe('/jar add n of:1 nutmeg already:yes')
    expect(await cautionsOf(desk, lineIn(message))).toHaveLength(1)
  })

  it('lets what was recorded stand, and asks only of what brings it further over', async () => {
    const desk = await begun('/jar start n of:1 g nutmeg spirit:1 l 95%', '/jar add n of:5 g nutmeg already:yes')
    expect(await cautionsOf(desk, '/jar add n of:10 g rosemary')).toHaveLength(1)
    await over(desk, '/jar add n of:0.1 g nutmeg')
  })

  it('counts dried plants as dried ones', async () => {
    const desk = await begun('/jar start d of:2 g dried sage spirit:1 l 95%')
    await over(desk, '/jar add d of:3 g fresh sage')
    await desk.ask('/jar add d of:1.9 g fresh sage')
    const fresh = await begun('/jar start f of:2 g fresh sage spirit:1 l 95%')
    await over(fresh, '/jar add f of:2.1 g dried sage')
    await fresh.ask('/jar add f of:1.9 g dried sage')
  })
})

describe('what happened is recorded with the caution', () => {
  it('an undo that takes the spirit away', async () => {
    const desk = await begun(
      '/jar start a of:1 g nutmeg spirit:1 l 95%',
      '/jar add a of:5 g nutmeg already:yes',
      '/jar add a spirit:20 l 95%',
    )
    expect(await cautionsOf(desk, '/jar shake a')).toEqual([])
    await desk.ask('/jar undo a')
    expect(await cautionsOf(desk, '/jar undo a')).toHaveLength(1)
    expect(await cautionsOf(desk, '/jar undo a')).toEqual([])
  })

  it('a straining that far less came out of than went in', async () => {
    const few = await begun('/jar start f of:2 g wormwood spirit:1 l 70%')
    expect(await cautionsOf(few, '/jar strain f measured:200 ml')).toHaveLength(1)
    const all = await begun('/jar start f of:2 g wormwood spirit:1 l 70%')
    expect(await cautionsOf(all, '/jar strain f measured:900 ml')).toEqual([])
  })

  it('a syrup that dilutes it too little, until water goes in', async () => {
    const desk = await begun('/jar start g of:2 g wormwood spirit:1 l 70%', '/jar strain g measured:950 ml')
    expect(await cautionsOf(desk, '/jar sweeten g water:1 ml sugar:100 g')).toHaveLength(1)
    expect(await cautionsOf(desk, '/jar sweeten g water:1.1 l')).toEqual([])
  })

  it('bottles of it neat', async () => {
    const desk = await begun('/jar start g of:2 g wormwood spirit:1 l 70%', '/jar strain g measured:950 ml')
    expect(await cautionsOf(desk, '/jar bottle g bottles:1 x 500 ml')).toHaveLength(1)
  })

  it('coffee keeps its share of the spirit, which is no fault of the drink', async () => {
    const desk = await begun('/jar start c of:400 g coffee beans spirit:1 l 60%')
    expect(await cautionsOf(desk, '/jar strain c')).toEqual([])
  })
})

describe('a batch made again or from a code', () => {
  it('/again of a jar that is over its limit is refused with a line that runs', async () => {
    const desk = await begun('/jar start n of:1 g nutmeg spirit:1 l 95%', '/jar add n of:5 g nutmeg already:yes')
    const message = await over(desk, '/again n')
    expect(lineIn(message)).toMatch(/^\/plan of:1 g nutmeg spirit:/)
    await desk.ask(lineIn(message))
  })

  it('/jar start from a code is refused with a line that runs', async () => {
    const desk = jarDesk()
    const message = await over(desk, '/jar start g from:11M4QTHJ0001MYJ0JNHC00VV9QPCBAHF5DGB80V3')
    expect(lineIn(message)).toMatch(/^\/jar start g of:[\d.]+ g genepi spirit:2000 ml 95%/)
    await desk.ask(lineIn(message))
  })
})
