import { describe, expect, it } from 'vitest'
import { palette } from '../../../bot/picture/draw/palette.ts'

type Colour = readonly [red: number, green: number, blue: number]
type Matrix = readonly [Colour, Colour, Colour]

/** Linear light, by the definition of sRGB (IEC 61966-2-1). */
const linear = (hex: string): Colour => {
  const channel = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
  }
  return [channel(1), channel(3), channel(5)]
}

const times = (matrix: Matrix, [a, b, c]: Colour): Colour =>
  matrix.map(([x, y, z]) => x * a + y * b + z * c) as unknown as Colour

/** Viénot, Brettel and Mollon, Color Res. Appl. 24 (1999) 243–252, from memory. */
const TO_CONES: Matrix = [
  [17.8824, 43.5161, 4.11935],
  [3.45565, 27.1554, 3.86714],
  [0.0299566, 0.184309, 1.46709],
]
const FROM_CONES: Matrix = [
  [0.0809444479, -0.130504409, 0.116721066],
  [-0.0102485335, 0.0540193266, -0.113614708],
  [-0.000365296938, -0.00412161469, 0.693511405],
]
/** The first two from the same; the third a common simplification of Brettel, Viénot and Mollon 1997, from memory. */
const SEEN_AS: Readonly<Record<string, Matrix>> = {
  'without long cones': [
    [0, 2.02344, -2.52581],
    [0, 1, 0],
    [0, 0, 1],
  ],
  'without middle cones': [
    [1, 0, 0],
    [0.494207, 0, 1.24827],
    [0, 0, 1],
  ],
  'without short cones': [
    [1, 0, 0],
    [0, 1, 0],
    [-0.395913, 0.801109, 0],
  ],
}

const clamped = (colour: Colour): Colour => colour.map((value) => Math.min(1, Math.max(0, value))) as unknown as Colour

const luminance = ([red, green, blue]: Colour): number => 0.2126 * red + 0.7152 * green + 0.0722 * blue

/** WCAG 2.2, "contrast ratio". */
const contrast = (one: Colour, other: Colour): number => {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b)
  return (high + 0.05) / (low + 0.05)
}

const EYES: readonly (readonly [string, (colour: Colour) => Colour])[] = [
  ['all cones, or a grey printer', (colour) => colour],
  ...Object.entries(SEEN_AS).map(
    ([name, matrix]) =>
      [name, (colour: Colour) => clamped(times(FROM_CONES, times(matrix, times(TO_CONES, colour))))] as const,
  ),
]

/** What lies beside each other and has to be told apart; each has a pattern of its own besides. */
const NEIGHBOURS = [
  ['alcohol', 'water'],
  ['water', 'sugar'],
  ['sugar', 'alcohol'],
  ['steeping', 'straining'],
  ['straining', 'resting'],
  ['steeping', 'resting'],
  ['steeping', 'wall'],
] as const

/** Letters and what they stand on. */
const LETTERS = [
  ['ink', 'paper'],
  ['ink', 'wall'],
  ['faint', 'paper'],
  ['faint', 'wall'],
  ['today', 'wall'],
  ['paper', 'today'],
] as const

describe.each(EYES)('colours seen with %s', (_, seen) => {
  const ratio = (one: keyof typeof palette, other: keyof typeof palette): number =>
    contrast(seen(linear(palette[one])), seen(linear(palette[other])))

  it.each(NEIGHBOURS)('tell %s from %s by lightness', (one, other) => {
    expect(ratio(one, other)).toBeGreaterThan(1.4)
  })

  it.each(LETTERS)('let %s be read on %s', (one, other) => {
    // WCAG 2.2, 1.4.3: 4.5 for text of any size.
    expect(ratio(one, other)).toBeGreaterThan(4.5)
  })
})

it('turns to cones and back', () => {
  const grey = times(FROM_CONES, times(TO_CONES, [0.3, 0.5, 0.7]))
  expect(grey[0]).toBeCloseTo(0.3, 4)
  expect(grey[1]).toBeCloseTo(0.5, 4)
  expect(grey[2]).toBeCloseTo(0.7, 4)
})
