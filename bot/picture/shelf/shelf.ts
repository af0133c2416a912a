import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import { clean } from '../../text/clean.ts'
import type { Phase, ShelfData } from '../../text/messages/pictures.ts'
import { palette } from '../draw/palette.ts'
import { patterns } from '../draw/patterns.ts'
import type { Pen, Picture } from '../draw/picture.ts'
import { board, bottle, jar, paperLabel } from '../draw/shapes.ts'
import { wall } from '../draw/shelf-background.ts'
import { drawing, path, rect } from '../draw/svg.ts'
import { lineHeight, textLine, textWidth } from '../draw/text-lines.ts'
import type { CalendarScale } from './calendar-scale.ts'
import { calendarScale } from './calendar-scale.ts'
import { PHASE_FILL, ROW, rowLacksSigns, shelfRow } from './shelf-row.ts'

const WIDTH = 1000
const MARGIN = 30
const CALENDAR = { x: MARGIN + 66, width: WIDTH - 2 * MARGIN - 66 }
const HEAD = 150
const LEGEND = 56
const MONTHS = 88
const SMALL = 27
const MOST_JARS = 24

/** Every jar that runs, as a bar over a calendar. */
export function shelf(data: ShelfData, pen: Pen): Picture {
  const { text, format } = pen
  const alt = clean(text.shelf.alt(data, format))
  const painted = data.jars.length === 0 ? emptyShelf(pen) : fullShelf(data, pen)
  return { ...painted, width: WIDTH, alt, dotsPerInch: null }
}

type Painted = Pick<Picture, 'svg' | 'height'>

function fullShelf({ jars, today }: ShelfData, pen: Pen): Painted {
  const shown = jars.slice(0, MOST_JARS)
  const rest = jars.length - shown.length
  const top = HEAD + LEGEND + MONTHS
  const notes = [
    ...(rest > 0 ? [pen.text.shelf.more(rest)] : []),
    ...(shown.some((each) => rowLacksSigns(each, pen)) ? [pen.text.undrawn()] : []),
  ]
  const foot = top + shown.length * ROW + 20
  const height = foot + notes.length * lineHeight(SMALL) + (notes.length > 0 ? 24 : 8)
  const scale = calendarScale(shown, dayNumber(today), CALENDAR.x, CALENDAR.width)
  const rows = shown.map((each, index) =>
    shelfRow(
      each,
      { id: `row-${index}`, x: MARGIN, y: top + index * ROW, width: WIDTH - 2 * MARGIN, scale, today },
      pen,
    ),
  )
  const said = notes.map((note, index) =>
    textLine(pen.faces, {
      x: MARGIN,
      y: foot + 8 + index * lineHeight(SMALL),
      width: WIDTH - 2 * MARGIN,
      size: SMALL,
      face: 'bold',
      text: note,
    }),
  )
  const contents = [
    patterns,
    wall(WIDTH, height),
    head(jars.length, pen),
    legend(pen),
    calendar(scale, top - MONTHS, top + shown.length * ROW, today, pen),
    ...rows,
    ...said,
  ]
  return { svg: drawing(WIDTH, height, contents.join('')), height }
}

function head(count: number, { faces, text }: Pen): string {
  const [y, size] = [MARGIN - 4, 54]
  const counted = text.shelf.count(count)
  const wide = textWidth(faces, { text: counted, face: 'plain', size: 34 })
  const at = MARGIN + 36
  const countX = WIDTH - at - wide - 2
  return [
    paperLabel({ x: MARGIN - 8, y, width: WIDTH - 2 * (MARGIN - 8), height: HEAD - MARGIN - 10 }, 18),
    textLine(faces, { x: at, y: y + 20, width: countX - at - 20, size, face: 'name', text: text.shelf.title() }),
    textLine(faces, { x: countX, y: y + 36, width: wide + 2, size: 34, face: 'plain', text: counted }),
  ].join('')
}

const PHASES: readonly Phase[] = ['steeping', 'straining', 'resting']

function legend({ faces, text }: Pen): string {
  let x = MARGIN
  const pieces: string[] = []
  const word = (said: string): void => {
    const width = textWidth(faces, { text: said, face: 'plain', size: SMALL }) + 4
    pieces.push(textLine(faces, { x, y: HEAD, width, size: SMALL, face: 'plain', text: said }))
    x += width + 34
  }
  for (const phase of PHASES) {
    const box = { x, y: HEAD + 6, width: 56, height: 26 }
    pieces.push(rect(box, { fill: PHASE_FILL[phase], stroke: palette.ink, 'stroke-width': 2 }))
    x += box.width + 10
    word(text.shelf.phase[phase])
  }
  pieces.push(bottle(x + 12, HEAD + 38, 44, { fill: palette.straining }))
  x += 32
  word(text.shelf.ready())
  return pieces.join('')
}

/** The months over the shelves and today's line through them. */
function calendar(
  scale: CalendarScale,
  top: number,
  bottom: number,
  today: string,
  { faces, text, format }: Pen,
): string {
  const now = scale.xOf(dayNumber(today) + 0.5)
  const flag = text.shelf.today(today, format)
  const wide = textWidth(faces, { text: flag, face: 'bold', size: SMALL }) + 24
  const flagX = Math.min(Math.max(CALENDAR.x, now - wide / 2), CALENDAR.x + CALENDAR.width - wide)
  const months = scale.months.map(({ day, month }, index) => {
    const x = scale.xOf(day)
    const next = scale.months[index + 1]
    const width = (next === undefined ? CALENDAR.x + CALENDAR.width : scale.xOf(next.day)) - x - 12
    const name =
      width < 40
        ? ''
        : textLine(faces, { x: x + 8, y: top + 44, width, size: SMALL, face: 'plain', text: text.shelf.month(month) })
    return path(`M${x} ${top + 46} V${bottom}`, { stroke: palette.rule, 'stroke-width': 2.5 }) + name
  })
  return [
    ...months,
    path(`M${now} ${top + 40} V${bottom}`, { stroke: palette.today, 'stroke-width': 4 }),
    rect({ x: flagX, y: top + 2, width: wide, height: 40 }, { rx: 6, fill: palette.today }),
    textLine(faces, {
      x: flagX + 12,
      y: top + 4,
      width: wide - 22,
      size: SMALL,
      face: 'bold',
      text: flag,
      fill: palette.paper,
    }),
  ].join('')
}

const BARE_ROW = 200

/** Two boards with room on them, and what begins the first jar. */
function emptyShelf(pen: Pen): Painted {
  const { faces, text } = pen
  const height = HEAD + 2 * BARE_ROW + 150
  const line = { x: MARGIN, width: WIDTH - 2 * MARGIN, align: 'middle' } as const
  const feet = [HEAD + BARE_ROW, HEAD + 2 * BARE_ROW]
  const jars = [150, 330, 690].map((x, index) =>
    jar(
      { x, y: feet[1]! - 140, width: 104, height: 140 },
      { id: `bare-${index}`, contents: '', stroke: palette.faint },
    ),
  )
  const contents = [
    wall(WIDTH, height),
    head(0, pen),
    ...feet.map((y) => board({ x: 0, y, width: WIDTH, height: 24 })),
    ...jars,
    bottle(560, feet[1]!, 160, { fill: palette.glassFill, stroke: palette.faint }),
    textLine(faces, { ...line, y: HEAD + 60, size: 44, face: 'name', text: text.shelf.empty() }),
    textLine(faces, { ...line, y: feet[1]! + 60, size: 30, face: 'plain', text: text.shelf.howToBegin() }),
  ]
  return { svg: drawing(WIDTH, height, contents.join('')), height }
}
