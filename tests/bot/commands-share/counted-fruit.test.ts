import { describe, expect, it } from 'vitest'
import { shareRef } from '../../../bot/calls/share-ref.ts'
import { runs } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const OWNER = '123456789012345678'
const WISH = 'to-strength:30% to-sweetness:250 g/L'
/** Every one that somebody may have, or every fourth. */
const COUNTS = Array.from({ length: 40 }, (_, index) => index + 1).filter((count) => count % runs(13, 1) === 0)

const deskOf = () =>
  testDesk({ asker: { ...newAsker(), userId: OWNER }, nowMs: Date.UTC(2026, 10, 20, 12), width: 400 })
type Desk = ReturnType<typeof deskOf>

/** What a reply says of the fruit in it. */
const fruitIn = async (desk: Desk, line: string): Promise<string> =>
  (await desk.textOf(line)).match(/Buy \d+ unwaxed lemons?|no bitter pith: about [\d.]+ k?g/g)?.join(', ') ??
  `no fruit in ${line}`

/** The lines that plan what this one begins, as others do who see it shared. */
async function linesOf(desk: Desk, line: string): Promise<readonly [from: string, make: string]> {
  const { data } = await desk.jsonOf(line)
  await desk.jsonOf(`/share ${data.name}`)
  const { id: shareId, code } = (await desk.asker.store.read(OWNER)).shares.at(-1)!
  return [`/plan from:${code}`, `/share make:${shareRef({ owner: OWNER, shareId })}`]
}

describe('counted fruit', () => {
  it.each(COUNTS)('weighs under a share what it weighs on the plan of %i lemons', async (count) => {
    const desk = deskOf()
    const batch = `of:${count} lemons spirit:1 l 95% ${WISH}`
    const typed = await fruitIn(desk, `/plan ${batch}`)
    expect(typed).toContain(`Buy ${count} unwaxed lemon`)
    const [from, make] = await linesOf(desk, `/jar start ${batch}`)
    for (const line of [from, make, `${make} of:${count} lemons`, `${make} spirit:1 l 95%`]) {
      expect(await fruitIn(desk, line), line).toBe(typed)
    }
  })

  it.each(['1 l 96%', '1 l 94.5%', '500 ml 40%', '230 ml 95%'])(
    'weighs the same on from a batch that was made of a shared one with %s',
    async (spirit) => {
      const desk = deskOf()
      const [first] = await linesOf(desk, `/jar start of:10 lemons spirit:1 l 95% ${WISH}`)
      const second = `${first} spirit:${spirit}`
      const shown = await fruitIn(desk, second)
      for (const line of await linesOf(desk, second.replace('/plan', '/jar start'))) {
        expect(await fruitIn(desk, line), line).toBe(shown)
      }
    },
  )
})
