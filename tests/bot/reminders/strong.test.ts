import { describe, expect, it } from 'vitest'
import type { Happening, Started } from '../../../core/jar/entry/entry.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { whiteSugar } from '../../../core/recipe/sweetening.ts'
import type { Planned } from '../../core/jar/jars.ts'
import { world } from './inbox.ts'
import { at, happened, jarOf, personWith } from './people.ts'

const STARTED = at('2026-12-01', '18:00')
const TARGETS = { abvPercent: 30, sugarGPerL: 250 }

const spirit = (abvPercent: number): Started['spirits'][number] => ({
  amount: exactly(1000),
  by: 'volume',
  atC: 20,
  abvPercent: exactly(abvPercent),
  abvAtC: null,
  readsProof: false,
  sugarGPerL: exactly(0),
})

const strained = (ml: number | null): Happening => ({
  kind: 'strained',
  measured: ml === null ? null : { amount: exactly(ml), by: 'volume', atC: 20 },
  strength: null,
  rinseWaterG: exactly(0),
})

interface Past {
  readonly abvPercent?: number
  readonly plan?: Partial<Planned>
  readonly past: readonly Happening[]
}

/** What happened to a jar a day apart from 10 December, and what is said of it on a later day. */
async function saidOn(day: string, { abvPercent = 95, plan = {}, past }: Past): Promise<string> {
  const jar = jarOf({ name: 'basil', startedMs: STARTED, plan, more: { spirits: [spirit(abvPercent)] } })
  const days = past.map((what, index) => [at(`2026-12-${10 + index}`, '10:00'), what] as const)
  const person = days.reduce((known, [ms, what]) => happened(known, 'basil', ms, what), personWith([jar]))
  const here = await world({ people: { local: person } })
  await here.tick(at(day))
  return here.box.texts()[0] ?? ''
}

describe('a reminder to sweeten', () => {
  const COOL = 'Cool the syrup completely first'

  it('says to let the syrup cool, and where its amounts are estimates', async () => {
    const unmeasured = await saidOn('2026-12-11', { plan: { targets: TARGETS }, past: [strained(null)] })
    expect(unmeasured).toMatch(/^Sweeten basil: about \d+ g sugar in [\d.]+ m?l water\.\n/)
    expect(unmeasured).toContain(COOL)
    const measured = await saidOn('2026-12-11', { plan: { targets: TARGETS }, past: [strained(930)] })
    expect(measured).toContain(COOL)
    expect(measured).not.toContain('about')
  })

  it('says nothing of syrup where only water goes in, nor of amounts that it does not name', async () => {
    const watered = { plan: { targets: { ...TARGETS, sugarGPerL: 0 } }, past: [strained(930)] }
    expect(await saidOn('2026-12-11', watered)).toMatch(/^Sweeten basil: [\d.]+ m?l water\.\n/)
    expect(await saidOn('2026-12-11', watered)).not.toContain(COOL)
    const unplanned = await saidOn('2026-12-11', { past: [strained(null)] })
    expect(unplanned).toMatch(/^Sweeten basil\.\n/)
    expect(unplanned).toContain(COOL)
    expect(unplanned).not.toContain('about')
  })
})

describe('what has rested', () => {
  const bottled: Happening = { kind: 'bottled', bottles: [{ count: 1, volumeMl: 700 }] }
  const plan = { restDays: 20 }

  it('is ready to drink where it can be drunk', async () => {
    const sweetened: Happening = { kind: 'sweetened', waterG: exactly(800), sweetenings: whiteSugar(exactly(300)) }
    const text = await saidOn('2026-12-31', { plan, past: [strained(930), sweetened, bottled] })
    expect(text).toMatch(/^Basil is ready to drink\.\n/)
  })

  it('is called too strong where it is, known or estimated', async () => {
    const neat = await saidOn('2026-12-30', { plan, past: [strained(930), bottled] })
    expect(neat).toMatch(/^Basil has rested: 9\d(\.\d+)? % vol, undiluted\. Don’t drink it neat\.\n/)
    const little: Happening = { kind: 'sweetened', waterG: exactly(50), sweetenings: whiteSugar(exactly(50)) }
    const sweet = await saidOn('2026-12-31', { plan, past: [strained(null), little, bottled] })
    expect(sweet).toMatch(/^Basil has rested: \d\d(\.\d+)? % vol\. Don’t drink it neat\.\n/)
  })
})
