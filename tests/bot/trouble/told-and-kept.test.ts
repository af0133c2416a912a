import { describe, expect, test } from 'vitest'
import { sampled } from '../../runs.ts'
import { FIRST, shelf } from './told-shelf.ts'

/**
 * Each sign that has a whole jar thrown away whatever the rest, as stop-first.test.ts has them, reviewed for food safety; and
 * the lines that tell of it.
 */
const THROWN = [
  ['mould', 'yes:growth'],
  ['solvent', 'no:bought'],
  ['solvent', 'yes:fuel'],
  ['wrong spirit', 'no:bought'],
  ['foraged', 'no:sure'],
  ['glass chipped', 'yes:glass'],
  ['stones cracked', 'yes:stones'],
  ['curdled', 'yes:dairy'],
  ['crystal decanter', 'yes:metal'],
  ['fizzing', 'yes:burst'],
  ['pink slime', 'yes:growth'],
  ['insects', 'yes:many'],
] as const

/** What would lead to drinking it, or giving it away; of a jar that is not bottled yet, and of one in bottles. */
const HELD = {
  sloe: [
    '/jar bottle sloe bottles:2 x 500 ml',
    '/jar open sloe',
    '/jar label sloe',
    '/share sloe',
    '/jar combine sloe with:lemon',
    '/jar combine lemon with:sloe into:both',
    '/syrup jar:sloe',
    '/adjust jar:sloe to-strength:25%',
    '/jar start second-of:sloe spirit:500 ml vodka 40%',
  ],
  plum: ['/bottles plum opened:1', '/bottles plum given:1', '/jar open plum', '/jar label plum', '/share plum'],
} as const

/** What goes on, and says it before anything else. */
const SAID = [
  '/jar show sloe',
  '/jar filter sloe',
  '/jar sweeten sloe sugar:20 g',
  '/jar add sloe spirit:100 ml vodka 40%',
  '/jar taste sloe rating:4',
  '/jar note sloe where:cellar',
  '/jar split sloe amount:300 ml into:small',
  '/jar tag sloe',
  '/again sloe',
  '/keeping jar:sloe',
  '/jar correct sloe entry:2 measured:950 ml',
] as const

describe.each(THROWN)('%s %s', (symptom, sign) => {
  /** The short run tries a third of what goes on with each sign, another third with the next. */
  const said = sampled(
    SAID,
    3,
    THROWN.findIndex((each) => each[1] === sign && each[0] === symptom),
  )

  test('is kept, and holds back whatever leads to drinking it', async () => {
    const desk = await shelf()
    for (const name of ['sloe', 'plum'] as const) {
      const told = await desk.textOf(`/trouble ${symptom} jar:${name} ${sign}`)
      expect(told).toMatch(/^Throw it away: /)
      expect(told).toContain(`I’ve noted that on ${name}.`)
      const back = new RegExp(
        `(?:It was only pith|It was nothing|It was bought for drinking|I know the plant for sure): (/jar note ${name} was:[a-z, I]*[a-z])`,
      ).exec(told)?.[1]
      expect(back, told).toBeDefined()
      for (const line of HELD[name]) {
        const before = JSON.stringify(await desk.person())
        const { code, message } = await desk.refused(line)
        expect([code, message], line).toEqual(['refused', expect.stringContaining(back!)])
        expect(message, line).toMatch(FIRST)
        expect(JSON.stringify(await desk.person()), line).toBe(before)
      }
      await desk.ask(back!)
      expect(await desk.textOf(`/jar show ${name}`)).not.toMatch(FIRST)
      await desk.ask(HELD[name][0])
    }
  })

  test('is said first by every step that goes on', async () => {
    const desk = await shelf()
    await desk.ask(`/trouble ${symptom} jar:sloe ${sign}`)
    await desk.ask(`/trouble ${symptom} jar:lemon ${sign}`)
    for (const line of ['/jar shake lemon', '/jar strain lemon measured:950 ml', ...said])
      expect(await desk.textOf(line), line).toMatch(FIRST)
    expect(await desk.textOf('/jar list')).toMatch(/^Look after [a-z, ]+ first[\s\S]*! Throw sloe away: /)
  })
})
