import { describe, expect, it, test } from 'vitest'
import { planCommandText } from '../../../bot/text/en/commands.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { sampled } from '../../runs.ts'
import { ask, askAny, faults, number, textOf } from './desk.ts'

const UNSEEMLY = /undefined|NaN|Infinity|∞|\[object|null|[-−]\d+(\.\d+)? ?(g|kg|ml|l|cups?|oz|lb)\b/

const MEASURED = [
  'volumeMl abvPercent sugarGPerL densityGPerMl massG freezesAtC ethanolG',
  'waterMl waterG sugarG syrupMl syrupG spiritMl infusionMl infusionAbvPercent keptBackMl',
]
  .join(' ')
  .split(' ')

describe('data', () => {
  test.each(planCommandText.examples)('%s holds what the contract names', async (line) => {
    const json = await ask(line)
    // A label's sugar and water's syrup may share a name with the outcome; every one is a number with its ±.
    for (const name of MEASURED) {
      expect(number(json, name)).toBeTypeOf('number')
      expect(number(json, `${name}PlusMinus`)).toBeGreaterThanOrEqual(0)
    }
    expect(number(json, 'jarMl')).toBeGreaterThan(number(json, 'spiritMl'))
    expect(number(json, 'leftoverMl')).toBeGreaterThanOrEqual(0)
    expect(Object.keys(json.data.dates)).toEqual(['start', 'tasteFrom', 'strainFrom', 'strainBy', 'ready'])
    for (const day of Object.values(json.data.dates)) expect(day).toMatch(/^2026-\d\d-\d\d$/)
    expect(await textOf(line)).not.toMatch(UNSEEMLY)
  })

  it('names what goes in, with its count and ±', async () => {
    const [lemon, ginger] = (await ask(planCommandText.examples[0]!)).data.botanicals
    expect(lemon).toEqual({ id: 'lemon_peel', massG: 84, massGPlusMinus: 33.6, count: 8 })
    expect(ginger).toMatchObject({ id: 'ginger', massG: 30, count: null })
  })

  it('fills the bottles asked for, and says how many fruit to buy for the zest', async () => {
    const json = await ask(planCommandText.examples[1]!)
    expect(json.data.bottles).toEqual([{ count: 4, volumeMl: 500 }])
    expect(number(json, 'leftoverMl')).toBe(0)
    expect(json.data.botanicals[0]!.count).toBe(Math.ceil(json.data.botanicals[0]!.massG / 10.5))
  })
})

/** Issue 3, "Tried as a new user would, in the allotment's scenario". */
describe('the allotment', () => {
  it('only 75.5 % and 40 % to be had, and cups to measure with', async () => {
    const line = '/plan of:lemon spirit:3 cups 75.5% + 1 ½ cups 40% to-strength:30%'
    const text = await textOf(line)
    expect(text).toMatch(/^Buy \d+ unwaxed lemons, 3 cups of 75\.5% spirit, 1 1\/2 cups of 40% spirit and/)
    expect(text).toContain('12 fl oz bottles')
    expect(text).toContain('oz')
    expect(number(await ask(line), 'abvPercent')).toBeCloseTo(30, 9)
  })

  it('ten lemons and a litre of 95 %', async () => {
    const text = await textOf('/plan of:10 lemons spirit:1 l strength:95%')
    expect(text.split('\n')[0]).toContain('10 unwaxed lemons')
    expect(text).toContain('weigh the peel if you can')
    expect(text).toContain('Makes five 500 ml bottles')
  })

  it('green walnuts with the sugar in from day one', async () => {
    const json = await ask('/plan of:30 green walnuts + 5 cloves spirit:1 l strength:95% sugar:300 g start:24 June')
    expect(json.data.dates.start).toBe('2026-06-24')
    expect(number(json, 'sugarGPerL')).toBeCloseTo(190, 6)
    expect(number(json, 'infusionAbvPercent')).toBeLessThan(60)
    expect(json.cautions[0]!.text).toContain('Has nuts')
  })
})

describe('what is said', () => {
  it('what may kill or maim in one caution, the worst first, and all of them deeper', async () => {
    const { cautions } = await ask('/plan of:dried wormwood + almonds + lemon + grapefruit spirit:1 l strength:95%')
    const first = cautions.filter(({ depth }) => depth === 'first')
    expect(first.map(({ key }) => key)).toEqual(['plan_grave'])
    expect(first[0]!.text).toBe(
      'Sweet almonds only (bitter ones: cyanide). On medicines? Ask your pharmacist. Not with epilepsy or in pregnancy. Has nuts: tell everybody who drinks it. Keep flames away.',
    )
    expect(cautions[1]!.text).toContain('not in pregnancy')
    expect(cautions.length).toBeGreaterThan(6)
  })

  test.each(['95%', '40%'])('flame at %s, the law and a doctor, and what must not be drunk', async (strength) => {
    const { cautions, notes } = await ask(`/plan of:lemon spirit:1 l strength:${strength}`)
    expect(cautions.map(({ key }) => key)).toContain('flame')
    const law = notes.find(({ key }) => key === 'plan_law')!.text
    expect(law).toContain('denatured')
    expect(law).toContain('doctor')
  })

  it('a harsh rest, then a short steep, then a refusal with the earliest day', async () => {
    const keys = async (day: string) =>
      (await ask(`/plan of:lemon bottles:4 strength:95% ready-by:${day}`)).notes.map(({ key }) => key)
    expect(await keys('24 December')).toContain('plan_latest_start')
    expect(await keys('12 July')).toContain('plan_hurried_rest')
    expect(await keys('1 July')).toContain('plan_hurried_steep')
    const { error } = await askAny('/plan of:lemon bottles:4 strength:95% ready-by:20 June')
    expect(error).toMatchObject({ code: 'unreachable' })
    expect(error!.message).toContain('25 June 2026')
  })

  it('which bottles stay empty', async () => {
    const text = await textOf('/plan of:lemon spirit:1 l 95% bottles:9 x 500 ml')
    expect(text).toMatch(/^The spirit fills only five of your nine bottles\.\nBuy /)
    expect(text).toContain('Fill all nine: /plan of:lemon bottles:9 x 500 ml strength:95%')
  })
})

describe('refused', () => {
  it('says what is missing with a line that runs and has it', async () => {
    const { error } = await askAny('/plan of:10 lemons')
    const lines = /For example: (\/plan .+ spirit:.+)$/.exec(error!.message)!.slice(1)
    expect(lines).toHaveLength(1)
    for (const line of lines) expect((await askAny(line)).error, line).toBeUndefined()
  })

  it('speaks of no sweetness that nobody asked for', async () => {
    const { error } = await askAny('/plan of:1 kg strawberries spirit:1 l 95% to-strength:92%')
    expect(error!.message).toMatch(
      /^It’s too weak for that: 56\.9 % can’t become 92 %\. For more, use stronger spirit or steep less in it\. At most 56 %: \/plan .*to-strength:[\d.]+%$/,
    )
    const sweet = await askAny('/plan of:10 lemons spirit:1 l 95% to-strength:80% to-sweetness:300 g/L')
    expect(sweet.error!.message).toMatch(/^It’s too weak for that: 88\.7 % can’t become 80 % with 300 g\/L\./)
  })

  test.each([
    ['/plan of:foxglove bottles:4 strength:95%', 'refused', 'of'],
    ['/plan of:lemon + ginger + hemlock bottles:4 strength:95%', 'refused', 'of'],
    ['/plan of:5 drops lemon essential oil spirit:1 l 95%', 'refused', 'of'],
    ['/plan of:lemon spirit:1 l denatured alcohol 95%', 'refused', 'spirit'],
    ['/plan of:lemon spirit:1 l rubbing alcohol 70%', 'refused', 'spirit'],
    ['/plan of:cinnamon spirit:1 l 95%', 'ambiguous', 'of'],
    ['/plan of:sage spirit:1 l 95%', 'ambiguous', 'of'],
    ['/plan of:zorblax spirit:1 l 95%', 'not_found', 'of'],
    ['/plan of:2 cups basil spirit:1 l 95%', 'bad_value', 'of'],
    ['/plan of:lemon', 'missing_option', 'bottles'],
    ['/plan of:lemon bottles:500 ml strength:95%', 'missing_option', 'bottles'],
    ['/plan of:lemon bottles:4', 'missing_option', 'strength'],
    ['/plan of:lemon spirit:1 l', 'missing_option', 'strength'],
    ['/plan of:lemon spirit:1 l 95% start:31 November', 'bad_value', 'start'],
    ['/plan of:lemon spirit:1 l 95% ready-by:soon', 'bad_value', 'ready-by'],
    ['/plan of:lemon spirit:1 l 30% steep-at:50%', 'unreachable', undefined],
    ['/plan of:1 kg strawberries spirit:0.7 l 30%', 'unreachable', undefined],
    ['/plan of:lemon spirit:0.7 l 40% to-strength:35% to-sweetness:300', 'unreachable', undefined],
    ['/plan of:30 g dried wormwood spirit:1 l 70%', 'over_ceiling', undefined],
  ])('%s: %s', async (line, code, option) => {
    const { error } = await askAny(line)
    expect(error?.code).toBe(code)
    expect(error?.option).toBe(option)
    expect(error?.message).not.toMatch(UNSEEMLY)
  })

  it('every name of the refuse list, inside a mixture of three', async () => {
    const names = allRefusedNames.map((each) => each.name)
    expect(names.length).toBeGreaterThan(100)
    // The core is asked about all of them.
    for (const name of sampled(names, 30, 2)) {
      const { error } = await askAny(`/plan of:lemon + 20 g ${name} + ginger bottles:4 strength:95%`)
      expect([name, error?.code]).toEqual([name, 'refused'])
    }
  })

  it('takes words after a spirit that may be drunk', async () => {
    expect(number(await ask('/plan of:lemon spirit:1 l vodka 40%'), 'spiritMl')).toBeCloseTo(1000, 6)
  })
})

test('every plant of the catalogue is planned in words, metric and US', async () => {
  for (const { id, names, form } of sampled(catalogue, 8)) {
    const [name] = names.en
    for (const spirit of ['1 l', '4 cups']) {
      const line = `/plan of:${form.cut === null ? `${form.state} ` : ''}${name} spirit:${spirit} 70%`
      const text = await textOf(line)
      const tried = text.startsWith('Buy') ? text : await textOf(`/plan of:${names.title} spirit:${spirit} 70%`)
      expect(`${id}: ${tried}`).toMatch(/: Buy /)
      expect(`${id}: ${tried}`).not.toMatch(UNSEEMLY)
    }
  }
  expect(faults()).toEqual([])
}, 120_000)
