import { palette } from './palette.ts'
import { element, path, rect } from './svg.ts'

const tile = (id: string, side: number, fill: string, marks: string): string =>
  element(
    'pattern',
    { id, width: side, height: side, patternUnits: 'userSpaceOnUse' },
    rect({ x: 0, y: 0, width: side, height: side }, { fill }) + marks,
  )

const dots = (fill: string, radius: number, ...at: readonly (readonly [number, number])[]): string =>
  at.map(([cx, cy]) => element('circle', { cx, cy, r: radius, fill })).join('')

const slashes = (side: number, stroke: string, width: number): string =>
  path(
    `M${-side / 4} ${side / 4} L${side / 4} ${-side / 4} M0 ${side} L${side} 0 M${side * 0.75} ${side * 1.25} L${side * 1.25} ${side * 0.75}`,
    {
      stroke,
      'stroke-width': width,
    },
  )

/** Told apart on a grey printer too: slashes, waves and crumbs for what a liquid is made of; slashes and dots for days. */
export const patterns = element(
  'defs',
  {},
  [
    tile('alcohol', 24, palette.alcohol, slashes(24, '#4f8296', 4)),
    tile(
      'water',
      40,
      palette.water,
      path('M0 14 q10 -9 20 0 t20 0 M0 34 q10 -9 20 0 t20 0', { stroke: '#8fb9c2', 'stroke-width': 3, fill: 'none' }),
    ),
    tile('sugar', 22, palette.sugar, dots('#8a5a0c', 3.4, [5, 5], [16, 16])),
    tile('straining', 16, palette.straining, slashes(16, palette.steeping, 5)),
    tile('resting', 14, palette.resting, dots('#a8813a', 2.2, [4, 4], [11, 11])),
  ].join(''),
)
