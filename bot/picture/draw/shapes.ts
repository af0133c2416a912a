import { palette } from './palette.ts'
import { type Box, element, moved, path, rect } from './svg.ts'

/** Rounded at the shoulders as preserving jars are; within its box, the lid left out. */
const jarBody = (width: number, height: number): string => {
  const [round, neck] = [width * 0.16, width * 0.1]
  return [
    `M${neck} 0`,
    `H${width - neck}`,
    `C${width - neck} ${round * 0.6} ${width} ${round * 0.5} ${width} ${round * 1.4}`,
    `V${height - round}`,
    `Q${width} ${height} ${width - round} ${height}`,
    `H${round}`,
    `Q0 ${height} 0 ${height - round}`,
    `V${round * 1.4}`,
    `C0 ${round * 0.5} ${neck} ${round * 0.6} ${neck} 0`,
    'Z',
  ].join(' ')
}

/** How much of a jar of this width its lid takes. */
const lidHeight = (width: number): number => width * 0.2

/** Where what is in a jar begins, so that its layers are in proportion to what they stand for. */
export const jarInside = ({ x, y, width, height }: Box): Box => {
  const top = lidHeight(width) + width * 0.24
  return { x, y: y + top, width, height: height - top }
}

interface JarLook {
  readonly id: string
  /** Drawn behind the glass, in the coordinates of the box. */
  readonly contents: string
  readonly stroke?: string
  readonly lid?: string
}

/** A preserving jar that fills its box. */
export function jar(box: Box, { id, contents, stroke = palette.glass, lid = palette.cork }: JarLook): string {
  const { x, y, width, height } = box
  const lidAt = lidHeight(width)
  const body = jarBody(width, height - lidAt)
  const line = Math.max(2.5, width * 0.018)
  const shine = path(`M${width * 0.13} ${height * 0.26} V${height * 0.62}`, {
    stroke: '#ffffff',
    'stroke-opacity': 0.55,
    'stroke-width': width * 0.035,
    'stroke-linecap': 'round',
    fill: 'none',
  })
  return moved(
    x,
    y,
    [
      element('clipPath', { id }, path(body, { transform: `translate(0 ${lidAt})` })),
      moved(0, lidAt, path(body, { fill: palette.glassFill })),
      element('g', { 'clip-path': `url(#${id})` }, contents + shine),
      moved(0, lidAt, path(body, { fill: 'none', stroke, 'stroke-width': line })),
      rect(
        { x: width * 0.06, y: 0, width: width * 0.88, height: lidAt * 0.86 },
        { rx: lidAt * 0.25, fill: lid, stroke, 'stroke-width': line },
      ),
      path(`M${width * 0.06} ${lidAt * 0.52} H${width * 0.94}`, { stroke, 'stroke-width': line * 0.6 }),
    ].join(''),
  )
}

/** A bottle of 100 by 240, standing on the bottom of it. */
const BOTTLE = 'M38 30 V84 C38 106 8 108 8 140 V224 Q8 238 22 238 H78 Q92 238 92 224 V140 C92 108 62 106 62 84 V30 Z'

interface BottleLook {
  readonly fill: string
  readonly stroke?: string
}

/** A corked bottle, `height` tall, its foot in the middle of `x`. */
export const bottle = (x: number, y: number, height: number, { fill, stroke = palette.glass }: BottleLook): string =>
  moved(
    x - (50 * height) / 240,
    y - height,
    [
      rect({ x: 38, y: 4, width: 24, height: 32 }, { rx: 5, fill: palette.cork, stroke, 'stroke-width': 6 }),
      path(BOTTLE, { fill, stroke, 'stroke-width': 7 }),
      rect(
        { x: 20, y: 152, width: 60, height: 58 },
        { rx: 4, fill: palette.paper, stroke: palette.rule, 'stroke-width': 4 },
      ),
    ].join(''),
    height / 240,
  )

/** A five-pointed star around a middle. */
export function star(x: number, y: number, radius: number, isFull: boolean): string {
  const points = Array.from({ length: 10 }, (_, index) => {
    const [angle, length] = [(Math.PI * index) / 5, index % 2 === 0 ? radius : radius * 0.45]
    return `${(x + length * Math.sin(angle)).toFixed(2)} ${(y - length * Math.cos(angle)).toFixed(2)}`
  })
  const fill = isFull ? palette.ink : 'none'
  return path(`M${points.join('L')}Z`, {
    fill,
    stroke: palette.ink,
    'stroke-width': Math.max(2, radius * 0.12),
    'stroke-linejoin': 'round',
  })
}

/** A shelf board with its grain, front edge and shadow. */
export function board({ x, y, width, height }: Box): string {
  const grain = [0.34, 0.56, 0.78].map((at, index) =>
    path(
      `M${x} ${y + height * at} q${width * 0.25} ${(index - 1) * height * 0.12} ${width * 0.5} 0 t${width * 0.5} 0`,
      { stroke: palette.boardDark, 'stroke-opacity': 0.35, 'stroke-width': 1.5, fill: 'none' },
    ),
  )
  return [
    rect({ x, y: y + height, width, height: height * 0.35 }, { fill: palette.boardDark, 'fill-opacity': 0.18 }),
    rect({ x, y, width, height }, { fill: palette.board }),
    rect({ x, y, width, height: height * 0.2 }, { fill: palette.boardLight }),
    ...grain,
    rect({ x, y: y + height - 3, width, height: 3 }, { fill: palette.boardDark }),
  ].join('')
}

/** A paper label with clipped corners and a fine second line. */
export function paperLabel(box: Box, cut = 22): string {
  return [
    clipped({ ...box, x: box.x + 4, y: box.y + 5 }, cut, { fill: palette.boardDark, 'fill-opacity': 0.16 }),
    clipped(box, cut, { fill: palette.paper, stroke: palette.boardDark, 'stroke-width': 3 }),
    clipped(inset(box, 10), cut - 4, { fill: 'none', stroke: palette.rule, 'stroke-width': 2 }),
  ].join('')
}

export const inset = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x + by,
  y: y + by,
  width: width - 2 * by,
  height: height - 2 * by,
})

/** A box whose corners are hollowed, as on an old label. */
export const clipped = (
  { x, y, width, height }: Box,
  cut: number,
  attributes: { readonly [name: string]: string | number },
): string => {
  const arc = (dx: number, dy: number): string => `a${cut} ${cut} 0 0 0 ${dx} ${dy}`
  const d = [
    `M${x + cut} ${y}`,
    `H${x + width - cut}`,
    arc(cut, cut),
    `V${y + height - cut}`,
    arc(-cut, cut),
    `H${x + cut}`,
    arc(-cut, -cut),
    `V${y + cut}`,
    arc(cut, -cut),
    'Z',
  ].join(' ')
  return path(d, attributes)
}
