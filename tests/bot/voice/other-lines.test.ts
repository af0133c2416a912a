import { expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { WIDTHS } from './first-screens.ts'
import { linesOf, longest, type MeasuredScreen, overBudget } from './measured-screens.ts'

type Key = keyof typeof budgets

/** A season of a person with jars in every stage, on its days. */
const SEASON: readonly (readonly [day: string, line: string])[] = [
  ['2026-09-01', '/jar start lemon of:10 lemons spirit:1 l 95%'],
  ['2026-09-01', '/jar start ginger of:150 g ginger spirit:700 ml 60%'],
  ['2026-09-02', '/jar start fair coffee of:80 g coffee beans + 1 vanilla spirit:1 l 40%'],
  ['2026-09-03', '/jar start basil of:60 g basil spirit:500 ml 95%'],
  ['2026-09-03', '/jar start bitter orange of:6 bitter oranges + 5 g coriander seed spirit:750 ml 75.5% + 375 ml 40%'],
  ['2026-09-05', '/jar strain basil measured:480 ml strength:87%'],
  ['2026-09-05', '/jar sweeten basil water:760 ml sugar:250 g'],
  ['2026-09-06', '/jar bottle basil bottles:5 x 250 ml'],
  ['2026-09-16', '/jar taste basil rating:2 note:too sweet for me'],
  ['2026-09-17', '/jar strain lemon measured:960 ml strength:88%'],
  ['2026-09-17', '/jar sweeten lemon water:1.6 l sugar:530 g'],
  ['2026-09-18', '/jar strain ginger'],
  ['2026-09-19', '/share basil'],
]

const ASKED: readonly (readonly [key: Key, line: string])[] = [
  ['settings', '/settings'],
  ['settings', '/settings country:US zone:New York freezer:-22 C units:us'],
  ['reminders', '/reminders'],
  ['reminders', '/reminders time:18.30 shake:every other day'],
  ['reminders', '/reminders pause-until:20 October'],
  ['reminders', '/reminders pause-until:further notice'],
  ['notebook', '/notebook'],
  ['compare', '/notebook compare:lemon + basil'],
  ['compare', '/notebook compare:bitter orange + fair coffee'],
  ['plan', '/again basil'],
  ['plan_of_two', '/again bitter orange spirit:1 l 70%'],
  ['share', '/share'],
  ['share', '/share lemon'],
  ['share', '/share withdraw:basil'],
  ['keeping_data', '/calendar'],
  ['keeping_data', '/notebook export:json'],
  ['keeping_data', '/notebook export:csv'],
  ['keeping_data', '/forget'],
  ['keeping_data', '/forget confirm:yes'],
  ['keeping_data', '/jar tag fair coffee'],
  ['keeping_data', '/jar label basil'],
  ['keeping_data', '/bottles'],
  ['keeping_data', '/keeping basil'],
  ['help', '/help'],
  ['measure', '/jar combine lemon with:ginger'],
  ['measure', '/jar split lemon amount:500 ml into:honey lemon'],
  ['measure', '/trouble cloudy jar:lemon'],
  ['measure', '/trouble too sweet jar:basil'],
  ['jar_step', '/jar take-out fair coffee of:vanilla'],
  ['jar_step', '/jar note fair coffee where:cellar shelf note:smells of marzipan'],
  ['jar_step', '/jar bottle lemon bottles:5 x 500 ml'],
  ['jar_step', '/jar correct fair coffee spirit:1 l 42%'],
  ['jar_step', '/jar undo fair coffee'],
  ['jar_step', '/jar rename fair coffee to:midwinter coffee'],
  ['jar_step', '/jar later all until:in 2 weeks'],
  ['jar_step', '/jar shake all'],
  ['jar_show', '/jar show lemon'],
  ['jar_show', '/jar show bitter orange'],
]

async function season() {
  const asker = newAsker()
  for (const [day, line] of SEASON) {
    const outcome = await testDesk({ nowMs: Date.parse(`${day}T12:00:00Z`), asker }).run(line)
    expect(outcome.ok, line).toBe(true)
  }
  return { asker, person: await asker.store.read(asker.userId) }
}

it('takes no more lines than it may, whatever is asked', async () => {
  const { asker, person } = await season()
  const screens: { readonly key: Key; readonly screen: MeasuredScreen }[] = []
  for (const [key, line] of ASKED) {
    const desk = testDesk({ nowMs: Date.parse('2026-09-20T12:00:00Z'), asker })
    for (const { width, text } of await desk.firstAt(line, WIDTHS)) {
      screens.push({ key, screen: { of: line, width, lines: linesOf(text), text } })
    }
    await asker.store.update(asker.userId, () => person)
  }
  for (const key of new Set(ASKED.map(([key]) => key))) {
    const own = screens.filter((each) => each.key === key).map(({ screen }) => screen)
    console.log(`longest of ${key}: ${longest(own)}`)
    expect(overBudget(own, budgets[key])).toEqual([])
  }
})

it('shows ten batches of forty, and the rest one question deeper', async () => {
  const asker = newAsker()
  for (let jar = 1; jar <= 40; jar++) {
    const line = `/jar start lemon number ${jar} of:10 lemons spirit:1 l 95%`
    await testDesk({ nowMs: Date.parse('2026-09-01T12:00:00Z') + jar, asker }).run(line)
  }
  for (const width of WIDTHS) {
    const desk = testDesk({ nowMs: Date.parse('2026-09-02T12:00:00Z'), width, asker })
    expect(linesOf(await desk.firstOf('/notebook'))).toBeLessThanOrEqual(budgets.notebook[width])
    // The two newest are offered to be compared, the newest to be shown.
    expect((await desk.textOf('/notebook')).match(/lemon number \d+/g)).toHaveLength(43)
  }
}, 60_000)
