import { isHolding } from '../../../core/jar/limits/judge-jar.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import type { Phase, ShelfJar, ShelfSpan } from '../../text/messages/pictures.ts'
import { ownName } from '../draw/own-name.ts'
import { palette } from '../draw/palette.ts'
import type { Pen } from '../draw/picture.ts'
import { board, bottle, jar, jarInside } from '../draw/shapes.ts'
import { type Box, path, rect } from '../draw/svg.ts'
import { lacksSigns, lineHeight, textLine, textWidth } from '../draw/text-lines.ts'
import type { CalendarScale } from './calendar-scale.ts'

export const ROW = 108
const BAR = 30
const BOARD = 12
const JAR = { width: 48, height: 62 }
const NAME_SIZE = 31
const DUE_SIZE = 27
const GAP = 24
/** Of the width, what a task has beside the longest name. */
const DUE_SHARE = 0.44

export const PHASE_FILL: Readonly<Record<Phase, string>> = {
  steeping: palette.steeping,
  straining: 'url(#straining)',
  resting: 'url(#resting)',
}

interface RowRoom {
  readonly id: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly scale: CalendarScale
  readonly today: IsoDay
}

/** The jar as its stage looks: fruit in it, clear, or half sweetened. */
function icon({ stage }: ShelfJar, { id, x, y }: RowRoom): string {
  const box = { ...JAR, x, y: y + ROW - BOARD - JAR.height }
  if (stage === 'ready' || stage === 'resting') {
    const fill = stage === 'ready' ? palette.straining : palette.resting
    return bottle(x + JAR.width / 2, box.y + JAR.height, JAR.height + 14, { fill })
  }
  const inside = jarInside({ ...box, x: 0, y: 0 })
  const fill = { steeping: palette.steeping, strained: palette.straining }[stage as string] ?? 'url(#sugar)'
  return jar(box, { id, contents: rect(inside, { fill }) })
}

/** One jar: its name, what it asks for, and its days as a bar along the shelf. */
export function shelfRow(shown: ShelfJar, room: RowRoom, { faces, text, format }: Pen): string {
  const { x, y, width, scale, today } = room
  const left = x + JAR.width + 18
  const due = text.shelf.due(shown, today, format)
  const isHeld = shown.danger !== null && isHolding({ kind: shown.danger })
  const isPressing = isHeld || shown.tasks.some(({ state }) => state !== 'coming')
  const dueFace = isPressing ? 'bold' : 'plain'
  const name = ownName(faces, shown, 'bold')
  const nameWidth = textWidth(faces, { text: name, face: 'bold', size: NAME_SIZE })
  const most = Math.max(width * DUE_SHARE, x + width - left - nameWidth - GAP)
  const dueWidth = Math.min(most, textWidth(faces, { text: due, face: dueFace, size: DUE_SIZE }) + 2)
  const dueX = x + width - dueWidth
  const nameRoom = dueX - left - GAP + 2
  const isOverdue = isHeld || shown.tasks.some(({ state }) => state === 'overdue')
  return [
    board({ x: 0, y: y + ROW - BOARD, width: x * 2 + width, height: BOARD }),
    icon(shown, room),
    ground({ x: left, y: y + 7, width: Math.min(nameWidth, nameRoom), height: lineHeight(NAME_SIZE) }),
    textLine(faces, { x: left, y: y + 7, width: nameRoom, size: NAME_SIZE, face: 'bold', text: name }),
    ground({ x: dueX, y: y + 10, width: due === '' ? 0 : dueWidth, height: lineHeight(DUE_SIZE) }),
    textLine(faces, {
      x: dueX,
      y: y + 10,
      width: dueWidth,
      size: DUE_SIZE,
      face: dueFace,
      align: 'end',
      text: due,
      fill: isOverdue ? palette.today : palette.ink,
    }),
    ...shown.spans.map((span) => bar(span, scale, y + ROW - BOARD - BAR - 3)),
    todayMark(room),
    readyMark(shown, scale, y + ROW - BOARD),
  ].join('')
}

/** Wall behind a text, so that the calendar's lines do not run through its letters. */
const ground = ({ x, y, width, height }: Box): string =>
  rect({ x: x - 6, y: y - 2, width: width + 12, height: height + 4 }, { fill: palette.wall })

/** Of a day at least; torn where it goes on outside the calendar. */
function bar({ phase, from, to }: ShelfSpan, scale: CalendarScale, y: number): string {
  if (to <= scale.first || from >= scale.last) return ''
  const [start, end] = [scale.xOf(from), scale.xOf(to)]
  const isTorn = { left: from < scale.first, right: to > scale.last }
  const zig = BAR / 4
  const d = [
    `M${start} ${y} H${end}`,
    isTorn.right ? `l-8 ${zig} l8 ${zig} l-8 ${zig} l8 ${zig}` : `V${y + BAR}`,
    `H${start}`,
    isTorn.left ? `l8 ${-zig} l-8 ${-zig} l8 ${-zig} l-8 ${-zig}` : '',
    'Z',
  ]
  return path(d.join(' '), {
    fill: PHASE_FILL[phase],
    stroke: palette.ink,
    'stroke-width': 2,
    'stroke-linejoin': 'round',
  })
}

/** Over the bar, with an edge of paper, because it may be as dark. */
function todayMark({ y, scale, today }: RowRoom): string {
  const x = scale.xOf(dayNumber(today) + 0.5)
  const d = `M${x} ${y + ROW - BOARD - BAR - 6} V${y + ROW - BOARD}`
  return path(d, { stroke: palette.paper, 'stroke-width': 10 }) + path(d, { stroke: palette.today, 'stroke-width': 4 })
}

const readyMark = ({ readyDay }: ShelfJar, scale: CalendarScale, foot: number): string =>
  readyDay === null || readyDay < scale.first || readyDay >= scale.last
    ? ''
    : bottle(scale.xOf(readyDay), foot, BAR + 16, { fill: palette.straining })

export const rowLacksSigns = (shown: ShelfJar, { faces }: Pen): boolean =>
  lacksSigns(faces, ownName(faces, shown, 'bold'), 'bold')
