import { expect, it } from 'vitest'
import type { Reply } from '../../../bot/chat/reply.ts'
import { render } from '../../../bot/terminal/show/render.ts'
import { cookName } from '../../../bot/text/en/cook-names.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { messagesOfReply } from '../discord/rendering.ts'
import { world } from '../reminders/inbox.ts'
import { speech, testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { drawnLines } from './discord-screens.ts'
import { WIDTHS } from './first-screens.ts'
import { linesOf, longest, type MeasuredScreen, overBudget } from './measured-screens.ts'

const DAY_MS = 86_400_000
const START_MS = Date.parse('2026-09-01T18:00:00Z')
/** Long enough for a jar to be strained, to be sweetened and to rest. */
const DAYS = 75

interface Nudged {
  readonly of: string
  readonly reply: Reply
}

/** What somebody is reminded of, from the start of their jars on, straining and sweetening each when that is asked for. */
async function season(of: string, starts: readonly string[]): Promise<readonly Nudged[]> {
  const asker = newAsker()
  for (const line of starts) await testDesk({ nowMs: START_MS, asker }).run(line)
  const { jars } = await asker.store.read(asker.userId)
  if (jars.length < starts.length) return []
  const { box, tick } = await world({ people: {}, store: asker.store })
  const found: Nudged[] = []
  for (let day = 1; day <= DAYS; day++) {
    const nowMs = START_MS + day * DAY_MS
    await tick(nowMs)
    for (const { reply } of box.received.splice(0)) {
      found.push({ of: `${of}, day ${day}`, reply })
      const lines = reply.actions.map(({ label }) => label.values)
      const desk = testDesk({ nowMs, asker })
      for (const { id } of jars) {
        const duties = JSON.stringify(lines)
        if (duties.includes('"strain"')) await desk.run(`/jar strain #${id}`)
        if (duties.includes('"sweeten"')) await desk.run(`/jar sweeten #${id} water:800 ml sugar:300 g`)
      }
    }
  }
  return found
}

const most = (jars: number, width: 80 | 44): number =>
  budgets.nudge[width] + (Math.min(jars, MOST_NAMED) - 1) * budgets.nudge.more[width]

/** From so many jars on the rest is counted. */
const MOST_NAMED = 7

async function screensOf(nudged: readonly Nudged[]): Promise<readonly MeasuredScreen[]> {
  const screens: MeasuredScreen[] = []
  for (const { of, reply } of nudged) {
    for (const width of WIDTHS) {
      const text = render(reply, speech, { width, colour: false }, [], 'first')
      screens.push({ of, width, lines: linesOf(text), text })
    }
    const [message] = await messagesOfReply(reply)
    const lines = drawnLines(message!)
    screens.push({ of: `${of}, in Discord`, width: 44, lines: lines.length, text: lines.join('\n') })
  }
  return screens
}

it('reminds of a jar of any plant in a few lines', async () => {
  const nudged: Nudged[] = []
  for (const { id } of sampled(catalogue, 40)) {
    const name = cookName(id)
    nudged.push(...(await season(name, [`/jar start jar of:${name} spirit:1 l 70% to-strength:30%`])))
  }
  expect(nudged.length).toBeGreaterThan(50)
  const screens = await screensOf(nudged)
  console.log(`longest of a nudge: ${longest(screens)}`)
  expect(overBudget(screens, { 80: most(1, 80), 44: most(1, 44) }).slice(0, 3)).toEqual([])
}, 240_000)

it.each([3, 10, 40])(
  'reminds of %i jars at once in not many more',
  async (count) => {
    const kinds = ['10 lemons', '150 g ginger', '60 g basil', '80 g coffee beans']
    const starts = Array.from(
      { length: count },
      (_, index) => `/jar start number ${index + 1} of:${kinds[index % kinds.length]} spirit:1 l 70%`,
    )
    const screens = await screensOf(await season(`${count} jars`, starts))
    console.log(`longest of a nudge of ${count} jars: ${longest(screens)}`)
    expect(screens.length).toBeGreaterThan(10)
    expect(overBudget(screens, { 80: most(count, 80), 44: most(count, 44) }).slice(0, 3)).toEqual([])
  },
  240_000,
)
