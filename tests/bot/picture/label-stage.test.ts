import { describe, expect, it } from 'vitest'
import { bottleLabel } from '../../../bot/picture/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/bottle-label-data.ts'
import { jarTagData } from '../../../bot/picture/jar-tag-data.ts'
import { exactly } from '../../../core/quantity/measured.ts'
import { jarOf, startedAs } from '../commands-jar-views/jars.ts'
import { readyBatch, seen, steepingBatch } from './batches.ts'
import { pen } from './pixels.ts'

describe('the label of a bottle', () => {
  it('tells the planned strength until the syrup is in', async () => {
    const view = steepingBatch('walnut')
    expect(view.contents.outcome.abvPercent.value).toBeGreaterThan(60)
    expect(bottleLabelData(view, 500)).toMatchObject({ abvPercent: { value: 30 }, isPlanned: true, hasSugar: true })
    expect(bottleLabelData(readyBatch('lemon'), 500)).toMatchObject({ isPlanned: false })
    const { alt } = bottleLabel(bottleLabelData(view, 500), await pen())
    expect(alt.replace(/\s/g, ' ')).toContain('About 30 % vol (planned)')
    expect(alt).not.toContain('(computed)')
  })

  it('is refused where nothing was planned', () => {
    const view = seen(jarOf('bare', [{ on: '2026-11-01', ...startedAs('bare', {}, { targets: null }) }]))
    expect(() => bottleLabelData(view, null)).toThrow(expect.objectContaining({ problem: 'label_unplanned' }))
  })
})

describe('the tag of a jar', () => {
  it('plans no straining of what is strained, and marks what is strong', () => {
    expect(jarTagData(steepingBatch('walnut'))).toMatchObject({ strainBy: '2026-12-20', isFlammable: true })
    const ready = jarTagData(readyBatch('lemon'))
    expect(ready.abvPercent!.value).toBeGreaterThan(40)
    expect(ready).toMatchObject({ strainFrom: null, strainBy: null, isFlammable: true })
    const weak = startedAs('weak', {}, { strainFrom: '2026-11-10', strainBy: '2026-11-20' })
    const spirits = weak.spirits.map((each) => ({ ...each, abvPercent: { value: 37.5, plusMinus: 0.3 } }))
    const tag = jarTagData(seen(jarOf('weak', [{ on: '2026-11-01', ...weak, spirits }])))
    expect(tag).toMatchObject({ strainBy: '2026-11-20', isFlammable: true })
    const strained = { kind: 'strained', measured: null, strength: null, rinseWaterG: exactly(0) } as const
    const story = [
      { on: '2026-11-01', ...weak, spirits },
      { on: '2026-11-15', ...strained },
    ]
    expect(jarTagData(seen(jarOf('weak', story))).isFlammable).toBe(false)
  })
})
