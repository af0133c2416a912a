import type { BatchCardData, Shares } from '../../text/messages/pictures.ts'
import { palette } from '../draw/palette.ts'
import type { Pen } from '../draw/picture.ts'
import { jar, jarInside } from '../draw/shapes.ts'
import type { Box } from '../draw/svg.ts'
import { path, rect } from '../draw/svg.ts'
import { lineHeight, textLine } from '../draw/text-lines.ts'

/** Lightest at the top, as it would float. */
const LAYERS = ['alcohol', 'water', 'sugar'] as const

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

interface Layer {
  readonly part: keyof Shares
  readonly share: number
  readonly top: number
  readonly height: number
}

function layersIn(shares: Shares, { height }: Box): readonly Layer[] {
  let top = 0
  return LAYERS.map((part) => {
    const layer = { part, share: shares[part], top, height: shares[part] * height }
    top += layer.height
    return layer
  })
}

const LABEL = 30

/** A jar filled with what the liquid is made of, each layer as high as its share, and their names to the right of it. */
export function composition(
  { made, steepedDays }: BatchCardData,
  { faces, text, format }: Pen,
  box: Box,
  labelWidth: number,
): string {
  const inside = jarInside({ ...box, x: 0, y: 0 })
  if (made === null) return jar(box, { id: 'card-jar', contents: '' })
  const layers = layersIn(made.shares, inside).filter(({ height }) => height > 0)
  const liquid = layers.map(({ part, top, height }) =>
    rect(
      { x: 0, y: inside.y + top, width: inside.width, height },
      { fill: `url(#${part})`, stroke: palette.ink, 'stroke-width': 2 },
    ),
  )
  const plants = steepedDays === null ? peels(inside) : ''
  const rows = spread(
    layers.map(({ top, height }) => box.y + inside.y + top + height / 2 - LABEL * 1.25),
    LABEL * 2.6,
    box.y + box.height - LABEL * 2.5,
  )
  const labels = layers.map(({ part, share, top, height }, index) => {
    const [edge, middle, y] = [box.x + box.width, box.y + inside.y + top + height / 2, rows[index]!]
    const at = { x: edge + 44, width: labelWidth - 44, size: LABEL }
    return [
      path(`M${edge - 10} ${middle} L${edge + 34} ${y + LABEL * 1.25}`, {
        stroke: palette.ink,
        'stroke-width': 2.5,
        fill: 'none',
      }),
      textLine(faces, { ...at, y, face: 'bold', text: text.card.share(share, format) }),
      textLine(faces, { ...at, y: y + lineHeight(LABEL) - 4, face: 'plain', text: text.card.part[part] }),
    ].join('')
  })
  return jar(box, { id: 'card-jar', contents: liquid.join('') + plants }) + labels.join('')
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
