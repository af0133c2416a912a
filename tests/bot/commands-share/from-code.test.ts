import { describe, expect, it } from 'vitest'
import { lineOf } from '../../../bot/calls/write-line.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { inForm } from '../../../core/botanical/find/in-form.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { recipeOf } from '../../../core/jar/state/recipe-of.ts'
import { encodeBatch } from '../../../core/recipe/code/batch-code.ts'
import { findPlants } from '../../../core/recipe/plan/find-plants.ts'
import { newAsker } from '../asker.ts'
import { startLine } from '../start-line.ts'
import { testDesk } from '../test-desk.ts'

/** 20 November 2026, at noon. */
const nowMs = Date.UTC(2026, 10, 20, 12)
const deskOf = () => testDesk({ asker: newAsker(), nowMs, width: 400 })
type Desk = ReturnType<typeof deskOf>

const lastStory = async ({ asker }: Desk) => jarStateOf((await asker.store.read(asker.userId)).jars.at(-1)!.entries)!

/** The code of a jar that these lines make. */
const codeAfter = async (...lines: readonly string[]): Promise<string> => {
  const desk = deskOf()
  for (const line of lines) expect((await desk.jsonOf(line)).error, line).toBeUndefined()
  return encodeBatch(recipeOf(await lastStory(desk)))
}

const OF = 'of:105 g lemon peel + 20 g dried ginger spirit:1 l 95.0%'
const WISH = 'to-strength:30% to-sweetness:250 g/L'
const lemon = () => codeAfter(`/jar start lemon ${OF} ${WISH}`)

const keysIn = ({ notes }: { readonly notes: readonly { readonly key: string }[] }) => notes.map(({ key }) => key)

