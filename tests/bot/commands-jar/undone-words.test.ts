import { expect, it } from 'vitest'
import { newAsker } from '../asker.ts'
import { testDesk } from '../test-desk.ts'

const atDay = (day: string, asker = newAsker()) => testDesk({ nowMs: Date.parse(`${day}T12:00:00Z`), asker })

it('says what was undone, what left the shelf and what a batch cost as somebody would say it', async () => {
  const asker = newAsker()
  const first = atDay('2026-09-01', asker)
  await first.run('/jar start sloes of:500 g sloes spirit:700 ml 60%')
  await first.run('/jar taste sloes rating:4')
  expect(await first.firstOf('/jar undo sloes')).toContain('Undone: your tasting of sloes.')
  const later = atDay('2026-12-01', asker)
  await later.run('/jar strain sloes')
  expect(await later.firstOf('/jar undo sloes')).toContain('Undone: sloes aren’t strained after all.')
  await later.run('/jar strain sloes')
  await later.run('/jar sweeten sloes sugar:170 g water:300 ml')
  await later.run('/jar bottle sloes bottles:2 x 500 ml')
  expect(await later.firstOf('/bottles sloes given:1')).toContain('Sloes: 1 bottle of 500 ml given away.')
  expect(await later.firstOf('/jar undo sloes')).toContain('Undone: that bottle of sloes wasn’t given away after all.')
  const prices = 'prices:sloes 4/kg + sugar 1.20/kg + spirit 60% 18/l + bottles 0.80 each'
  expect(await later.firstOf(`/cost sloes ${prices}`)).toMatch(/^Making sloes costs [\d.]+\./)
})
