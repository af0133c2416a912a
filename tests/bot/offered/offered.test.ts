import { expect, it } from 'vitest'
import { sampled } from '../../runs.ts'
import { NOW_MS, readme, somebody, typed } from './corpus.ts'
import { deskOf, faultOf, type Offer, offersOf, type Setting } from './offers.ts'

/** What is wrong with an offer, as things stand or once the line that was answered with it is recorded. */
async function faultAfter(offer: Offer, line: string, setting: Setting): Promise<string | null> {
  const before = await faultOf(offer, setting)
  if (before === null) return null
  const desk = await deskOf(setting)
  await desk.toldOf(line)
  return faultOf(offer, { ...setting, person: await desk.person() })
}

async function faultsOf(lines: readonly string[], place: Setting['place']) {
  const setting = { person: await somebody(place), nowMs: NOW_MS, place, zone: 'UTC' }
  const seen = new Set<string>()
  const faults: string[] = []
  for (const line of lines) {
    for (const offer of await offersOf(line, setting)) {
      if (seen.has(offer.line)) continue
      seen.add(offer.line)
      const fault = await faultAfter(offer, line, setting)
      if (fault !== null) faults.push(`${line} offers ${offer.line}: ${fault}`)
    }
  }
  return { faults, offers: seen.size }
}

/** Few enough for every day, and other ones in each place. */
const STEP = 8

it.each([
  ['console', 0],
  ['private', 1],
] as const)(
  'every line that is offered, typed, does what it says: %s',
  async (kind, from) => {
    const { faults, offers } = await faultsOf(sampled([...typed, ...readme], STEP, from), { kind })
    expect(faults).toEqual([])
    expect(offers).toBeGreaterThan(200 / STEP)
  },
  120_000,
)
