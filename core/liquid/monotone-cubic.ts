export type Point = readonly [x: number, y: number]

/**
 * A smooth curve through every point of a table that rises, or falls, wherever the table does: no overshoot.
 * Beyond its ends it is held at the first and the last value; whoever wants more extends it and says so.
 * Source: Fritsch and Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304 (slopes as in PCHIP; three-point ends).
 */
export const monotoneCubic = (points: readonly Point[]): ((x: number) => number) => {
  const last = points.length - 1
  const width = (i: number): number => points[i + 1]![0] - points[i]![0]
  const chord = (i: number): number => (points[i + 1]![1] - points[i]![1]) / width(i)

  const inner = (i: number): number => {
    if (chord(i - 1) * chord(i) <= 0) return 0
    const before = 2 * width(i) + width(i - 1)
    const after = width(i) + 2 * width(i - 1)
    return (before + after) / (before / chord(i - 1) + after / chord(i))
  }
  const end = (i: number, next: number): number => {
    const slope = ((2 * width(i) + width(next)) * chord(i) - width(i) * chord(next)) / (width(i) + width(next))
    if (slope * chord(i) <= 0) return 0
    return chord(i) * chord(next) < 0 && Math.abs(slope) > 3 * Math.abs(chord(i)) ? 3 * chord(i) : slope
  }
  const slopes = points.map((_, i) => (i === 0 ? end(0, 1) : i === last ? end(last - 1, last - 2) : inner(i)))

  return (x) => {
    if (x <= points[0]![0]) return points[0]![1]
    if (x >= points[last]![0]) return points[last]![1]
    let i = 0
    while (points[i + 1]![0] < x) i++
    const h = width(i)
    const s = (x - points[i]![0]) / h
    const r = 1 - s
    return (
      points[i]![1] * (1 + 2 * s) * r * r +
      points[i + 1]![1] * (3 - 2 * s) * s * s +
      h * s * r * (slopes[i]! * r - slopes[i + 1]! * s)
    )
  }
}
