import { describe, expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

const WEAK = 'nobody can say if that keeps'
const START = '/jar start weak of:500 g raspberries spirit:700 ml 31% when:2026-09-01'

async function withWeak() {
  const desk = testDesk({ asker: newAsker(), nowMs: Date.UTC(2026, 8, 22, 9), width: 200 })
  const started = await desk.firstOf(START)
  return { desk, started: flat(started) }
}

describe('a jar of which nobody can say if it keeps', () => {
  it('is told so once, with what mends it and what comes next', async () => {
    const { started } = await withWeak()
    expect(started).toContain(WEAK)
    expect(started).toContain('It’s at the very edge. 35 ml of 31 % spirit would make it keep.')
    expect(started).toContain('Make it keep: /jar add weak spirit:35 ml 31%')
    expect(started).toContain('Tag it:')
  })

  it.each(['/jar shake weak', '/jar taste weak rating:4', '/jar note weak note:lovely colour', '/jar shake all'])(
    'is gone on with by %s, the rest one question deeper',
    async (line) => {
      const { desk } = await withWeak()
      const { text } = await desk.toldOf(line, 'first')
      expect(text).not.toContain(WEAK)
      expect(text).not.toContain('Make it keep')
      const again = await withWeak()
      expect(flat(await again.desk.textOf(line))).toContain(WEAK)
    },
  )

  it('is told so anew when it became so anew, and when it is bottled', async () => {
    const { desk } = await withWeak()
    await desk.run('/jar add weak spirit:100 ml 31%')
    expect(await desk.firstOf('/jar shake weak')).not.toContain(WEAK)
    expect(flat(await desk.firstOf('/jar add weak water:100 ml'))).toContain(WEAK)
    expect(flat(await desk.firstOf('/jar strain weak measured:950 ml'))).not.toContain(WEAK)
    expect(flat(await desk.firstOf('/jar bottle weak bottles:2 x 450 ml already:yes'))).toContain(WEAK)
  })

  it('holds its caution on every first screen where it can ferment', async () => {
    const { desk } = await withWeak()
    await desk.run('/jar add weak water:400 ml already:yes')
    for (const line of ['/jar shake weak', '/jar taste weak rating:3'])
      expect(flat(await desk.firstOf(line))).toContain('can ferment')
  })
})
