import { expect, it } from 'vitest'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { sampled } from '../../runs.ts'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'
import { budgets } from './budgets.ts'
import { type Columns, filled, WIDTHS } from './first-screens.ts'

const NOW_MS = Date.UTC(2027, 5, 1, 9)

/** A batch of it that went otherwise in every way: strained on the wrong day, sweetened with too little, not liked. */
async function wentWrong(title: string) {
  const desk = testDesk({ asker: newAsker(), nowMs: NOW_MS })
  const start = `/jar start jar of:10 g ${title} spirit:1 l 60% to-strength:30% to-sweetness:250 g/L days:100 when:2026-09-01`
  if ((await desk.jsonOf(start)).error !== undefined) return null
  for (const line of [
    '/jar strain jar measured:950 ml when:2026-09-07',
    '/jar sweeten jar sugar:100 g water:500 ml when:2026-09-07',
    '/jar taste jar rating:2 when:2026-10-07 note:too sweet',
  ]) {
    const { error } = await desk.jsonOf(line)
    expect(error, line).toBeUndefined()
  }
  return desk
}

it('a plan of a batch that went wrong in every way is one screen', async () => {
  const counted: { readonly title: string; readonly width: Columns; readonly lines: readonly string[] }[] = []
  for (const { names, form } of sampled(catalogue, 10)) {
    const title = names.title.startsWith(form.state) ? names.title : `${form.state} ${names.title}`
    const desk = await wentWrong(title)
    if (desk === null) continue
    for (const line of ['/again jar', '/again jar spirit:700 ml 70%']) {
      for (const { width, text } of await desk.firstAt(line, WIDTHS))
        counted.push({ title, width, lines: filled(text) })
    }
    expect(desk.faults(), title).toEqual([])
  }
  for (const columns of WIDTHS) {
    const there = counted.filter(({ width }) => width === columns)
    expect(there.length).toBeGreaterThan(10)
    const [longest] = there.toSorted((one, other) => other.lines.length - one.lines.length)
    console.log(`the longest at ${columns} columns has ${longest!.lines.length} lines: ${longest!.title}`)
    expect(longest!.lines.length, longest!.lines.join('\n')).toBeLessThanOrEqual(budgets.again_gone_wrong[columns])
  }
}, 120_000)
