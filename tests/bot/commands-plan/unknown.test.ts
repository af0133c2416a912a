import { describe, expect, it, test } from 'vitest'
import { allRefusedNames } from '../../../core/botanical/refuse/all-refused.ts'
import { sampled } from '../../runs.ts'
import { flat } from '../flat.ts'
import { ask, askAny, faults, number, textOf } from './desk.ts'

const UNSEEMLY = /undefined|NaN|Infinity|∞|\[object|null|[-−]\d+(\.\d+)? ?(g|kg|ml|l|cups?|oz|lb)\b/
const TOLD = '/plan of:30 g jaboticaba + 8 lemons spirit:0.7 l 95% unknown-ok:yes days:10'
const UNTOLD = '/plan of:30 g jaboticaba spirit:0.7 l 95% unknown-ok:yes'

describe('a plant that is not in the catalogue', () => {
  test.each(['', ' unknown-ok:no', ' days:10', ' ready-by:24 December'])(
    'is a food without an amount with%s, and the line that is named runs',
    async (more) => {
      const { error } = await askAny(`/plan of:30 g jaboticaba + 8 lemons spirit:0.7 l 95%${more}`)
      expect(error).toMatchObject({ code: 'not_found', option: 'of' })
      expect(error!.message).toMatch(
        /^I have no figures for jaboticaba, so the amounts and days are yours\. For example: /,
      )
      const line = /\/plan .+$/.exec(error!.message)![0]
      expect(line).toContain('of:30 g jaboticaba + 8 lemons spirit:0.7 l 95%')
      await ask(line)
    },
  )

  it('has no id, and of the days only those that were told', async () => {
    const { data } = await ask(TOLD)
    expect(data.botanicals).toEqual([
      { id: null, massG: 30, massGPlusMinus: 1, count: null },
      { id: 'lemon_peel', massG: 84, massGPlusMinus: 33.6, count: 8 },
    ])
    const dates = { start: '2026-06-10', tasteFrom: null, ready: null }
    expect(data.dates).toEqual({ ...dates, strainFrom: '2026-06-20', strainBy: '2026-06-20' })
    expect((await ask(UNTOLD)).data.dates).toEqual({ ...dates, strainFrom: null, strainBy: null })
  })

  test.each([
    ['10 giorni', '2026-06-20'],
    ['2 weeks', '2026-06-24'],
    ['1 month', '2026-07-10'],
    ['12 hours', '2026-06-11'],
  ])('is strained after %s on %s', async (days, day) => {
    expect((await ask(`${UNTOLD} days:${days}`)).data.dates.strainBy).toBe(day)
  })

  it('keeps its place among the plants', async () => {
    const { botanicals } = (
      await ask('/plan of:lemon + 30 g jaboticaba + 20 g ginger + 9 g carambola spirit:1 l 95% unknown-ok:sì')
    ).data
    expect(botanicals.map(({ id }) => id)).toEqual(['lemon_peel', null, 'ginger', null])
  })

  it('goes by the days that were said, and says what is usual where that is something else', async () => {
    const known = await ask('/plan of:8 lemons spirit:0.7 l 95% days:10 start:1 June')
    expect(known.notes.map(({ key }) => key)).toContain('plan_days_said')
    expect(known.data.dates).toMatchObject({ start: '2027-06-01', strainFrom: '2027-06-11', strainBy: '2027-06-11' })
    const usual = await ask('/plan of:8 lemons spirit:0.7 l 95% days:15')
    for (const { notes } of [usual, await ask(TOLD)]) {
      expect(notes.map(({ key }) => key)).not.toContain('plan_days_said')
    }
  })

  it('tells a plant that takes longer from one that takes as long as was said', async () => {
    const { dates } = (await ask('/plan of:10 g dried chilli + 8 lemons spirit:1 l 60% days:20 start:1 June')).data
    expect(dates).toMatchObject({ strainFrom: '2027-06-21', strainBy: '2027-06-21' })
  })

  it('puts in at once what takes as long as any, however long it is steeped', async () => {
    const text = await textOf('/plan of:8 lemons + 6 oranges spirit:1 l 60% days:100 start:1 June')
    expect(text).not.toContain('Add ')
  })

  it('reads hours', async () => {
    const { dates } = (await ask('/plan of:12 g green tea spirit:1 l 40% days:6 hours start:1 June')).data
    expect(dates).toMatchObject({ strainFrom: '2027-06-01', strainBy: '2027-06-01' })
  })

  it('is told whose the amount and the days are, without drama', async () => {
    for (const line of [TOLD, UNTOLD]) {
      const text = await textOf(line)
      expect(text).toMatch(/^Buy /)
      expect(text).not.toMatch(/poison centre|botanist|vouch|I do not know/)
      expect(text).not.toMatch(/Best before|Taste\.|Ready|Rest|usual|most use/)
      expect(text).not.toMatch(UNSEEMLY)
      const { cautions } = await ask(line)
      expect(cautions[0]!.text).toMatch(/^Jaboticaba: ask about allergies before you pour\.$/)
    }
    expect(await textOf(TOLD)).toMatch(/\n {2}20 Jun +Strain: about/)
    expect((await ask(UNTOLD)).notes.map(({ key }) => key)).toContain('plan_unknown_days')
    expect((await ask(TOLD)).notes.map(({ key }) => key)).not.toContain('plan_unknown_days')
  })

  it('is reckoned with over a wide range, which is said', async () => {
    const known = await ask('/plan of:30 g ginger spirit:0.7 l 95%')
    const unknown = await ask(UNTOLD)
    for (const name of ['infusionMlPlusMinus', 'keptBackMlPlusMinus', 'infusionAbvPercentPlusMinus'])
      expect(number(unknown, name)).toBeGreaterThan(number(known, name))
    const range = unknown.notes.find(({ key }) => key === 'plan_unknown_range')!
    expect(range.text.replaceAll('\u00a0', ' ')).toContain('0 to 95 % of water and 0.3 to 2 ml')
  })

  it('is warned of where its water may weaken the jar too far', async () => {
    const { cautions } = await ask('/plan of:400 g jaboticaba spirit:1 l 25% to-strength:16% unknown-ok:yes')
    expect(cautions.map(({ key }) => key)).toContain('plan_jar_undecided')
  })

  it('fills bottles, in cups and in words', async () => {
    const line = '/plan of:1 oz jaboticaba bottles:4 x 500 ml strength:95% unknown-ok:yes days:10'
    expect((await ask(line)).data.bottles).toEqual([{ count: 4, volumeMl: 500 }])
    expect(await textOf(line)).not.toMatch(UNSEEMLY)
  })

  it('is shown as typed, cut short, with no quotes of its own', async () => {
    const text = await textOf(`/plan of:30 g me”adow“ ${'sweet '.repeat(15)} spirit:1 l 95% unknown-ok:yes`)
    expect(flat(text)).toMatch(/^I don’t know “me"adow" (sweet )+[a-z]*…”\. What else/)
  })
})

describe('refused with unknown-ok:yes', () => {
  test.each([
    ['of:jaboticaba', 'bad_value', 'of'],
    ['of:8 jaboticabas', 'bad_value', 'of'],
    ['of:2 cups jaboticaba', 'bad_value', 'of'],
    ['of:30 g jaboticaba + 20 g JABOTICABA', 'bad_value', 'of'],
    ['of:30 g !!!', 'not_found', 'of'],
    // Near a plant with a limit, which another name would get past.
    ['of:30 g wormwood mush', 'not_found', 'of'],
    ['of:30 g foraged jaboticaba', 'refused', 'of'],
    ['of:30 g jaboticaba from the woods', 'refused', 'of'],
    ['of:30 g unknown berries', 'refused', 'of'],
    ['of:30 g hemlok', 'ambiguous', 'of'],
    ['of:30 g wild fennel', 'ambiguous', 'of'],
    ['of:30 g sage', 'ambiguous', 'of'],
    ['of:300 g dried wormwood + 30 g jaboticaba', 'over_ceiling', undefined],
    ['of:1 kg jaboticaba', 'unreachable', undefined],
    ['of:300 g honeybush', 'over_ceiling', undefined],
    ['of:30 g jaboticaba ready-by:24 December', 'unreachable', 'ready-by'],
    ['of:30 g jaboticaba days:soon', 'bad_value', 'days'],
    ['of:30 g jaboticaba days:0', 'bad_value', 'days'],
  ])('%s: %s', async (of, code, option) => {
    const { error } = await askAny(`/plan ${of} spirit:0.7 l 70% unknown-ok:yes`)
    expect([error?.code, error?.option]).toEqual([code, option])
    expect(error?.message).not.toMatch(UNSEEMLY)
  })

  it('every name of the refuse list, alone and beside an unknown plant', async () => {
    // The core is asked about all of them.
    for (const { name } of sampled(allRefusedNames, 30)) {
      for (const of of [`20 g ${name}`, `20 g jaboticaba + 20 g ${name}`]) {
        const { error } = await askAny(`/plan of:${of} spirit:1 l 95% unknown-ok:yes days:10`)
        expect([of, error?.code]).toEqual([of, 'refused'])
      }
    }
  })

  test.each(['maybe', 'yes please', '1', 'true'])('an answer of %s', async (answer) => {
    const { error } = await askAny(`/plan of:30 g jaboticaba spirit:1 l 95% unknown-ok:${answer}`)
    expect(error).toMatchObject({ code: 'bad_value', option: 'unknown-ok' })
    expect(error!.message).toContain('is that yes or no?')
  })
})

test('unknown-ok changes nothing where every plant is known', async () => {
  for (const answer of ['yes', 'sì', 'SI', 'no']) {
    const line = '/plan of:8 lemons spirit:0.7 l 95%'
    expect(await ask(`${line} unknown-ok:${answer}`)).toEqual(await ask(line))
  }
  expect(faults()).toEqual([])
})
