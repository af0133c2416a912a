import { beforeAll, describe, expect, it } from 'vitest'
import { batchCard } from '../../../bot/picture/card/batch-card.ts'
import { batchCardData } from '../../../bot/picture/card/batch-card-data.ts'
import { palette } from '../../../bot/picture/draw/palette.ts'
import type { Pen, Picture } from '../../../bot/picture/draw/picture.ts'
import { textWidth } from '../../../bot/picture/draw/text-lines.ts'
import { bottleLabel } from '../../../bot/picture/label/bottle-label.ts'
import { bottleLabelData } from '../../../bot/picture/label/bottle-label-data.ts'
import { shelf } from '../../../bot/picture/shelf/shelf.ts'
import { shelfData } from '../../../bot/picture/shelf/shelf-data.ts'
import { jarTag } from '../../../bot/picture/tag/jar-tag.ts'
import { jarTagData } from '../../../bot/picture/tag/jar-tag-data.ts'
import { clean } from '../../../bot/text/clean.ts'
import { manyJars, NAMES, readyBatch, steepingBatch, TODAY } from './batches.ts'
import { pen as newPen, pixelsOf, withoutText } from './pixels.ts'

let pen: Pen
beforeAll(async () => {
  pen = await newPen()
})

type Make = (name: string) => Picture

/** For the jar's owner, each with the id of its jar. */
const OWN: readonly (readonly [string, Make, id: string])[] = [
  ['a shelf', (name) => shelf(shelfData(manyJars([name, 'Mint']), TODAY), pen), '#jar0'],
  ['a tag', (name) => jarTag(jarTagData(steepingBatch(name)), pen), '#steep'],
  ['a bottle label', (name) => bottleLabel(bottleLabelData(readyBatch(name), 500), pen), '#ready'],
]

/** For everybody, each with how its plants begin. */
const CARDS: readonly (readonly [string, Make, plants: string])[] = [
  ['a card', (name) => batchCard(batchCardData(readyBatch(name), TODAY), pen), 'Lemon peel and'],
  ['a card of a jar that steeps', (name) => batchCard(batchCardData(steepingBatch(name), TODAY), pen), 'Green'],
]

describe('a name of which signs cannot be drawn', () => {
  it.each(OWN)('has on %s the id of its jar before it, and stands whole in the text beside it', (_, make, id) => {
    const { svg, alt } = make(NAMES.undrawn)
    expect(svg).toContain(`>${id} ▯▯▯▯ ▯ plum<`)
    expect(svg).toContain(pen.text.undrawn())
    expect(alt).toContain(clean(NAMES.undrawn))
    const bare = make('梅酒')
    expect(bare.svg).toContain(`>${id}<`)
    expect(bare.alt).toContain('梅酒')
    for (const { svg } of [bare, make('Mint')]) expect(svg).not.toMatch(/▯|stands for/)
    expect(make('Mint').svg).not.toContain(id)
  })

  it.each(OWN)('keeps its id on %s however long it is', (_, make, id) => {
    expect(make(`梅 ${'W'.repeat(38)}`).svg).toContain(`>${id} `)
  })

  it.each(CARDS)('gives way on %s to the plants', (_, make, plants) => {
    const { svg, alt } = make(NAMES.undrawn)
    expect(svg).toContain(`>${plants}`)
    expect(svg).not.toMatch(/▯|#ready|#steep/)
    expect(alt).toContain(clean(NAMES.undrawn))
    expect(make('Mint').svg).not.toContain(`>${plants}`)
  })
})

describe('a shelf', () => {
  it.each([
    ['Midwinter mandarin and mint', 31],
    ['shake', 27],
  ])('has no line of the calendar behind %j', (text, size) => {
    const { svg, width } = shelf(shelfData(manyJars(['Midwinter mandarin and mint']), TODAY), pen)
    const pixels = pixelsOf(withoutText(svg))
    const found = new RegExp(
      `<svg x="(\\d+)" y="(\\d+)" width="(\\d+)" height="(\\d+)"[^>]*>(<text[^>]*>)(${text}[^<]*)`,
    ).exec(svg)!
    const [x = 0, y = 0, room = 0, height = 0] = found.slice(1, 5).map(Number)
    const wide = Math.floor(textWidth(pen.faces, { text: found[6]!, face: 'bold', size }))
    const from = found[5]!.includes('"end"') ? x + room - wide : x
    const colours = new Set<string>()
    for (let row = y + 6; row < y + height - 6; row++) {
      const start = 4 * (row * width + from)
      for (let at = start; at < start + 4 * wide; at += 4) colours.add(pixels.subarray(at, at + 3).toString('hex'))
    }
    expect([...colours]).toEqual([palette.wall.slice(1)])
  })
})
