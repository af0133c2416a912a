import { describe, expect, it } from 'vitest'
import { isTooWeakForLowAcid } from '../../../core/botanical/limits/low-acid.ts'
import { newAsker } from '../asker.ts'
import { flat } from '../flat.ts'
import { testDesk } from '../test-desk.ts'

// Daifas et al., J. Food Prot. 66 (2003) 610: 6 % ethanol by mass stopped C. botulinum in broth; 20 % vol is a margin.

const deskNow = () => testDesk({ asker: newAsker(), nowMs: Date.UTC(2026, 8, 22, 9), width: 200 })

const WEAK = 'no smell warns you'

it('takes as too weak what is under 20 %, as its first decimal says', () => {
  expect([18, 19.9, 19.96, 20, 40].filter(isTooWeakForLowAcid)).toEqual([18, 19.9])
})

describe('vegetables that become weaker than 20 %', () => {
  it.each([
    ['/plan of:300 g celery spirit:1 l strength:40% to-strength:17%', 'At 17 % botulism could grow from the celery'],
    [
      '/plan of:2 jalapeños spirit:700 ml strength:40% to-strength:19%',
      'At 19 % botulism could grow from the jalapeño',
    ],
    ['/plan of:2 birds eye chillies spirit:700 ml strength:40% to-strength:19%', 'At 19 % botulism could grow'],
    ['/plan of:80 g okra spirit:1 l strength:40% to-strength:18% unknown-ok:yes', 'could grow from the okra'],
    ['/plan of:10 lemons, 20 g garlic spirit:1 l strength:40% to-strength:18%', 'could grow from the garlic'],
    ['/jar start of:200 g carrots spirit:1 l strength:40% to-strength:18%', 'could grow from the carrots'],
    ['/syrup infusion:900 ml of:20 g onion spirit:1 l 40% to-strength:18% to-sweetness:100 g/L', 'from the onion'],
    ['/syrup infusion:900 ml of:20 g onion spirit:1 l 40% to-strength:18%', 'from the onion'],
    ['250 g beetroot in 1 l of 40% vodka down to 18%', 'could grow from the beetroot'],
    ['barbabietola in 1 l di vodka al 40% a 18%', 'could grow from the beetroot'],
  ])('%s says so first', async (line, said) => {
    expect(flat(await deskNow().firstOf(line))).toContain(said)
  })

  it.each([
    '/plan of:300 g celery spirit:1 l strength:40% to-strength:20%',
    '/plan of:10 lemons spirit:1 l strength:40% to-strength:18%',
    '/plan of:dried chilli spirit:1 l strength:40% to-strength:18%',
    '/syrup infusion:900 ml of:20 g onion spirit:1 l 40% to-strength:25% to-sweetness:100 g/L',
  ])('%s says nothing of it', async (line) => {
    expect(flat(await deskNow().textOf(line))).not.toContain(WEAK)
  })

  it('names the published source one question deeper', async () => {
    const line = '/plan of:300 g celery spirit:1 l strength:40% to-strength:17%'
    expect(flat(await deskNow().textOf(line))).toContain('J. Food Prot. 66 (2003), 610')
    expect(flat(await deskNow().firstOf(line))).not.toContain('Daifas')
  })
})

describe('a jar of vegetables', () => {
  const START =
    '/jar start bloody of:200 g carrots spirit:1 l strength:40% to-strength:18% to-sweetness:190 g/L when:2026-09-01'

  it('tells it where the syrup is told, once it is in, and of the spirit that mends it', async () => {
    const desk = deskNow()
    await desk.run(START)
    expect(await desk.firstOf('/jar show bloody')).not.toContain(WEAK)
    expect(flat(await desk.firstOf('/syrup jar:bloody'))).toContain('At 18 % botulism could grow from the carrots')
    expect(flat(await desk.firstOf('/jar strain bloody measured:1 l strength:33%'))).toContain(
      'At 18 % botulism could grow from the carrots',
    )
    const sweetened = flat(await desk.firstOf('/jar sweeten bloody sugar:330 g water:700 ml'))
    expect(sweetened).toContain('Under 20 % botulism can grow on the carrots, and no smell warns you.')
    expect(sweetened).toMatch(/Make it keep: \/jar add bloody spirit:\d+ ml 40%/)
    expect(await desk.firstOf('/jar list')).toContain(WEAK)
    expect(flat(await desk.firstOf('/adjust jar:bloody to-strength:16%'))).toContain('At 16 % botulism could grow')
    const [, mend] = /(\/jar add bloody spirit:\d+ ml 40%)/.exec(sweetened)!
    expect(await desk.firstOf(mend!)).not.toContain(WEAK)
    expect(await desk.firstOf('/jar show bloody')).not.toContain(WEAK)
  })
})
