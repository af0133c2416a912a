import { wholePercents } from '../../../core/quantity/measured/whole-percents.ts'
import type { BatchCardData, Shares } from '../../text/messages/pictures.ts'
import { palette } from '../draw/palette.ts'
import type { Pen } from '../draw/picture.ts'
import { jar, jarInside } from '../draw/shapes.ts'
import type { Box } from '../draw/svg.ts'
import { path, rect } from '../draw/svg.ts'
import { lineHeight, textLine } from '../draw/text-lines.ts'

const PARTS = ['alcohol', 'water', 'sugar'] as const

/** Plants that are still in it: a few peels. */
const peels = ({ x, y, width, height }: Box): string =>
  [
    [0.18, 0.3, 1],
    [0.62, 0.2, -1],
    [0.4, 0.52, 1],
    [0.7, 0.66, 1],
    [0.2, 0.78, -1],
  ]
    .map(([across = 0, down = 0, turn = 1]) =>
      path(`M${x + across * width} ${y + down * height} q${width * 0.1} ${turn * width * 0.12} ${width * 0.2} 0`, {
        stroke: palette.straining,
        'stroke-width': width * 0.045,
        'stroke-linecap': 'round',
        fill: 'none',
      }),
    )
    .join('')

interface Segment {
  readonly part: keyof Shares
  readonly percent: number
  readonly top: number
  readonly height: number
}

/** Each as long as its share. */
function segmentsOf(shares: Shares, height: number): readonly Segment[] {
  const percents = wholePercents(PARTS.map((part) => shares[part]))
  let top = 0
  return PARTS.map((part, index) => {
    const segment = { part, percent: percents[index]!, top, height: shares[part] * height }
    top += segment.height
    return segment
  }).filter((segment) => segment.height > 0)
}

const LABEL = 30
const BAR = { gap: 22, width: 34 }

/** A jar with its liqueur, which is one liquid; beside it a bar of what that is made of, and the names to the right. */
export function composition(
  { made, steepedDays }: BatchCardData,
  { faces, text }: Pen,
  box: Box,
  labelWidth: number,
): string {
  const inside = jarInside({ ...box, x: 0, y: 0 })
  if (made === null) return jar(box, { id: 'card-jar', contents: '' })
  const liquid = rect({ ...inside, x: 0 }, { fill: palette.sugar })
  const plants = steepedDays === null ? peels(inside) : ''
  const bar = { x: box.x + box.width + BAR.gap, y: box.y + inside.y, width: BAR.width, height: inside.height }
  const segments = segmentsOf(made.shares, bar.height)
  const rows = spread(
    segments.map(({ top, height }) => bar.y + top + height / 2 - LABEL * 1.25),
    LABEL * 2.6,
    box.y + box.height - LABEL * 2.5,
  )
  const parts = segments.map(({ part, percent, top, height }, index) => {
    const [edge, middle, y] = [bar.x + bar.width, bar.y + top + height / 2, rows[index]!]
    const at = { x: edge + 40, width: labelWidth - BAR.gap - BAR.width - 40, size: LABEL }
    return [
      rect({ ...bar, y: bar.y + top, height }, { fill: `url(#${part})`, stroke: palette.ink, 'stroke-width': 2 }),
      path(`M${edge} ${middle} L${edge + 30} ${y + LABEL * 1.25}`, {
        stroke: palette.ink,
        'stroke-width': 2.5,
        fill: 'none',
      }),
      textLine(faces, { ...at, y, face: 'bold', text: text.card.share(percent) }),
      textLine(faces, { ...at, y: y + lineHeight(LABEL) - 4, face: 'plain', text: text.card.part[part] }),
    ].join('')
  })
  return jar(box, { id: 'card-jar', contents: liquid + plants }) + parts.join('')
}

/** As near to where they are wanted as a least distance between them allows, none below the lowest. */
function spread(wanted: readonly number[], apart: number, lowest: number): readonly number[] {
  const placed: number[] = []
  for (const [index, y] of wanted.entries()) {
    const latest = lowest - apart * (wanted.length - 1 - index)
    placed.push(Math.min(latest, index === 0 ? y : Math.max(y, placed[index - 1]! + apart)))
  }
  return placed
}
