import { describe, expect, it } from 'vitest'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { linesOf as typedLines } from '../call-typed.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { WIDTHS } from './first-screens.ts'
import { linesOf, longest, type MeasuredScreen, overBudget } from './measured-screens.ts'

const DAY_MS = 86_400_000
const START_MS = Date.parse('2026-09-01T12:00:00Z')

/** One person's jar, and what its steps say on both screens. */
function kitchen(of: string) {
  const asker = newAsker()
  const screens: { readonly key: keyof typeof budgets; readonly screen: MeasuredScreen }[] = []
  const step = async (key: keyof typeof budgets, day: number, line: string, said = line) => {
    const desk = testDesk({ nowMs: START_MS + day * DAY_MS, asker })
    for (const { width, text } of await desk.firstAt(line, WIDTHS)) {
      screens.push({ key, screen: { of: `${said} (${of})`, width, lines: linesOf(text), text } })
    }
  }
  return { asker, step, screens }
}

const dayOf = (iso: string | null, otherwise: number): number =>
  iso === null ? otherwise : Math.max(otherwise, Math.round((Date.parse(`${iso}T12:00:00Z`) - START_MS) / DAY_MS))

/** A jar of a plant from its start to its last glass. */
async function life(id: string) {
  const name = cookName(id)
  const { asker, step, screens } = kitchen(name)
  const { firstOf, jsonOf } = testDesk({ nowMs: START_MS, asker, width: 80 })
  const of = `of:${name}`
  await step('jar_start', 0, `/jar start ${of} spirit:1 l 70%`)
  const { jars } = await asker.store.read(asker.userId)
  if (jars.length === 0) return { screens: [], refused: `${id}: ${await firstOf(`/jar start ${of} spirit:1 l 70%`)}` }
  const [jar] = (await jsonOf('/jar list')).data.jars as readonly { readonly name: string }[]
  const called = jar!.name
  const [entry] = jars[0]!.entries
  const days = entry!.kind === 'started' ? entry!.days : null
  const strainOn = dayOf(days?.strainFrom ?? null, 3)
  await step('jar_step', 1, `/jar shake ${called}`)
  await step('jar_step', 2, `/jar taste ${called} rating:4`)
  await step('jar_step', 2, `/jar later ${called} until:in 2 days`)
  const before = await asker.store.read(asker.userId)
  const tried = testDesk({ nowMs: START_MS + strainOn * DAY_MS, asker })
  const { volumeMl, abvPercent } = (await tried.jsonOf(`/jar strain ${called}`)).data
  await asker.store.update(asker.userId, () => before)
  const measured = `measured:${Math.round(volumeMl / 10) * 10} ml strength:${abvPercent.toFixed(1)}%`
  await step('jar_strain', strainOn, `/jar strain ${called}`)
  await asker.store.update(asker.userId, () => before)
  const strained = await tried.run(`/jar strain ${called} ${measured}`)
  const sweeten = strained.ok
    ? typedLines(strained.reply.actions).find((line) => line.startsWith('/jar sweeten'))
    : null
  await asker.store.update(asker.userId, () => before)
  await step('jar_strain', strainOn, `/jar strain ${called} ${measured}`)
  await step('jar_step', strainOn, sweeten ?? `/jar sweeten ${called} sugar:300 g water:800 ml`)
  await step('jar_step', strainOn + 1, `/jar filter ${called}`)
  await step('jar_step', strainOn + 2, `/jar bottle ${called} bottles:3 x 500 ml`)
  await step('jar_step', strainOn + 2, `/jar undo ${called}`)
  await step('jar_step', strainOn + 2, `/jar bottle ${called} bottles:3 x 500 ml`)
  await step('jar_step', strainOn + 60, `/jar open ${called}`)
  await step('jar_step', strainOn + 60, `/jar taste ${called} rating:2 note:too sweet`)
  await step('jar_step', strainOn + 61, `/jar empty ${called}`)
  return { screens, refused: null }
}

/** One of every four under `npm test`. */
const plants = sampled(catalogue, 8)
const lives = await Promise.all(plants.map(({ id }) => life(id)))
const all = lives.flatMap(({ screens }) => screens)

describe('what is said after each step of a jar, of any plant', () => {
  it('starts a jar of nearly every plant', () => {
    const refused = lives.flatMap((each) => each.refused ?? [])
    expect(lives.length - refused.length).toBeGreaterThan(0.9 * plants.length)
    expect(refused.length).toBeLessThan(12)
  })

  it.each(['jar_start', 'jar_strain', 'jar_step'] as const)('keeps to its lines: %s', (key) => {
    const screens = all.filter((each) => each.key === key).map(({ screen }) => screen)
    console.log(`longest of ${key}: ${longest(screens)}`)
    expect(overBudget(screens, budgets[key]).slice(0, 3)).toEqual([])
  })
})
