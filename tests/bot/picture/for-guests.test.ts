import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { batchCard } from '../../../bot/picture/card/batch-card.ts'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import type { Pen, Picture } from '../../../bot/picture/draw/picture.ts'
import { mm } from '../../../bot/picture/draw/printed.ts'
import { bottleLabel, LEAST_READABLE } from '../../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { catalogue } from '../../../core/botanical/catalogue/catalogue.ts'
import { runs, SEED } from '../../runs.ts'
import { NAMES, plant, readyBatch, steepingBatch, TODAY } from './batches.ts'
import { cutAtBoxes, differing, pen as newPen, pixelsOf } from './pixels.ts'

let pen: Pen
beforeAll(async () => {
  pen = await newPen()
})

const known = (...ids: readonly string[]) => ids.map((id) => plant(id, id, 10))
const unknown = (...names: readonly string[]) => names.map((name) => plant(null, name, 10))

const labelOf = (plants: ReturnType<typeof known>, name = 'Midwinter'): Picture =>
  bottleLabel(bottleLabelData(steepingBatch(name, plants), 500), pen)

const cardOf = (plants: ReturnType<typeof known>): Picture =>
  batchCard(batchCardData(steepingBatch('Midwinter', plants), TODAY), pen)

/** The words that stand on a picture, line after line. */
const wordsOn = ({ svg }: Picture): string =>
  [...svg.matchAll(/<text [^>]*>([^<]*)</g)]
    .map(([, text]) => text)
    .join(' ')
    .replace(/\s+/g, ' ')

const sizesOn = ({ svg }: Picture): readonly number[] =>
  [...svg.matchAll(/font-size="([\d.]+)"/g)].map(([, size]) => Number(size))

/** Where what is in it ends, and where the line below it stands. */
function endsOf({ svg }: Picture): { readonly contents: number; readonly line: number } {
  const rules = [...svg.matchAll(/<rect x="[\d.]+" y="([\d.]+)" width="360"/g)].map(([, y]) => Number(y))
  const middle = svg.slice(svg.indexOf('width="360"'), svg.lastIndexOf('width="360"'))
  const top = Number(/<g transform="translate\(0 ([\d.]+)\)"><g/.exec(middle)?.[1])
  const blocks = middle.split('<g transform="translate(0 ').slice(2)
  const bottoms = blocks.flatMap((block) => {
    const at = Number.parseFloat(block)
    return [...block.matchAll(/y="(-?[\d.]+)" width="[\d.]+" height="([\d.]+)" overflow/g)].map(
      ([, y, height]) => top + at + Number(y) + Number(height),
    )
  })
  return { contents: Math.max(...bottoms), line: rules[1]! }
}

const EVERYTHING = [
  ...known('green_walnut', 'almond_sweet', 'hazelnut', 'pink_pepper', 'raisin', 'cocoa_nibs', 'chamomile', 'wormwood'),
  ...known('artichoke_leaf', 'turmeric', 'liquorice_root', 'coffee_whole', 'grapefruit_peel', 'cranberry', 'sage'),
  ...unknown('celery', 'mustard seed', 'sesame', 'peanuts', 'lupin', 'soya', 'barley', 'pistachio', 'jaboticaba'),
]

const SAID = [
  ...['Contains peanut, walnut (a nut), almond (a nut), hazelnut (a nut), pistachio (a nut), sesame, mustard, celery,'],
  ...['lupin, soya, barley (gluten), pink pepper (kin to cashew and pistachio) and plants of the daisy family.'],
  ...['May contain sulphites (from dried fruit) and traces of nuts (from cocoa). Allergens of “jaboticaba” not known.'],
  ...['Can change how medicines work: if you take any, ask a pharmacist first.'],
  ...['Cranberry: if you take warfarin, ask a doctor first. Contains thujone: not with epilepsy.'],
  ...['Contains liquorice: people with high blood pressure should avoid excessive consumption.'],
  ...['Turmeric: not with liver disease. Not with gallstones. Contains caffeine.'],
]

