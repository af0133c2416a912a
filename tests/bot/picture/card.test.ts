import { describe, expect, it } from 'vitest'
import { batchCard } from '../../../bot/picture/card/batch-card.ts'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import { bottleLabel } from '../../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { englishFormat } from '../../../bot/text/en/format.ts'
import { plant, readyBatch, steepingBatch, TODAY, withLaterPlants } from './batches.ts'
import { cutAtBoxes, differing, pen, pixelsOf } from './pixels.ts'

describe('a card', () => {
  it('names allergens, and plants of which nobody knows, as the label does', async () => {
    const [walnut, meadow] = ['Contains walnut (a nut).', 'Allergens of “meadow” not known.']
    const view = steepingBatch('Walnut', [plant('green_walnut', 'Green walnut', 300), plant(null, 'meadow', 12)])
    for (const { svg, alt } of [
      batchCard(batchCardData(view, TODAY), await pen()),
      bottleLabel(bottleLabelData(view, 500), await pen()),
    ]) {
      expect(svg.replaceAll(/<[^>]+>/g, ' ').replaceAll(/\s+/g, ' ')).toContain(`${walnut} ${meadow}`)
      expect(alt).toContain(walnut)
      expect(alt).toContain(meadow)
    }
    const harmless = batchCard(batchCardData(readyBatch('Lemon'), TODAY), await pen())
    expect(harmless.svg + harmless.alt).not.toMatch(/contains|allergen/i)
  })

  it('says per cent and proof whole, however wide they are', async () => {
    const us = { ...(await pen()), format: englishFormat('us') }
    const data = batchCardData(readyBatch('Lemon'), TODAY)
    const { svg } = batchCard(data, us)
    expect(svg.replaceAll('\u00a0', ' ')).toMatch(/>[\d.]+ % vol \(\d+ proof\)</)
    expect(differing(pixelsOf(svg), pixelsOf(cutAtBoxes(svg)))).toBe(0)
  })

  it('says how long the plants steeped that went in later', async () => {
    const data = batchCardData(withLaterPlants(), TODAY)
    expect([data.steepedDays, data.laterPlants]).toEqual([
      17,
      [
        { id: 'coffee_whole', name: 'coffee', days: 4 },
        { id: 'cinnamon_ceylon', name: 'cinnamon', days: 1 },
      ],
    ])
    const { svg, alt } = batchCard(data, await pen())
    for (const line of ['17 days', 'coffee beans: 4 days', 'Ceylon cinnamon: 1 day']) {
      expect(svg).toContain(`>${line}<`)
    }
    expect(alt).toContain('Steeped 17 days, coffee beans: 4 days, Ceylon cinnamon: 1 day.')
    expect(differing(pixelsOf(svg), pixelsOf(cutAtBoxes(svg)))).toBe(0)
    const many = [...data.laterPlants, { id: 'vanilla', name: 'vanilla', days: 2 }]
    expect(batchCard({ ...data, laterPlants: many }, await pen()).svg).toContain('>3 plants: 1 to 4 days<')
    expect(batchCardData(readyBatch('Lemon'), TODAY).laterPlants).toEqual([])
  })
})
