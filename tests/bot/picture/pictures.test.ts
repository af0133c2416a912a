import { beforeAll, describe, expect, it } from 'vitest'
import { batchCard } from '../../../bot/picture/card/batch-card.ts'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import type { Pen, Picture } from '../../../bot/picture/draw/picture.ts'
import { textLine } from '../../../bot/picture/draw/text-lines.ts'
import { bottleLabel } from '../../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { shelf } from '../../../bot/picture/shelf/shelf.ts'
import { shelfData } from '../../../bot/picture/shelf/shelf-data.ts'
import { jarTag } from '../../../bot/picture/tag/jar-tag.ts'
import { jarTagData } from '../../../bot/picture/tag/jar-tag-data.ts'
import { clean } from '../../../bot/text/clean.ts'
import { manyJars, NAMES, readyBatch, steepingBatch, TODAY } from './batches.ts'
import { cutAtBoxes, differing, pen as newPen, pixelsOf, withoutText } from './pixels.ts'

let pen: Pen
beforeAll(async () => {
  pen = await newPen()
})

/** Every picture that shows one name. */
const PICTURES: readonly (readonly [string, (name: string) => Picture])[] = [
  ['a card', (name) => batchCard(batchCardData(readyBatch(name), TODAY), pen)],
  ['a card of a jar that steeps', (name) => batchCard(batchCardData(steepingBatch(name), TODAY), pen)],
  ['a shelf', (name) => shelf(shelfData(manyJars([name, 'Mint']), TODAY), pen)],
  ['a tag', (name) => jarTag(jarTagData(steepingBatch(name)), pen)],
  ['a bottle label', (name) => bottleLabel(bottleLabelData(readyBatch(name), 500), pen)],
]

const expectNothingOutside = ({ svg }: Picture): void => {
  expect(svg).toContain('overflow="visible"')
  expect(differing(pixelsOf(svg), pixelsOf(cutAtBoxes(svg)))).toBe(0)
}

