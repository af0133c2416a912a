import { describe, expect, it } from 'vitest'
import { invocationOf } from '../../../bot/calls/call.ts'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { sampled } from '../../runs.ts'
import { testDesk } from '../test-desk.ts'

const NOW_MS = Date.UTC(2026, 10, 30, 12)

const STARTS = [
  'of:400 g raspberries spirit:70 cl vodka 40%',
  'of:500 g sloes spirit:700 ml gin 40%',
  'of:450 g blackcurrants spirit:75 cl vodka 37.5% to-strength:22% to-sweetness:220 g/L',
]
const STRAINED = ['850 ml', '850 ml strength:24%', '800 ml strength:27%', '900 ml strength:22%']
const SWEETENED = ['sugar:100 g', 'sugar:250 g', 'water:100 ml sugar:150 g', 'water:20 ml sugar:300 g']
const TASTED = ['/jar taste fair rating:5', '/jar taste fair rating:2', '/jar taste fair rating:3 note:too weak']

const WENT = STARTS.flatMap((started) =>
  STRAINED.flatMap((strained, at) => {
    const sweetened = SWEETENED[at % SWEETENED.length]!
    return SWEETENED.map((each) => [started, strained, each] as const).filter(
      ([, , each]) => each === sweetened || started === STARTS[0],
    )
  }),
)

/** Every batch with one of the tastes; the short run leaves each with the other two to the long one. */
describe.each(TASTED.map((tasted, at) => ({ tasted, went: sampled(WENT, TASTED.length, at) })))(
  'with $tasted',
  ({ tasted, went }) => {
    it.each(went)(
      'a batch of %s, strained %s and sweetened with %s, can be made again',
      async (of, strained, sweet) => {
        const desk = testDesk({ nowMs: NOW_MS })
        for (const line of [
          `/jar start fair ${of} when:80 days ago`,
          `/jar strain fair measured:${strained} when:30 days ago`,
          `/jar sweeten fair ${sweet} when:30 days ago`,
          tasted,
        ])
          await desk.run(line)
        const again = await desk.run('/again fair')
        expect(again).toMatchObject({ ok: true })
        if (!again.ok) return
        for (const { call, isExample } of again.reply.actions) {
          if (isExample === true) continue
          const line = lineOf(invocationOf(call))
          expect({ line, ok: (await desk.run(line)).ok }).toEqual({ line, ok: true })
        }
      },
    )
  },
)

it('says that it aims lower than it came out, where so strong it can’t be planned', async () => {
  const desk = testDesk({ nowMs: NOW_MS })
  await desk.run('/jar start fair of:400 g raspberries spirit:70 cl vodka 40% when:60 days ago')
  await desk.run('/jar strain fair measured:850 ml strength:24% when:20 days ago')
  await desk.run('/jar sweeten fair sugar:250 g when:20 days ago')
  await desk.run('/jar taste fair rating:5')
  const text = await desk.textOf('/again fair')
  expect(text).toContain('With that much sugar 24')
  // A strength that is asked for now is not put lower in silence.
  expect(await desk.run('/again fair to-strength:26%')).toMatchObject({
    ok: false,
    error: { problem: 'infusion_too_weak' },
  })
})

describe('a jar that only spirit makes stronger', () => {
  const shelf = async () => {
    const desk = testDesk({ nowMs: NOW_MS })
    await desk.run('/jar start lemon of:10 lemons spirit:1 l 95% when:12 days ago')
    await desk.run('/jar strain lemon measured:930 ml strength:87% when:yesterday')
    return desk
  }

  it.each(['88%', '90%', '92.5%'])('offers a line that runs for %s', async (strength) => {
    const desk = await shelf()
    const refused = await desk.run(`/syrup jar:lemon to-strength:${strength}`)
    expect(refused).toMatchObject({ ok: false, error: { problem: 'jar_too_weak' } })
    const { line } = (refused as { error: { values: { line: string } } }).error.values
    expect(line).toBe(`/adjust jar:lemon to-strength:${strength}`)
    expect(await desk.run(line)).toMatchObject({ ok: true })
    expect(desk.faults()).toEqual([])
  })

  it('says how far the strongest spirit gets, where that isn’t enough', async () => {
    const desk = await shelf()
    expect(await desk.run('/syrup jar:lemon to-strength:88% to-sweetness:190 g/L')).toMatchObject({
      ok: false,
      error: { code: 'unreachable', problem: 'adjust_spirit_too_weak' },
    })
  })
})
