import { clean } from '../../text/clean.ts'
import type { BottleLabelData } from '../../text/messages/pictures.ts'
import { flammableMark } from '../draw/flammable-mark.ts'
import { ownName } from '../draw/own-name.ts'
import type { Pen, Picture } from '../draw/picture.ts'
import { BLACK, DOTS_PER_INCH, mm, WHITE } from '../draw/printed.ts'
import { clipped, inset } from '../draw/shapes.ts'
import { drawing, moved, path, rect } from '../draw/svg.ts'
import { type Lines, lacksSigns, lineHeight, textIn, textLine, textLines, textWidth } from '../draw/text-lines.ts'

const WIDTH = mm(90)
const HEIGHT = mm(55)
/** It grows by steps where there is more to say, up to what stands on a small bottle. */
const STEP = mm(5)
const MOST_HEIGHT = mm(95)
const EDGE = 16
const LEFT = 84
const ROOM = WIDTH - 2 * LEFT
const SMALL = 32
/**
 * Its small letters are 1.2 mm high, the least of Regulation (EU) 1169/2011, Article 13 (from memory): 0.547 of the
 * size, by the typeface.
 */
export const LEAST_READABLE = 26
const SMALLEST = 20
const SIZES = [36, SMALL, 28, LEAST_READABLE, 23, SMALLEST] as const
const LARGE = 74
const LONG = 54
const FACTS = 44
const LEAST_FACTS = 30
const MIDDLE = WIDTH / 2

const LINE = { x: LEFT, width: ROOM, align: 'middle', fill: BLACK } as const

/** What is stuck on a bottle: 90 × 55 mm, or higher. */
export function bottleLabel(data: BottleLabelData, pen: Pen): Picture {
  const { faces, text, format } = pen
  const { label } = text
  const called = ownName(faces, data, 'name')
  const isLong = textWidth(faces, { text: called, face: 'name', size: LARGE }) > ROOM
  const size = isLong ? LONG : LARGE
  const name = textLines(faces, { ...LINE, y: 70, size, face: 'name', text: called }, 2)
  const facts = [label.kind(data), label.strength(data, format), label.volume(data, format)]
    .filter((said) => said !== '')
    .join('  ·  ')
  const factsY = 70 + name.height
  const told = factsText(faces, facts, factsY)
  const top = factsY + told.height + 14
  const dates = [label.bottled(data), label.bestBefore(data), label.maker(data)].filter((said) => said !== '')
  const warnings = [label.warning(data), label.neat(data), label.keepAway()].filter((said) => said !== '')
  const last = [...dates, ...warnings]
  const markLines = data.isFlammable ? 1 : 0
  const footHeight = EDGE + 36 + (last.length + markLines) * lineHeight(SMALL)
  const roomOf = (height: number): number => height - footHeight - 18 - (top + 10)
  const height = heightFor(data, pen, roomOf)
  const foot = height - footHeight
  const middle = contents(data, pen, roomOf(height))
  const svgs = [
    ground(height),
    sprig(48),
    name.svg,
    told.svg,
    rule(top),
    moved(0, top + 10 + Math.floor((roomOf(height) - middle.height) / 2), middle.svg),
    rule(foot - 12),
    ...last.map((said, index) => {
      const line = index < dates.length ? index : index + markLines
      const at = { ...LINE, y: foot + line * lineHeight(SMALL), size: SMALL, leastSize: 24, text: said } as const
      return textLine(faces, { ...at, face: index < dates.length ? 'plain' : 'bold' })
    }),
    data.isFlammable ? markInTheMiddle(foot + dates.length * lineHeight(SMALL), pen) : '',
  ]
  const svg = drawing(WIDTH, height, svgs.join(''))
  return { svg, width: WIDTH, height, alt: clean(label.alt(data, format)), dotsPerInch: DOTS_PER_INCH }
}

/** On one line, or on two where they would be cut. */
function factsText(faces: Pen['faces'], text: string, y: number): { readonly svg: string; readonly height: number } {
  const at = { ...LINE, y, face: 'bold', text } as const
  if (textWidth(faces, { text, face: 'bold', size: LEAST_FACTS }) > ROOM)
    return textLines(faces, { ...at, size: FACTS }, 2)
  return { svg: textLine(faces, { ...at, size: FACTS, leastSize: LEAST_FACTS }), height: lineHeight(FACTS) }
}

/** What burns, marked on a line of its own, so that no warning beside it is cut and the frame stays free. */
function markInTheMiddle(y: number, pen: Pen): string {
  const height = lineHeight(SMALL) - 4
  const { width } = flammableMark({ x: 0, y: 0, height }, pen)
  return flammableMark({ x: MIDDLE - width / 2, y, height }, pen).svg
}

