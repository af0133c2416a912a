import { isHolding } from '../../../core/jar/limits/judge-jar.ts'
import { clean } from '../../text/clean.ts'
import type { JarTagData } from '../../text/messages/pictures.ts'
import { flammableMark } from '../draw/flammable-mark.ts'
import { ownName } from '../draw/own-name.ts'
import type { Pen, Picture } from '../draw/picture.ts'
import { BLACK, DOTS_PER_INCH, mm, WHITE } from '../draw/printed.ts'
import { clipped } from '../draw/shapes.ts'
import { drawing, element, rect } from '../draw/svg.ts'
import { lacksSigns, lineHeight, textIn, textLine, textLines, textWidth } from '../draw/text-lines.ts'

const WIDTH = mm(70)
const HEIGHT = mm(40)
const EDGE = 14
const HOLE = { x: 74, radius: 24 }
const LEFT = 126
const RIGHT = WIDTH - EDGE - 34
const FOOT = HEIGHT - EDGE - 84
const LEAST_STRENGTH = 24
/** Beside the sign that it burns. */
const STRENGTH_ROOM = 72

/** A tag to tie to a jar on its first day: 70 × 40 mm. */
export function jarTag(data: JarTagData, { faces, text, format }: Pen): Picture {
  const { tag } = text
  const line = { x: LEFT, width: RIGHT - LEFT, fill: BLACK } as const
  const [large, small] = [60, 46]
  const called = ownName(faces, data, 'name')
  const isLong = textWidth(faces, { text: called, face: 'name', size: large }) > line.width
  const size = isLong ? small : large
  const name = textLines(faces, { ...line, y: 36, size, face: 'name', text: called }, 2)
  const flammable = data.isFlammable ? flammableMark({ x: LEFT, y: FOOT }, { faces, text, format }) : null
  const strength = tag.strength(data, format)
  const pieces: string[] = [name.svg]
  let y = 36 + name.height + 6
  pieces.push(rect({ x: LEFT, y, width: RIGHT - LEFT, height: 3 }, { fill: BLACK }))
  y += 14
  // What has to be put right is not strained first.
  const isHeld = data.danger !== null && isHolding({ kind: data.danger })
  for (const said of [tag.started(data), isHeld ? '' : tag.strain(data), tag.best(data), tag.honey(data)]) {
    if (said === '') continue
    pieces.push(textLine(faces, { ...line, y, size: 38, leastSize: 28, face: 'bold', text: said }))
    y += lineHeight(38)
  }
  const warning = textLines(faces, { ...line, y, size: 34, face: 'bold', text: tag.warning(data) }, 2)
  pieces.push(warning.svg)
  y += warning.height
  const aside = lacksSigns(faces, called, 'name') ? text.undrawn() : ''
  const room = FOOT - 8 - y - (aside === '' ? 0 : lineHeight(26))
  // Who may not drink of it comes before what all is in it.
  const allergens = textIn(faces, { ...line, y: y + 2, face: 'bold', text: tag.allergens(data) }, room, [29, 25, 22])
  pieces.push(allergens.svg)
  y += 2 + allergens.height
  const at = { ...line, y, face: 'plain', text: tag.inIt(data.inJar, format) } as const
  const inIt = textIn(faces, at, room - allergens.height, [29, 25, 22])
  pieces.push(inIt.svg)
  y += inIt.height
  if (aside !== '') pieces.push(textLine(faces, { ...line, y, size: 26, face: 'plain', text: aside }))
  const strengthX = LEFT + (flammable === null ? 0 : flammable.width + 24)
  const foot = { x: strengthX, width: RIGHT - strengthX, face: 'bold', text: strength, fill: BLACK } as const
  const isCut = textWidth(faces, { ...foot, size: LEAST_STRENGTH }) > foot.width
  // Proof with its percent takes a second line rather than lose its end.
  pieces.push(
    isCut
      ? textIn(faces, { ...foot, y: FOOT + 4 }, STRENGTH_ROOM, [28, LEAST_STRENGTH]).svg
      : textLine(faces, { ...foot, y: FOOT + 10, size: 38, leastSize: LEAST_STRENGTH }),
  )
  const svg = drawing(WIDTH, HEIGHT, [ground(), flammable?.svg ?? '', ...pieces].join(''))
  return { svg, width: WIDTH, height: HEIGHT, alt: clean(tag.alt(data, format)), dotsPerInch: DOTS_PER_INCH }
}

/** White paper, a line to cut along and a hole for the string. */
function ground(): string {
  const box = { x: EDGE, y: EDGE, width: WIDTH - 2 * EDGE, height: HEIGHT - 2 * EDGE }
  const middle = { cx: HOLE.x, cy: HEIGHT / 2, fill: WHITE, stroke: BLACK }
  return [
    rect({ x: 0, y: 0, width: WIDTH, height: HEIGHT }, { fill: WHITE }),
    clipped(box, 36, { fill: WHITE, stroke: BLACK, 'stroke-width': 5 }),
    element('circle', { ...middle, r: HOLE.radius + 10, 'stroke-width': 2 }),
    element('circle', { ...middle, r: HOLE.radius, 'stroke-width': 4, 'stroke-dasharray': '9 7' }),
  ].join('')
}
