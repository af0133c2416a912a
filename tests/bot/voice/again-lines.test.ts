import { beforeAll, describe, expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { filled, named, WIDTHS } from './first-screens.ts'
import { longest, type MeasuredScreen, overBudget } from './measured-screens.ts'

const NOW_MS = Date.UTC(2027, 5, 1, 9)

const STRAINED = ['/jar strain jar measured:950 ml when:2026-09-07']
const TOO_LITTLE_SUGAR = '/jar sweeten jar sugar:100 g water:500 ml when:2026-09-07'
const LONG_NOTE =
  'bitter at the back of the tongue, and the colour went brown within a week although it stood in the dark cupboard'

/** How a batch may have gone, and with what it is planned once more. */
const WAYS = {
  'still steeping': [],
  'otherwise in every way': [
    ...STRAINED,
    TOO_LITTLE_SUGAR,
    '/jar taste jar rating:2 when:2026-10-07 note:too sweet, and my neighbour who never says anything said so too',
  ],
  'otherwise, and liked': [...STRAINED, TOO_LITTLE_SUGAR, '/jar taste jar rating:5 when:2026-10-07'],
  'bitter, and told at length': [...STRAINED, `/jar taste jar rating:1 when:2026-10-07 note:${LONG_NOTE}`],
  'with another jar in it': [
    '/jar start spice of:10 g Ceylon cinnamon spirit:500 ml 60% when:2026-09-01',
    '/jar strain spice measured:450 ml when:2026-09-07',
    ...STRAINED,
    '/jar combine jar with:spice when:2026-09-08',
    '/jar taste jar rating:2 when:2026-10-07 note:too weak',
  ],
} as const

const AGAIN = ['/again jar', '/again jar spirit:700 ml 75%']

const starts = (plant: string): readonly string[] => [
  `/jar start jar of:${plant} spirit:1 l 60% when:2026-09-01`,
  `/jar start jar of:10 g ${plant} spirit:1 l 60% to-strength:30% to-sweetness:250 g/L days:100 when:2026-09-01`,
]

const screens: MeasuredScreen[] = []
const faults: string[] = []

async function planAgain(start: string, way: keyof typeof WAYS) {
  const desk = testDesk({ asker: newAsker(), nowMs: NOW_MS })
  if ((await desk.jsonOf(start)).error !== undefined) return
  for (const line of WAYS[way]) {
    const { error } = await desk.jsonOf(line)
    if (error !== undefined) faults.push(`${start}, ${line}: ${JSON.stringify(error)}`)
  }
  for (const line of AGAIN) {
    for (const { width, text } of await desk.firstAt(line, WIDTHS))
      screens.push({ of: `${start}, ${way}, ${line}`, width, lines: filled(text).length, text })
  }
  faults.push(...desk.faults())
}

beforeAll(async () => {
  const ways = Object.keys(WAYS) as readonly (keyof typeof WAYS)[]
  for (const [at, plant] of sampled(catalogue, 10).entries())
    for (const start of starts(named(plant)))
      for (const way of process.env.LARDERBELL_LONG ? ways : [ways[at % ways.length]!]) await planAgain(start, way)
}, 300_000)

describe('a plan of a batch once more', () => {
  it('could be made', () => {
    expect(faults).toEqual([])
    expect(screens.length).toBeGreaterThan(100)
  })

  it('is one screen, as a plan is, however the last one went', () => {
    console.log(`the longest: ${longest(screens)}`)
    expect(overBudget(screens, budgets.plan).join('\n\n')).toBe('')
  })
})

describe('what no first screen has room for', () => {
  const gone = async (way: keyof typeof WAYS) => {
    const desk = testDesk({ asker: newAsker(), nowMs: NOW_MS, width: 200 })
    await desk.run('/jar start jar of:10 lemons spirit:1 l 60% when:2026-09-01')
    for (const line of WAYS[way]) await desk.run(line)
    return desk
  }

  it('is the rest of a long note', async () => {
    const desk = await gone('bitter, and told at length')
    const first = await desk.firstOf('/again jar')
    expect(first).toContain('noted “bitter at the back of…”.')
    const { text: more } = await desk.toldOf('/again jar', 'more')
    expect(more).toContain(`Last time you noted “${LONG_NOTE}”.`)
  })

  it('is the other way, and when it was strained', async () => {
    const desk = await gone('otherwise in every way')
    const first = await desk.firstOf('/again jar')
    expect(first).toMatch(/Last time: .*, “too sweet, and my…”\. Now less sweet: /)
    expect(first).not.toContain('you strained')
    const { text: more } = await desk.toldOf('/again jar', 'more')
    expect(more).toContain('Last time you strained after 6 days.')
    expect(more).toMatch(/Aim for .*: \/again jar to-strength:/)
  })
})
