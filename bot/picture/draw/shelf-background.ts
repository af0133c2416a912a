import { palette } from './palette.ts'
import { path, rect } from './svg.ts'

const PLANK = 125

/** The larder's back wall: planks. */
export function wall(width: number, height: number): string {
  const grooves = Array.from(
    { length: Math.ceil(width / PLANK) - 1 },
    (_, index) => `M${(index + 1) * PLANK} 0 V${height}`,
  )
  return (
    rect({ x: 0, y: 0, width, height }, { fill: palette.wall }) +
    path(grooves.join(' '), { stroke: palette.groove, 'stroke-width': 3 })
  )
}
