import { clean } from '../text/clean.ts'
import type { BottleLabelData } from './bottle-label-data.ts'
import { flammableMark } from './flammable-mark.ts'
import { ownName } from './own-name.ts'
import type { Pen, Picture } from './picture.ts'
import { BLACK, DOTS_PER_INCH, mm, WHITE } from './printed.ts'
import { clipped, inset } from './shapes.ts'
import { drawing, moved, path, rect } from './svg.ts'
import { type Lines, lacksSigns, lineHeight, textIn, textLine, textLines, textWidth } from './text-lines.ts'

const WIDTH = mm(90)
const HEIGHT = mm(55)
const EDGE = 16
const LEFT = 84
const ROOM = WIDTH - 2 * LEFT
const SMALL = 32
const SIZES = [36, SMALL, 28, 24, 20, 17] as const
const LARGE = 74
const LONG = 54
const MIDDLE = WIDTH / 2

/** What is stuck on a bottle: 90 × 55 mm. */
export function bottleLabel(data: BottleLabelData, pen: Pen): Picture {
  const { faces, text, format } = pen
  const { label } = text
  const line = { x: LEFT, width: ROOM, align: 'middle', fill: BLACK } as const
  const called = ownName(faces, data, 'name')
  const isLong = textWidth(faces, { text: called, face: 'name', size: LARGE }) > ROOM
  const size = isLong ? LONG : LARGE
  const name = textLines(faces, { ...line, y: 70, size, face: 'name', text: called }, 2)
  const facts = [label.strength(data, format), label.volume(data, format)].filter((said) => said !== '').join('  ·  ')
  const factsY = 70 + name.height
  const top = factsY + lineHeight(44) + 14
  const warning = label.warning(data)
  const last = [label.bottled(data), label.bestBefore(data), warning, label.keepAway(data)].filter(
    (said) => said !== '',
  )
  const foot = HEIGHT - EDGE - 36 - last.length * lineHeight(SMALL)
  const middle = contents(data, { faces, text, format }, foot - 18 - (top + 10))
  const svgs = [
    ground(),
    sprig(48),
    name.svg,
    textLine(faces, { ...line, y: factsY, size: 44, leastSize: 30, face: 'bold', text: facts }),
    rule(top),
    moved(0, top + 10 + Math.floor((foot - 18 - (top + 10) - middle.height) / 2), middle.svg),
    rule(foot - 12),
    ...last.map((said, index) => {
      const at = { ...line, y: foot + index * lineHeight(SMALL), size: SMALL, leastSize: 24, text: said } as const
      if (index < last.length - 1) return textLine(faces, { ...at, face: said === warning ? 'bold' : 'plain' })
      return data.isFlammable ? marked({ ...at, face: 'bold' }, pen) : textLine(faces, { ...at, face: 'bold' })
    }),
  ]
  const svg = drawing(WIDTH, HEIGHT, svgs.join(''))
  return { svg, width: WIDTH, height: HEIGHT, alt: clean(label.alt(data, format)), dotsPerInch: DOTS_PER_INCH }
}

/** A line in the middle with the mark of what burns before it. */
function marked(at: Parameters<typeof textLine>[1], pen: Pen): string {
  const { faces } = pen
  const height = lineHeight(at.size)
  const { width } = flammableMark({ x: 0, y: 0, height }, pen)
  const gap = 18
  const left = MIDDLE - (width + gap + textWidth(faces, at)) / 2
  const mark = flammableMark({ x: left, y: at.y, height }, pen)
  const beside = left + width + gap
  return mark.svg + textLine(faces, { ...at, x: beside, width: LEFT + ROOM - beside, align: 'start' })
}

/** What that does to some, all of it, and what is in it, from the top of its own. */
function contents(data: BottleLabelData, { faces, text }: Pen, height: number): Lines {
  const line = { x: LEFT, y: 0, width: ROOM, align: 'middle', fill: BLACK } as const
  const aside = lacksSigns(faces, ownName(faces, data, 'name'), 'name') ? text.undrawn() : ''
  const said = textLines(faces, { ...line, size: 26, face: 'plain', text: aside }, 1)
  const room = height - said.height
  const warned = text.label.allergens(data)
  const allergens = textIn(faces, { ...line, face: 'bold', text: warned }, room - lineHeight(SMALL), SIZES)
  const inIt = textIn(faces, { ...line, face: 'plain', text: text.label.inIt(data) }, room - allergens.height, SIZES)
  const below = inIt.height + allergens.height
  const svg = inIt.svg + moved(0, inIt.height, allergens.svg) + moved(0, below, said.svg)
  return { svg, height: below + said.height }
}

/** White paper with three lines around it. */
function ground(): string {
  const box = { x: EDGE, y: EDGE, width: WIDTH - 2 * EDGE, height: HEIGHT - 2 * EDGE }
  return [
    rect({ x: 0, y: 0, width: WIDTH, height: HEIGHT }, { fill: WHITE }),
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