describe('what is drawn', () => {
  it('would be seen to leave its box', () => {
    const line = textLine(pen.faces, { x: 10, y: 10, width: 300, size: 40, face: 'bold', text: 'Midwinter' })
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="500" height="80">${line}</svg>`
    expect(differing(pixelsOf(svg), pixelsOf(cutAtBoxes(svg)))).toBe(0)
    const narrow = svg.replace(/width="30\d"/, 'width="150"')
    expect(differing(pixelsOf(narrow), pixelsOf(cutAtBoxes(narrow)))).toBeGreaterThan(500)
  })

  it.each(PICTURES)('keeps every text of %s in its box, whatever the name', (_, make) => {
    for (const name of [NAMES.widest, NAMES.arabic, NAMES.vietnamese]) expectNothingOutside(make(name))
  })

  it.each(Object.entries(NAMES))('keeps a name in its box on a tag: %s', (_, name) => {
    expectNothingOutside(jarTag(jarTagData(steepingBatch(name)), pen))
  })

  it.each(PICTURES)('has letters on %s', (_, make) => {
    const { svg } = make('Midwinter lemon')
    const letters = differing(pixelsOf(svg), pixelsOf(withoutText(svg)))
    expect(letters).toBeGreaterThan(15_000)
  })

  it.each(PICTURES)('draws %s the same twice', (_, make) => {
    expect(make(NAMES.greek)).toEqual(make(NAMES.greek))
    const { svg } = make(NAMES.greek)
    expect(pixelsOf(svg).equals(pixelsOf(svg))).toBe(true)
  })

  it.each(PICTURES)('takes nothing of a name for drawing on %s', (_, make) => {
    const count = (svg: string, tag: string): number => svg.split(`<${tag}`).length
    const [hostile, tame] = [make(NAMES.hostile), make('x'.repeat(60))]
    for (const tag of ['rect', 'image', 'use', 'style', 'script']) {
      expect(count(hostile.svg, tag)).toBe(count(tame.svg, tag))
    }
    expect(hostile.svg).toContain('&lt;/text')
    expect(pixelsOf(hostile.svg)).toHaveLength(4 * hostile.width * hostile.height)
    expect(hostile.alt).toBe(clean(hostile.alt))
  })

  it.each(PICTURES)('draws the letters of other scripts on %s', (_, make) => {
    for (const name of [NAMES.cyrillic, NAMES.greek, NAMES.hebrew, NAMES.arabic, NAMES.georgian]) {
      const { svg, alt } = make(name)
      expect(svg).not.toContain('▯')
      expect(svg).toContain(name.slice(0, 6))
      expect(alt).toContain(name)
    }
  })
})

describe('a shelf', () => {
  const shelfOf = (count: number): Picture =>
    shelf(shelfData(manyJars(Array.from({ length: count }, (_, index) => `Jar number ${index}`)), TODAY), pen)

  it('is bare without a jar', () => {
    const { svg, alt, height } = shelfOf(0)
    expect(svg).toContain('No jars yet.')
    expect(alt).toContain('No jars yet.')
    expect(height).toBeGreaterThan(400)
    expect(pixelsOf(svg)).toHaveLength(4 * 1000 * height)
  })

  it('has room for 20 jars, each named and with what it asks for', () => {
    const picture = shelfOf(20)
    for (let index = 0; index < 20; index++) {
      expect(picture.svg).toContain(`>Jar number ${index}<`)
      expect(picture.alt).toContain(`Jar number ${index}`)
    }
    expect(picture.svg).not.toContain(' more<')
    expect(picture.svg).toContain('>today, 25 Nov<')
    expectNothingOutside(picture)
  })

  it('counts the rest', () => {
    const [most, over] = [shelfOf(24), shelfOf(100)]
    expect(most.svg).not.toContain('more')
    expect(over.svg).toContain('>and 76 more<')
    expect(over.svg).toContain('>100 jars<')
    expect(over.alt.length).toBeLessThanOrEqual(1000)
    expect(over.alt).toMatch(/, and \d\d more\.$/)
    expect(over.height).toBeLessThan(3200)
  })

  it('holds names of every kind', () => {
    const picture = shelf(shelfData(manyJars(Object.values(NAMES)), TODAY), pen)
    expectNothingOutside(picture)
  })
})

describe('the alternative text', () => {
  it('says what a card says', () => {
    const { alt, svg } = batchCard(batchCardData(readyBatch('Midwinter lemon'), TODAY), pen)
    for (const said of ['42 %', '241 g/L', '± 3 g/L', '23 days', '18 Oct', '100 g sugar', '15 %'].map(spaced)) {
      expect(spaced(alt), said).toContain(said)
      expect(spaced(svg), said).toContain(said)
    }
    expect(alt).toContain('Rated 4 of 5.')
    expect(alt.length).toBeLessThan(600)
  })

  it('says what is printed', () => {
    const tag = jarTag(jarTagData(steepingBatch('Walnut')), pen)
    expect(tag.alt).toContain('Started 1 November 2026. Strain from 1 to 20 December 2026.')
    expect(tag.alt).toContain('Flammable.')
    expect(tag.svg).toContain('>FLAMMABLE<')
    const label = bottleLabel(bottleLabelData(readyBatch('Lemon'), 500), pen)
    expect(spaced(label.alt)).toContain('About 42 % vol (computed). 500 ml. Bottled 24 October 2026.')
    expect(label.alt).toContain('Best before about October 2027.')
    expect(label.alt).toContain('Not in pregnancy. Keep out of reach of children.')
    expect(label.svg).toContain('>Not in pregnancy. Keep out of reach of children.<')
  })

  it('is never longer than what takes it', () => {
    const long = steepingBatch(
      'W'.repeat(40),
      Array.from({ length: 40 }, (_, index) => ({
        id: null,
        name: `jaboticaba number ${index}`,
        massG: { value: 5, plusMinus: 1 },
        count: null,
        isDried: false,
        isUsual: false,
        words: null,
        addOn: null,
      })),
    )
    for (const picture of [
      batchCard(batchCardData(long, TODAY), pen),
      jarTag(jarTagData(long), pen),
      bottleLabel(bottleLabelData(long, 500), pen),
    ]) {
      expect(picture.alt.length).toBeLessThanOrEqual(1000)
      expectNothingOutside(picture)
    }
  })
})

const spaced = (text: string): string => text.replaceAll('\u00a0', ' ')
