import { dayNumber } from '../../../core/quantity/time/day-number.ts'
import type { BatchCardData, Milestone, MilestoneKind } from '../../text/messages/pictures.ts'
import { palette } from '../draw/palette.ts'
import type { Pen } from '../draw/picture.ts'
import { board, bottle, jar, jarInside } from '../draw/shapes.ts'
import type { Box } from '../draw/svg.ts'
import { path, rect } from '../draw/svg.ts'
import { lineHeight, textLine } from '../draw/text-lines.ts'

const ICON = 96
const JAR_WIDTH = 74
const BOARD = 26
const TAG = 92
const SIZE = 27

export const TIME_LINE_HEIGHT = ICON + BOARD + TAG + 22

const FILLED: Readonly<Record<Exclude<MilestoneKind, 'ready'>, string>> = {
  started: palette.steeping,
  strained: palette.straining,
  sweetened: palette.sugar,
}

/** What stands on the shelf for a day: the jar in its state, at last a bottle. What is still to come is empty. */
function icon({ kind, isDone }: Milestone, middle: number, foot: number): string {
  const stroke = isDone ? palette.glass : palette.faint
  if (kind === 'ready') {
    return bottle(middle, foot, ICON + 6, { fill: isDone ? palette.straining : palette.glassFill, stroke })
  }
  const box = { x: middle - JAR_WIDTH / 2, y: foot - ICON, width: JAR_WIDTH, height: ICON }
  const inside = jarInside({ ...box, x: 0, y: 0 })
  const fill = kind === 'sweetened' ? 'url(#sugar)' : FILLED[kind]
  const liquid = isDone ? rect(inside, { fill }) : ''
  const [left, low] = [inside.width * 0.2, inside.y + inside.height * 0.45]
  const fruit =
    isDone && kind === 'started'
      ? path(`M${left} ${low} q10 12 20 0 M${left + 24} ${low + 16} q10 -12 20 0`, {
          stroke: palette.straining,
          'stroke-width': 7,
          'stroke-linecap': 'round',
          fill: 'none',
        })
      : ''
  return jar(box, { id: `day-${kind}`, contents: liquid + fruit, stroke })
}

/** A shelf with what became of the batch standing on it, and a paper tag under each with its day. */
export function timeLine({ milestones, today }: BatchCardData, pen: Pen, { x, y, width }: Omit<Box, 'height'>): string {
  const { faces, text, format } = pen
  const step = width / milestones.length
  const foot = y + ICON
  const tagTop = foot + BOARD + 14
  const things = milestones.map((milestone, index) => {
    const { kind, isDone } = milestone
    const middle = x + step * (index + 0.5)
    const tag = { x: x + step * index + 8, y: tagTop, width: step - 16, height: TAG }
    const line = { x: tag.x + 8, width: tag.width - 16, size: SIZE, align: 'middle' } as const
    const word = isDone ? text.card.milestone[kind] : text.card.milestonePlanned[kind]
    return [
      icon(milestone, middle, foot),
      path(`M${middle} ${foot + BOARD - 4} V${tagTop}`, { stroke: palette.boardDark, 'stroke-width': 3 }),
      rect(tag, {
        fill: palette.paper,
        rx: 6,
        stroke: palette.boardDark,
        'stroke-width': 2.5,
        ...(isDone ? {} : { 'stroke-dasharray': '9 7' }),
      }),
      textLine(faces, { ...line, y: tagTop + 9, face: 'bold', text: word, fill: isDone ? palette.ink : palette.faint }),
      textLine(faces, {
        ...line,
        y: tagTop + 9 + lineHeight(SIZE),
        face: 'plain',
        text: text.card.milestoneDay(milestone, today, format),
        fill: isDone ? palette.ink : palette.faint,
      }),
    ].join('')
  })
  const gaps = milestones.slice(1).map((milestone, index) => {
    const days = daysFrom(milestones[index]!, milestone)
    const gapStep = { x: x + step * (index + 0.5) + 46, width: step - 92, size: 26 }
    return days === null
      ? ''
      : textLine(faces, {
          ...gapStep,
          y: foot - 42,
          face: 'plain',
          align: 'middle',
          text: text.card.between(days),
          fill: palette.faint,
        })
  })
  return [board({ x: x - 20, y: foot, width: width + 40, height: BOARD }), ...things, ...gaps].join('')
}

const daysFrom = (one: Milestone, other: Milestone): number | null =>
  one.day === null || other.day === null ? null : Math.max(0, dayNumber(other.day) - dayNumber(one.day))
