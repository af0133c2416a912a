import { describe, expect, it } from 'vitest'
import { talkerFor } from './told.ts'

const RASP = '/jar start rasp of:500 g raspberries spirit:700 ml 60% when:50 days ago'

const begun = async (...lines: readonly string[]) => {
  const one = await talkerFor({ after: null })
  for (const line of [RASP, ...lines]) expect(await one.say(line), line).toMatchObject({ code: null })
  return one
}

const strengthOf = async (one: Awaited<ReturnType<typeof begun>>): Promise<unknown> =>
  Number((await one.say('/jar show rasp')).data.abvPercent).toFixed(1)

describe('a strength that is told as it is, and not as a hydrometer shows it through sugar', () => {
  it('is taken for that of the jar, with no correction', async () => {
    const one = await begun('/jar strain rasp measured:900 ml strength:38%')
    expect(await strengthOf(one)).not.toBe('38.0')
    expect(await one.say('/measure rasp strength:38%')).toMatchObject({ code: null, recorded: 1 })
    expect(await strengthOf(one)).toBe('38.0')
    await one.say('/measure rasp strength:38% sweetness:120 g/L')
    expect((await one.say('/jar show rasp')).data).toMatchObject({ sugarGPerL: 120 })
  })

  it.each([
    'strained it, 900 ml, really 40 %',
    'strained the rasp, 900 ml, the lab says it’s 40 %',
    'strained the rasp, 900 ml, it’s 40 % by the lab',
  ])('is written down behind the straining: %s', async (text) => {
    const one = await begun()
    const told = await one.say(text)
    expect(told).toMatchObject({ read: '/jar strain rasp measured:900 ml', recorded: 2 })
    expect(told.also).toMatchObject([{ read: '/measure rasp strength:40%', code: null }])
    expect(await strengthOf(one)).toBe('40.0')
  })

  it.each(['the lab says 40 %', 'it’s really 40 %', 'true strength is 40 % by the lab', 'it’s 40% by calculation'])(
    'is asked about where it is said alone, and is no wish: %s',
    async (text) => {
      const one = await begun('/jar strain rasp measured:900 ml strength:38%')
      expect(await one.say(text)).toMatchObject({ choices: ['/measure rasp strength:40%'], recorded: 0 })
      expect(await one.say('yes')).toMatchObject({ read: '/measure rasp strength:40%', recorded: 1 })
    },
  )

  it('is offered where a reading was put right for what is dissolved, and where it cannot be one', async () => {
    const one = await begun()
    const { outcome } = await one.hear('strained it, 900 ml at 38%')
    const actions = 'reply' in outcome ? outcome.reply.actions : []
    expect(actions.map(({ label }) => label.key)).toContain('jar_true_strength')
    const sweet = await talkerFor({ after: null })
    await sweet.say('/jar start rasp of:500 g raspberries spirit:700 ml 40% sugar:200 g when:50 days ago')
    expect(await sweet.say('strained it, 900 ml at 30%')).toMatchObject({ recorded: 0 })
  })

  it('needs its jar, and no instrument beside it', async () => {
    const one = await begun('/jar strain rasp measured:900 ml')
    expect(await one.say('/measure strength:38%')).toMatchObject({ code: 'missing_option' })
    expect(await one.say('/measure rasp strength:38% hydrometer:1.02')).toMatchObject({ code: 'too_many_options' })
  })
})