describe('/plan from:', () => {
  it('is the plan that the jar was started with', async () => {
    const desk = deskOf()
    const from = await desk.jsonOf(`/plan from:${await lemon()}`)
    const typed = await desk.jsonOf(`/plan ${OF} ${WISH}`)
    expect(Object.keys(from.data)).toEqual(Object.keys(typed.data))
    expect(from.data).toEqual(typed.data)
    expect(keysIn(from)).toContain('code_from')
    const text = await desk.textOf(`/plan from:${await lemon()}`)
    expect(text).toContain('Same amounts as the shared batch.')
    expect(text).toContain('Dried, not fresh: ginger.')
    expect(text).toMatch(/14 to 21 days on the plants, as that batch was planned\./)
    expect(desk.faults()).toEqual([])
  })

  // % vol counts the volume of alcohol, so that amounts go by 700 × 40 to 1000 × 95.
  it.each([
    [40, '29 % of'],
    [70, '52 % of'],
  ])('goes by the alcohol of 700 ml at %i %% vol', async (percent, times) => {
    const desk = deskOf()
    const line = `/plan from:${await lemon()} spirit:700 ml ${percent}% bottles:500 ml`
    const { data, notes } = await desk.jsonOf(line)
    const factor = (700 * percent) / 95_000
    expect(data.botanicals.map(({ massG }: { massG: number }) => massG)).toEqual([
      expect.closeTo(105 * factor, 6),
      expect.closeTo(20 * factor, 6),
    ])
    expect(data).toMatchObject({ abvPercent: expect.closeTo(30, 6), sugarGPerL: expect.closeTo(250, 4) })
    expect(data.bottles).toEqual([{ count: Math.floor(data.volumeMl / 500), volumeMl: 500 }])
    expect(keysIn({ notes })).toContain('code_weaker')
    const text = await desk.textOf(line)
    expect(text).toContain(`${times} the amounts of the shared batch, scaled to your spirit`)
    expect(text).toContain(`Your spirit is weaker (${percent} % instead of 95 %)`)
  })

  it('calls no plant faint that is as much of the drink', async () => {
    const desk = deskOf()
    const code = await codeAfter(`/jar start lemon of:10 lemons spirit:1 l 95% ${WISH}`)
    expect(keysIn(await desk.jsonOf('/plan of:31 g lemon peel spirit:700 ml 40%'))).toContain('plan_less_than_usual')
    expect(keysIn(await desk.jsonOf(`/plan from:${code} spirit:700 ml 40%`))).not.toContain('plan_less_than_usual')
  })

  it('takes half of it all for half of the lemons', async () => {
    const desk = deskOf()
    const code = await codeAfter(`/jar start lemon of:10 lemons spirit:1 l 95% ${WISH}`)
    const whole = (await desk.jsonOf(`/plan from:${code}`)).data
    for (const line of [`/plan from:${code} of:5 lemons`, `/plan from:${code} of:5 lemons spirit:1 l 95%`]) {
      const { data } = await desk.jsonOf(line)
      expect(data.botanicals).toMatchObject([{ id: 'lemon_peel', massG: 52.5, count: 5 }])
      expect(data.spiritMl).toBeCloseTo(500, 9)
      expect(data.volumeMl).toBeCloseTo(whole.volumeMl / 2, 6)
    }
    const text = await desk.textOf(`/plan from:${code} of:5 lemons spirit:1 l 95%`)
    expect(text).toContain(
      'Half the amounts of the shared batch, to use up your lemon peel. You’ll have some spirit left over.',
    )
  })

  it('fills the bottles and takes no more spirit than that', async () => {
    const desk = deskOf()
    const { data } = await desk.jsonOf(`/plan from:${await lemon()} spirit:1 l 95% bottles:2 x 500 ml`)
    expect(data.bottles).toEqual([{ count: 2, volumeMl: 500 }])
    expect(data.volumeMl).toBeCloseTo(1000, 6)
    expect(data.spiritMl).toBeLessThan(500)
  })

  it('says why it cannot be the same, and takes what it says can be had', async () => {
    const desk = deskOf()
    const code = await codeAfter(
      '/jar start lemon of:100 g lemon peel spirit:1 l 95% to-strength:38% to-sweetness:250 g/L',
    )
    const { error } = await desk.jsonOf(`/plan from:${code} spirit:1 l 40%`)
    expect(error.code).toBe('unreachable')
    expect(error.message).toMatch(
      /^40 % spirit is too weak for 38 % with 250 g\/L\. This works: \/plan .*to-strength:\d\d(\.5)?%/,
    )
    const wish = /to-strength:[\d.]+%/.exec(error.message)![0]
    const made = await desk.jsonOf(`/plan from:${code} spirit:1 l 40% ${wish}`)
    expect(made.data.sugarGPerL).toBeCloseTo(250, 4)
  })

  it('offers to start the jar, which is then as planned', async () => {
    const desk = deskOf()
    const code = await lemon()
    const outcome = await desk.run(`/plan from:${code} spirit:700 ml 70%`)
    if (!outcome.ok) throw new Error('not planned')
    const [action] = outcome.reply.actions
    expect(lineOf(action!.call)).toBe(`/jar start from:${code} spirit:700 ml 70%`)
    expect((await desk.jsonOf(lineOf(action!.call))).error).toBeUndefined()
    const { started } = await lastStory(desk)
    const factor = 49_000 / 95_000
    expect(started.plants.map(({ id, massG }) => [id, massG.value])).toEqual([
      ['lemon_peel', expect.closeTo(105 * factor, 6)],
      ['ginger', expect.closeTo(20 * factor, 6)],
    ])
    expect(started.targets).toEqual({ abvPercent: 30, sugarGPerL: 250 })
    expect(started.days).toMatchObject({ strainFrom: '2026-12-04', strainBy: '2026-12-11' })
    expect(Object.fromEntries(started.typed)).toMatchObject({ from: code, of: expect.stringContaining('dried ginger') })
    expect(desk.faults()).toEqual([])
  })

  it('goes on from friend to friend, and once more', async () => {
    const desk = deskOf()
    const code = await lemon()
    await desk.jsonOf(`/jar start lemon from:${code}`)
    expect(encodeBatch(recipeOf(await lastStory(desk)))).toBe(code)
    await desk.jsonOf(await startLine(desk, '/again lemon'))
    expect(encodeBatch(recipeOf(await lastStory(desk)))).toBe(code)
  })

  it('tells of days that are none of the usual', async () => {
    const desk = deskOf()
    const code = await codeAfter(`/jar start lemon ${OF} ${WISH} when:2026-09-01`, '/jar strain lemon')
    const text = await desk.textOf(`/plan from:${code}`)
    expect(text).toContain(
      '80 days on the plants, the same as that batch. Most steep them 14 to 21 days, so taste before you strain.',
    )
  })

  it.each([
    ['of:ginger + 5 lemons', 'bad_value', 'of', /How much “ginger” do you have/],
    ['of:30 g basil', 'bad_value', 'of', /“30 g basil” isn’t in that batch. It has lemon peel and ginger \(dried\)/],
    ['of:4', 'bad_value', 'of', /“4” of what\? .* lemon peel and ginger \(dried\)/],
    ['of:30 g fresh ginger', 'bad_value', 'of', /isn’t in that batch/],
    ['of:30 g foxglove', 'refused', 'of', /./],
    ['of:30 g meadow thing unknown-ok:yes', 'too_many_options', 'unknown-ok', /Leave out unknown-ok|Type: \/plan/],
    ['of:30 g meadow thing', 'bad_value', 'of', /“30 g meadow thing” isn’t in that batch/],
    ['sugar:50 g', 'too_many_options', 'sugar', /The code already says what goes in\. Type: \/plan from:\w+$/],
    ['days:10 days', 'too_many_options', 'days', /Type: \/plan from:\w+$/],
    ['spirit:1 l', 'missing_option', 'strength', /strength/],
    ['spirit:1 l 12%', 'unreachable', undefined, /It would steep at .* can ferment.*This keeps: \/plan from:/],
  ])('with %s is refused in one sentence', async (more, code, option, says) => {
    const { error } = await deskOf().jsonOf(`/plan from:${await lemon()} ${more}`)
    expect(error).toMatchObject({ code, message: expect.stringMatching(says) })
    expect(error.option).toBe(option)
  })

  it.each([
    ['/plan from:lemon', 'bad_value', 'from', /“lemon” isn’t a batch’s code/],
    [
      '/plan from:11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6M',
      'bad_value',
      'from',
      /is damaged: a letter is missing, wrong or extra/,
    ],
    ['/plan spirit:1 l 95%', 'missing_option', 'of', /What goes in\?/],
    ['/jar start lemon spirit:1 l 95%', 'missing_option', 'of', /What goes in\?/],
  ])('%s is refused in one sentence', async (line, code, option, says) => {
    const { error } = await deskOf().jsonOf(line)
    expect(error).toMatchObject({ code, option, message: expect.stringMatching(says) })
  })
})

it('reads back every plant of the catalogue that may be dried', () => {
  const dried = catalogue.flatMap((botanical) =>
    botanical.form.state === 'dried' ? [] : (inForm(botanical, 'dried') ?? []),
  )
  expect(dried.length).toBeGreaterThan(3)
  for (const botanical of dried) {
    expect(findPlants(`5 g dried ${botanical.names.title}`).map((found) => found.botanical)).toEqual([botanical])
  }
})
