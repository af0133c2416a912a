import { describe, expect, it, test } from 'vitest'
import { ask, askAny, textOf } from './desk.ts'

const PEEL = '/plan of:50 g orange peel spirit:1 l 40%'

const plain = (text: string): string => text.replaceAll('\u00a0', ' ')

const keysOf = ({ cautions }: { readonly cautions: readonly { readonly key: string }[] }) =>
  cautions.map(({ key }) => key)

describe('a plan by strength and sugar', () => {
  // The lines: 20 and 15 % vol, 75 and 85 Delle units (core/liquid/keeping.ts names the sources).
  test.each([
    [20, 5, 'keeps'],
    [17, 150, 'keeps'],
    [15, 250, 'keeps'],
    [17, 86, 'keeps'],
    [17, 85, 'undecided'],
    [16, 30, 'undecided'],
  ])('of %f per cent with %f g/L is planned: it %s', async (percent, gPerL, word) => {
    const planned = await ask(`${PEEL} to-strength:${percent}% to-sweetness:${gPerL} g/L`)
    expect(planned.data.keeping).toBe(word)
    expect(keysOf(planned).includes('keeps_undecided')).toBe(word === 'undecided')
  })

  test.each([
    ['16', '29'],
    ['14.9', '300'],
    ['8', '100'],
    ['12', '250'],
  ])('of %s per cent with %s g/L is refused, with a line that keeps', async (percent, gPerL) => {
    const { error } = await askAny(`${PEEL} to-strength:${percent}% to-sweetness:${gPerL} g/L`)
    expect(error!.code).toBe('unreachable')
    expect(error!.message).toContain('can ferment and burst the bottle')
    const line = /(\/plan .+)$/.exec(plain(error!.message))![1]!
    expect((await ask(line)).data.keeping).toBe('keeps')
  })

  test.each([
    'of:1 kg raspberries spirit:500 ml 40%',
    'of:500 g strawberries spirit:500 ml 20%',
    'of:50 g orange peel spirit:1 l 12%',
    'of:50 g orange peel spirit:1 l 96% steep-at:10%',
    'of:10 lemons spirit:1 l 95% sugar:10 kg',
    'of:2 kg strawberries spirit:300 ml 30% + 200 ml 20%',
    'of:1 kg strawberries bottles:2 x 500 ml strength:14%',
  ])('whose jar would ferment is refused, with a line that steeps: %s', async (options) => {
    const { error } = await askAny(`/plan ${options}`)
    const message = plain(error!.message)
    expect(message).toMatch(/^It would steep at .* That can ferment and burst the jar\. This keeps: \/plan /)
    const planned = await ask(/(\/plan .+)$/.exec(message)![1]!)
    expect(['keeps', 'undecided']).toContain(planned.data.jarKeeping)
  })

  it('says no more of the ordinary sloe recipe than of any other', async () => {
    const sloes = '/plan of:500 g sloes spirit:700 ml 40% sugar:250 g'
    expect((await ask(sloes)).data).toMatchObject({ keeping: 'keeps', jarKeeping: 'keeps' })
    const text = plain(await textOf(sloes))
    expect(text).toMatch(/Rest +90 days/)
    expect(text).toMatch(/Best before +about/)
    expect(text).not.toMatch(/fridge|drink it soon|spoil|cold and under/)
  })

  it('never lets rest for months what is to be drunk within weeks', async () => {
    const undecided = plain(await textOf('/plan of:500 g sloes spirit:1 l 40% to-strength:16% to-sweetness:60 g/L'))
    expect(undecided).toContain('Keep it in the fridge and drink it within weeks.')
    expect(undecided).toMatch(/Rest +14 days/)
  })

  it('judges a jar that may not keep, and says where it stands', async () => {
    const planned = await ask('/plan of:1 kg raspberries spirit:700 ml 40%')
    expect(planned.data.jarKeeping).toBe('undecided')
    const { text } = planned.cautions.find(({ key }) => key === 'plan_jar_undecided')!
    expect(plain(text)).toMatch(/perhaps as little as 1[67] %.*fridge.*under the liquid/)
  })

  it('warns of an amount of fruit of which nothing is known', async () => {
    const { error } = await askAny('/plan of:400 g jaboticaba spirit:1 l 21% to-strength:16% unknown-ok:yes days:10')
    expect(error!.message).toContain('perhaps as little as')
  })
})
