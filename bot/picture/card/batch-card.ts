import { clean } from '../../text/clean.ts'
import type { BatchCardData } from '../../text/messages/pictures.ts'
import { palette } from '../draw/palette.ts'
import { patterns } from '../draw/patterns.ts'
import type { Pen, Picture } from '../draw/picture.ts'
import { board, paperLabel, star } from '../draw/shapes.ts'
import { wall } from '../draw/shelf-background.ts'
import { drawing, rect } from '../draw/svg.ts'
import { type Lines, lacksSigns, lineHeight, textIn, textLine, textLines } from '../draw/text-lines.ts'
import { composition } from './composition.ts'
import { TIME_LINE_HEIGHT, timeLine } from './time-line.ts'

const WIDTH = 1000
const MARGIN = 36
const PAD = 44
/** Four lines of what is in it. */
const IN_IT = 4 * lineHeight(29)
/** And what a guest has to know, in letters that a phone shows. */
const WARNED = 10 * lineHeight(28)
const ADVISED = 8 * lineHeight(28)
const WARNED_SIZES = [28, 25, 22] as const

const JAR = { x: 70, width: 250 }
/** As high as the paper beside it needs. */
const JAR_HEIGHT = 460
const LATER_SIZE = 25
const FACTS_X = 592
const FACTS_WIDTH = WIDTH - FACTS_X - MARGIN - 26
const BOARD = 26

/** One batch for everybody to see. */
export function batchCard(data: BatchCardData, pen: Pen): Picture {
  const top = heading(data, pen)
  const jarY = MARGIN + top.height + 34
  const jarHeight = JAR_HEIGHT + pen.text.card.laterDays(data).length * lineHeight(LATER_SIZE)
  const boardY = jarY + jarHeight
  const shelfY = boardY + BOARD + 52
  const height = shelfY + TIME_LINE_HEIGHT + 26
  const svg = drawing(
    WIDTH,
    height,
    [
      patterns,
      wall(WIDTH, height),
      top.svg,
      board({ x: MARGIN - 20, y: boardY, width: WIDTH - 2 * MARGIN + 40, height: BOARD }),
      composition(data, pen, { ...JAR, y: jarY, height: jarHeight }, FACTS_X - JAR.x - JAR.width - 24),
      facts(data, pen, jarY),
      timeLine(data, pen, { x: MARGIN, y: shelfY, width: WIDTH - 2 * MARGIN }),
    ].join(''),
  )
  const { text, format } = pen
  return { svg, width: WIDTH, height, alt: clean(text.card.alt(data, format)), dotsPerInch: null }
}

/** The paper label on the wall: the name and what is in it. */
function heading(data: BatchCardData, { faces, text, format }: Pen): Lines {
  const [x, width] = [MARGIN + PAD, WIDTH - 2 * (MARGIN + PAD)]
  const title = lacksSigns(faces, data.name, 'name') ? text.card.plants(data) : data.name
  const name = textLines(faces, { x, y: MARGIN + 34, width, size: 66, face: 'name', text: title }, 2)
  const line = { x, width, face: 'plain' } as const
  const belowName = MARGIN + 34 + name.height + 6
  const inIt = textIn(faces, { ...line, y: belowName, text: text.card.inIt(data.inJar, format) }, IN_IT, [29, 26])
  const planned = data.planned === null ? '' : text.card.planned(data.planned, format)
  const belowInIt = belowName + inIt.height
  const allergens = { ...line, face: 'bold', y: belowInIt, text: text.card.allergens(data) } as const
  const warned = textIn(faces, allergens, WARNED, WARNED_SIZES)
  const belowWarned = belowInIt + warned.height
  const advice = { ...line, y: belowWarned, text: text.card.advice(data) }
  const advised = textIn(faces, advice, ADVISED, WARNED_SIZES)
  const undrawn = lacksSigns(faces, title, 'name') ? text.undrawn() : ''
  const aside = [planned, undrawn].filter((said) => said !== '')
  const asides = aside.map((said, index) =>
    textLine(faces, {
      ...line,
      y: belowWarned + advised.height + index * lineHeight(28),
      size: 28,
      text: said,
      fill: palette.faint,
    }),
  )
  const height = belowWarned + advised.height - MARGIN + aside.length * lineHeight(28) + 32
  const label = paperLabel({ x: MARGIN, y: MARGIN, width: WIDTH - 2 * MARGIN, height })
  return { svg: label + name.svg + inIt.svg + warned.svg + advised.svg + asides.join(''), height }
}

/** Numbers, large enough for a small screen. */
function facts(data: BatchCardData, { faces, text, format }: Pen, top: number): string {
  const { card } = text
  const at = { x: FACTS_X, width: FACTS_WIDTH }
  const pieces: string[] = []
  let y = top + 10
  const fact = (label: string, value: string, doubt: string): void => {
    pieces.push(textLine(faces, { ...at, y, size: 26, face: 'plain', text: label, fill: palette.faint }))
    pieces.push(textLine(faces, { ...at, y: y + 30, size: 46, leastSize: 28, face: 'bold', text: value }))
    y += 30 + lineHeight(46) - 6
    if (doubt !== '') {
      pieces.push(textLine(faces, { ...at, y, size: 28, leastSize: 20, face: 'plain', text: doubt }))
      y += lineHeight(28)
    }
    y += 12
  }
  const { made } = data
  if (made === null) {
    pieces.push(textLine(faces, { ...at, y, size: 32, face: 'plain', text: card.nothing() }))
    y += 60
  } else {
    fact(card.strengthLabel(), card.strength(made, format), card.strengthDoubt(made, format))
    fact(card.sweetnessLabel(), card.sweetness(made, format), card.sweetnessDoubt(made, format))
  }
  fact(card.daysLabel(data), card.days(data), '')
  const later = card.laterDays(data)
  pieces.push(
    ...later.map((said, index) => {
      const line = y - 10 + index * lineHeight(LATER_SIZE)
      return textLine(faces, { ...at, y: line, size: LATER_SIZE, leastSize: 20, face: 'plain', text: said })
    }),
  )
  y += later.length * lineHeight(LATER_SIZE)
  pieces.push(rating(data, { faces, text, format }, y))
  const paper = { x: FACTS_X - 34, y: top - 4, width: FACTS_WIDTH + 60, height: y + 76 - top }
  return [
    rect({ ...paper, x: paper.x + 4, y: paper.y + 5 }, { rx: 10, fill: palette.boardDark, 'fill-opacity': 0.16 }),
    rect(paper, { rx: 10, fill: palette.paper, stroke: palette.boardDark, 'stroke-width': 2.5 }),
    ...pieces,
  ].join('')
}

const STARS = 5

function rating({ rating }: BatchCardData, { faces, text }: Pen, y: number): string {
  if (rating === null) {
    const said = text.card.unrated()
    return textLine(faces, {
      x: FACTS_X,
      y,
      width: FACTS_WIDTH,
      size: 28,
      face: 'plain',
      text: said,
      fill: palette.faint,
    })
  }
  return Array.from({ length: STARS }, (_, index) => star(FACTS_X + 26 + index * 62, y + 26, 25, index < rating)).join(
    '',
  )
}
