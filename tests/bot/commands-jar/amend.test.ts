import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { jarDesk, LEMON, numberIn } from './desk.ts'

const sweetened = async () => {
  const desk = jarDesk('2026-11-01')
  await desk.ask(LEMON)
  desk.at('2026-11-10')
  await desk.ask('/jar taste lemon rating:2 note:sharp')
  desk.at('2026-11-20')
  await desk.ask('/jar strain lemon measured:920 ml strength:78%')
  desk.at('2026-11-21')
  await desk.ask('/jar sweeten lemon water:1 l sugar:500 g')
  return desk
}

describe('/jar correct', () => {
  it('puts the latest entry right that has what is corrected, and says what it was', async () => {
    const desk = await sweetened()
    expect(await desk.headlineOf('/jar correct lemon sugar:550 g')).toMatchObject({
      key: 'jar_corrected',
      values: { kind: 'sweetened', changes: [{ option: 'sugar', was: '500 g', now: '550 g' }] },
    })
    expect(await desk.textOf('/jar correct lemon sugar:560 g')).toContain('560 g sugar (was 550 g sugar)')
    expect((await desk.storyOf('lemon')).sweetened).toMatchObject({ sweetenings: [{ massG: { value: 560 } }] })
    expect((await desk.storyOf('lemon')).sweetened!.waterG.value).toBeGreaterThan(990)
    expect(await desk.textOf('/jar correct lemon measured:930 ml strength:77%')).toContain(
      '930 ml (was 920 ml), 77% (was 78%)',
    )
    expect(await desk.textOf('/jar correct lemon rating:4')).toContain('4 of 5 (was 2 of 5)')
    expect((await desk.storyOf('lemon')).happened[1]).toMatchObject({ rating: 4, note: 'sharp' })
  })

  it('says the strength that a spirit had, wherever it was said', async () => {
    const desk = jarDesk()
    await desk.ask('/jar start basil of:20 g basil spirit:500 ml 95% to-strength:30%')
    expect(await desk.textOf('/jar correct basil entry:1 strength:60%')).toContain('60% (was 95%)')
    expect(await desk.textOf('/jar correct basil spirit:500 ml 70%')).toContain('500 ml 70% (was 500 ml 95%)')
    expect(await desk.textOf('/jar correct basil strength:80%')).toContain('80% (was 70%)')
    const apart = '/jar start mint of:20 g peppermint spirit:500 ml strength:50%'
    await desk.ask(apart)
    expect(await desk.textOf('/jar correct mint strength:55%')).toContain('55% (was 50%)')
  })

  it('is spelt out where nothing was measured', async () => {
    const desk = jarDesk()
    await desk.ask(LEMON)
    await desk.ask('/jar taste lemon rating:3')
    desk.at('2026-11-20')
    expect(await desk.textOf('/jar strain lemon')).toContain('/jar correct lemon entry:3 measured:')
    const { notes } = await desk.ask('/jar correct lemon entry:3 measured:910 ml')
    expect(notes.map(({ key }) => key)).not.toContain('jar_not_measured')
  })

  it('changes the batch as if it had been typed right at once', async () => {
    const desk = await sweetened()
    const right = await desk.ask('/jar correct lemon sugar:600 g')
    const other = jarDesk('2026-11-01')
    await other.ask(LEMON)
    other.at('2026-11-20')
    await other.ask('/jar strain lemon measured:920 ml strength:78%')
    other.at('2026-11-21')
    const at = await other.ask('/jar sweeten lemon water:1 l sugar:600 g')
    for (const name of ['volumeMl', 'abvPercent', 'sugarGPerL', 'sugarGPerLPlusMinus']) {
      expect(numberIn(right, name)).toBeCloseTo(numberIn(at, name), 9)
    }
  })

  it('moves an entry to another day, and the planned days with the start', async () => {
    const desk = await sweetened()
    expect(await desk.textOf('/jar correct lemon entry:3 when:19 November')).toContain(
      '19 November 2026 (was 20 November 2026)',
    )
    await desk.ask('/jar correct lemon entry:1 when:29 October')
    const { started } = await desk.storyOf('lemon')
    expect([started.day, started.days.tasteFrom, started.days.strainFrom, started.days.strainBy]).toEqual([
      '2026-10-29',
      '2026-11-05',
      '2026-11-12',
      '2026-11-28',
    ])
  })

  it('refuses what no entry has, another entry, and nothing at all', async () => {
    const desk = await sweetened()
    expect((await desk.refused('/jar correct lemon bottles:4 x 500 ml')).code).toBe('not_found')
    expect((await desk.refused('/jar correct lemon entry:9 sugar:1 g')).code).toBe('not_found')
    expect((await desk.refused('/jar correct lemon entry:2 sugar:1 g')).message).toContain('entry 2')
    expect((await desk.refused('/jar correct lemon entry:two sugar:1 g')).option).toBe('entry')
    expect((await desk.refused('/jar correct lemon')).code).toBe('missing_option')
    expect((await desk.refused('/jar correct lemon measured:9 l')).code).toBe('bad_value')
    expect((await desk.person()).jars[0]!.entries).toHaveLength(4)
  })

  it('works the syrup out anew where it was not sweetened yet', async () => {
    const desk = await sweetened()
    await desk.ask('/jar undo lemon')
    const outcome = await desk.run('/jar correct lemon measured:900 ml')
    const [action] = outcome.ok ? outcome.reply.actions : []
    expect(lineOf(action!.call)).toMatch(/^\/jar sweeten lemon sugar:\d+ g water:[\d.]+ l$/)
    const other = jarDesk('2026-11-01')
    await other.ask(LEMON)
    other.at('2026-11-20')
    const strained = await other.run('/jar strain lemon measured:900 ml strength:78%')
    expect(strained.ok && strained.reply.actions[0]).toEqual(action)
    expect(await desk.textOf('/jar correct lemon measured:910 ml')).toMatch(/900 ml\)\.\nNow dissolve \d+ g sugar/)
  })

  it('asks again only for a reading that is still far off', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    desk.at('2026-11-20')
    const keysOf = ({ notes }: Awaited<ReturnType<typeof desk.ask>>) => notes.map(({ key }) => key)
    expect(keysOf(await desk.ask('/jar strain lemon measured:500 ml'))).toContain('jar_reading_surprising')
    expect(keysOf(await desk.ask('/jar correct lemon measured:510 ml'))).toContain('jar_reading_surprising')
    expect(keysOf(await desk.ask('/jar correct lemon measured:840 ml'))).not.toContain('jar_reading_surprising')
  })

  it('puts right what went in, as if it had been started so', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    desk.at('2026-11-10')
    expect(await desk.textOf('/jar correct lemon of:8 lemons spirit:900 ml 96%')).toMatch(
      /: 8 lemons \(was 10 lemons\), 900 ml 96% \(was 1 l 95%\)\./,
    )
    const other = jarDesk('2026-11-01')
    await other.ask('/jar start lemon of:8 lemons spirit:900 ml 96% to-strength:30% to-sweetness:250 g/L')
    const [right, meant] = [await desk.storyOf('lemon'), await other.storyOf('lemon')]
    const { typed: _, enteredMs: _e, ...corrected } = right.started
    const { typed: _t, enteredMs: _m, ...started } = meant.started
    expect(corrected).toEqual({ ...started, atMs: corrected.atMs })
    expect(await desk.textOf('/again lemon')).toContain('Buy 8 unwaxed lemons')
  })

  it('puts the strength of the spirit right alone, and keeps its amount', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    expect(await desk.textOf('/jar correct lemon strength:96%')).toContain('96% (was 95%)')
    expect((await desk.storyOf('lemon')).started.spirits).toMatchObject([
      { amount: { value: 1000 }, abvPercent: { value: 96 } },
    ])
  })

  it('puts right what was added, and what was measured before what went in', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    await desk.ask('/jar add lemon of:20 g ginger spirit:100 ml 40%')
    expect(await desk.textOf('/jar correct lemon of:30 g ginger')).toContain('30 g ginger (was 20 g ginger)')
    expect(await desk.textOf('/jar correct lemon spirit:200 ml 40%')).toContain('(was 100 ml 40%)')
    expect((await desk.storyOf('lemon')).happened[1]).toMatchObject({
      plants: [{ id: 'ginger', massG: { value: 30 } }],
      spirits: [{ amount: { value: 200 } }],
    })
    desk.at('2026-11-20')
    await desk.ask('/jar strain lemon measured:920 ml strength:78%')
    expect(await desk.textOf('/jar correct lemon strength:77%')).toContain('77% (was 78%)')
  })

  it('refuses plants that are not known or not safe, and says what can be put right', async () => {
    const desk = jarDesk('2026-11-01')
    await desk.ask(LEMON)
    expect((await desk.refused('/jar correct lemon of:10 lemons + 100 g nutmeg')).code).toBe('over_ceiling')
    expect((await desk.refused('/jar correct lemon')).message).toMatch(
      /^What was wrong\? For example: \/jar correct lemon when:yesterday$/,
    )
    expect((await desk.person()).jars[0]!.entries).toHaveLength(1)
  })
})

