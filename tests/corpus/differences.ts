/** Numbers that differ by less, of the greater, are the same. */
const SAME_RELATIVE = 1e-12

export interface Difference {
  /** Such as `data.notes[2].key`. */
  readonly path: string
  readonly before: unknown
  readonly after: unknown
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null

const areSameNumbers = (one: number, other: number): boolean =>
  one === other || Math.abs(one - other) <= SAME_RELATIVE * Math.max(Math.abs(one), Math.abs(other))

/** Where two values of JSON differ, numbers within 1e-12 of each other being the same. */
export const differences = (before: unknown, after: unknown, path = ''): readonly Difference[] => {
  if (typeof before === 'number' && typeof after === 'number' && areSameNumbers(before, after)) return []
  if (!isObject(before) || !isObject(after) || Array.isArray(before) !== Array.isArray(after)) {
    return before === after ? [] : [{ path, before, after }]
  }
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])]
  return keys.flatMap((key) =>
    differences(before[key], after[key], Array.isArray(before) ? `${path}[${key}]` : `${path}.${key}`),
  )
}

/** Lines of one text that the other has not, marked `-` and `+`, with the line before each run of them. */
export const lineDifferences = (before: string, after: string): readonly string[] => {
  const [one, other] = [before.split('\n'), after.split('\n')]
  const common = one.map(() => new Uint16Array(other.length + 1))
  common.push(new Uint16Array(other.length + 1))
  for (let at = one.length - 1; at >= 0; at--) {
    for (let to = other.length - 1; to >= 0; to--) {
      common[at]![to] =
        one[at] === other[to] ? common[at + 1]![to + 1]! + 1 : Math.max(common[at + 1]![to]!, common[at]![to + 1]!)
    }
  }
  const told: string[] = []
  for (let [at, to] = [0, 0]; at < one.length || to < other.length; ) {
    if (at < one.length && to < other.length && one[at] === other[to]) {
      at++
      to++
    } else if (to >= other.length || (at < one.length && common[at + 1]![to]! >= common[at]![to + 1]!)) {
      told.push(`- ${one[at++]}`)
    } else told.push(`+ ${other[to++]}`)
  }
  return told
}