describe('what a guest is told', () => {
  it('stands whole on a label and a card, and in the words for who cannot see them', () => {
    const label = labelOf(EVERYTHING)
    const card = cardOf(EVERYTHING)
    for (const said of [...SAID, 'Not in pregnancy. Keep out of reach of children.']) {
      expect(wordsOn(label)).toContain(said)
      expect(wordsOn(card)).toContain(said)
    }
    expect(label.alt).toContain(SAID[0])
    expect(wordsOn(label)).not.toContain('…')
  })

  it('is in letters of 1.2 mm without their tails, and leaves no box', () => {
    const label = labelOf(EVERYTHING)
    // 0.547 of the size is the height of an x in the typeface; 25.4 mm are 300 dots.
    expect((LEAST_READABLE * 0.547 * 25.4) / 300).toBeGreaterThanOrEqual(1.2)
    expect(Math.min(...sizesOn(label))).toBeGreaterThanOrEqual(LEAST_READABLE)
    for (const { svg } of [label, cardOf(EVERYTHING)]) {
      expect(differing(pixelsOf(svg), pixelsOf(cutAtBoxes(svg)))).toBe(0)
    }
  })

  it('makes a label higher only where it has to be', () => {
    expect(labelOf(known('lemon_peel')).height).toBe(mm(55))
    expect(labelOf(known('coffee_whole', 'liquorice_root')).height).toBe(mm(55))
    expect(labelOf(EVERYTHING).height).toBeGreaterThan(mm(75))
    expect(labelOf(EVERYTHING, NAMES.wideWords).height).toBeLessThanOrEqual(mm(95))
  })

  it('is never cut for a long list of what is in it, and stays between its lines', () => {
    const strangers = Array.from({ length: 40 }, (_, index) => `jaboticaba number ${index}`)
    const label = labelOf([...EVERYTHING, ...unknown(...strangers)], NAMES.wideWords)
    expect(wordsOn(label)).toContain(SAID[0])
    expect(wordsOn(label)).toContain(SAID.slice(3).join(' '))
    const { contents, line } = endsOf(label)
    expect(contents).toBeLessThanOrEqual(line + 8)
    expect(label.height).toBe(mm(95))
    // Nor are the words for who cannot see it, of which only so many are taken.
    for (const said of [SAID[0]!, ...SAID.slice(3), 'Keep out of reach of children.']) expect(label.alt).toContain(said)
    expect(label.alt.length).toBeLessThanOrEqual(1000)
  })

  it('fits whatever is in it', () => {
    const ids = catalogue.map(({ id }) => id)
    const plants = fc.tuple(
      fc.uniqueArray(fc.constantFrom(...ids), { maxLength: 14 }),
      fc.uniqueArray(fc.constantFrom('celery', 'sesame', 'dried figs', 'jaboticaba', 'mixed nuts'), { maxLength: 4 }),
      fc.constantFrom(...Object.values(NAMES)),
    )
    fc.assert(
      fc.property(plants, ([some, others, name]) => {
        const label = labelOf([...known(...some), ...unknown(...others)], name)
        const { contents, line } = endsOf(label)
        expect(contents).toBeLessThanOrEqual(line + 8)
        if (label.height < mm(95)) expect(wordsOn(label).split('Bottled')[0]).not.toMatch(/…(?! )/)
        expect(label.alt).toContain('Not in pregnancy.')
      }),
      { seed: SEED, numRuns: runs(30, 2000) },
    )
  })

  it('says not to drink it neat in a line of its own, with the mark of what burns', () => {
    const data = { ...bottleLabelData(readyBatch('Lemon'), 500), isFlammable: true, isTooStrong: true }
    const label = bottleLabel(data, pen)
    expect(label.svg).toContain('>Don’t drink neat.<')
    expect(label.svg).toContain('>Not in pregnancy. Keep out of reach of children.<')
    expect(label.svg.split('FLAMMABLE')).toHaveLength(2)
    expect(differing(pixelsOf(label.svg), pixelsOf(cutAtBoxes(label.svg)))).toBe(0)
  })
})