describe('/jar undo', () => {
  it('takes back one entry after the other, corrections too, down to the start', async () => {
    const desk = await sweetened()
    await desk.ask('/jar correct lemon sugar:550 g')
    expect(await desk.headlineOf('/jar undo lemon')).toMatchObject({ key: 'jar_undone', values: { happening: null } })
    expect((await desk.storyOf('lemon')).sweetened).toMatchObject({ sweetenings: [{ massG: { value: 500 } }] })
    expect(await desk.headlineOf('/jar undo lemon')).toMatchObject({ values: { happening: { kind: 'sweetened' } } })
    expect(await desk.headlineOf('/jar undo lemon')).toMatchObject({ values: { happening: { kind: 'strained' } } })
    expect(await desk.headlineOf('/jar undo lemon')).toMatchObject({
      values: { happening: { rating: 2, note: 'sharp' } },
    })
    const gone = await desk.ask('/jar undo lemon')
    expect(gone.data).toMatchObject({ name: null, stage: null, volumeMl: null })
    expect((await desk.refused('/jar undo lemon')).code).toBe('not_found')
    await desk.ask(LEMON)
  })

  it('takes back the last entered, not the last that happened', async () => {
    const desk = await sweetened()
    await desk.ask('/jar shake lemon when:5 November')
    expect(await desk.textOf('/jar undo lemon')).toContain('shake of lemon on 5 November 2026')
  })

  it('gives a jar that was thrown away by mistake back', async () => {
    const desk = await sweetened()
    await desk.ask('/jar discard lemon')
    expect((await desk.ask('/jar undo lemon')).data.stage).toBe('sweetened')
  })
})