const aside = (data: BottleLabelData, { faces, text }: Pen): Lines => {
  const said = lacksSigns(faces, ownName(faces, data, 'name'), 'name') ? text.undrawn() : ''
  return textLines(faces, { ...LINE, y: 0, size: LEAST_READABLE, face: 'plain', text: said }, 1)
}

interface Parts {
  readonly inIt: Lines
  readonly allergens: Lines
  readonly advice: Lines
}

/** What is in it, what that does to some, and what a guest has to know, all of it. */
function partsIn(data: BottleLabelData, { faces, text: { label } }: Pen, size: number): Parts {
  const whole = (face: 'plain' | 'bold', text: string): Lines =>
    textLines(faces, { ...LINE, y: 0, size, face, text }, Number.POSITIVE_INFINITY)
  return {
    inIt: whole('plain', label.inIt(data)),
    allergens: whole('bold', label.allergens(data)),
    advice: whole('plain', label.advice(data)),
  }
}

/** Between the parts. */
const GAP = 7

const heightOf = ({ inIt, allergens, advice }: Parts): number =>
  inIt.height + allergens.height + advice.height + 2 * GAP

/** The least of the heights in which all of it is readable. */
function heightFor(data: BottleLabelData, pen: Pen, roomOf: (height: number) => number): number {
  const wanted = heightOf(partsIn(data, pen, LEAST_READABLE)) + aside(data, pen).height + GAP
  let height = HEIGHT
  while (height < MOST_HEIGHT && roomOf(height) < wanted) height += STEP
  return Math.min(height, MOST_HEIGHT)
}

/** All of that in letters as large as there is room for; where there is none, what is in it is cut before what warns. */
function contents(data: BottleLabelData, pen: Pen, height: number): Lines {
  const said = aside(data, pen)
  const room = height - said.height - (said.height > 0 ? GAP : 0)
  for (const size of SIZES) {
    const parts = partsIn(data, pen, size)
    if (heightOf(parts) <= room) return stacked([parts.inIt, parts.allergens, parts.advice, said])
  }
  const { faces, text } = pen
  const line = { ...LINE, y: 0 } as const
  const { advice } = partsIn(data, pen, SMALLEST)
  const left = room - advice.height - 2 * GAP
  const allergens = textIn(
    faces,
    { ...line, face: 'bold', text: text.label.allergens(data) },
    left - lineHeight(SMALLEST),
    [SMALLEST],
  )
  const inIt = textIn(faces, { ...line, face: 'plain', text: text.label.inIt(data) }, left - allergens.height, [
    SMALLEST,
  ])
  return stacked([inIt, allergens, advice, said])
}

function stacked(blocks: readonly Lines[]): Lines {
  let y = 0
  const svgs = blocks.map(({ svg, height }) => {
    if (height === 0) return ''
    if (y > 0) y += GAP
    const at = moved(0, y, svg)
    y += height
    return at
  })
  return { svg: svgs.join(''), height: y }
}

/** White paper with three lines around it. */
function ground(fullHeight: number): string {
  const box = { x: EDGE, y: EDGE, width: WIDTH - 2 * EDGE, height: fullHeight - 2 * EDGE }
  return [
    rect({ x: 0, y: 0, width: WIDTH, height: fullHeight }, { fill: WHITE }),
    clipped(box, 44, { fill: WHITE, stroke: BLACK, 'stroke-width': 7 }),
    clipped(inset(box, 12), 40, { fill: 'none', stroke: BLACK, 'stroke-width': 2 }),
  ].join('')
}

const rule = (y: number): string =>
  rect({ x: MIDDLE - 180, y, width: 360, height: 2.5 }, { fill: BLACK }) +
  path(`M${MIDDLE - 10} ${y + 1} l10 -8 10 8 -10 8 Z`, { fill: BLACK, stroke: WHITE, 'stroke-width': 3 })

/** Two leaves and a berry over the name. */
const sprig = (y: number): string =>
  moved(
    MIDDLE,
    y,
    [
      path('M-9 8 C-26 -10 -52 -12 -74 2 C-52 16 -26 18 -9 8 Z M9 8 C26 -10 52 -12 74 2 C52 16 26 18 9 8 Z', {
        fill: BLACK,
      }),
      path('M-66 2 C-48 1 -28 4 -14 8 M66 2 C48 1 28 4 14 8', { stroke: WHITE, 'stroke-width': 2.5, fill: 'none' }),
      path('M0 0 a8 8 0 1 0 0.01 0 Z', { fill: BLACK }),
    ].join(''),
  )
