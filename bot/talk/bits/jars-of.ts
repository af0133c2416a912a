import type { Bit, TalkJar } from './bit.ts'

const named = (name: string): string => name.trim().toLowerCase()

export const isOver = ({ stage }: TalkJar): boolean => stage === 'emptied' || stage === 'discarded'

/** Those that are neither emptied nor thrown away. */
export const runningAmong = (jars: readonly TalkJar[]): readonly TalkJar[] => jars.filter((jar) => !isOver(jar))

/** Those that wait for their syrup, else those that it is still to come for; empty where a jar is past it, or none is there. */
export function waitingForSyrup(jars: readonly TalkJar[]): readonly TalkJar[] {
  const strained = jars.filter(({ stage }) => stage === 'strained')
  return strained.length > 0 ? strained : jars.filter(({ stage }) => stage === 'steeping')
}

/** The jar that an option means: a jar is called by its name, or by its id behind a hash. */
export const jarCalled = (called: string | undefined, jars: readonly TalkJar[]): TalkJar | undefined =>
  called === undefined ? undefined : jars.find(({ id, name }) => `#${id}` === called || named(name) === named(called))

/** Whose name is this plant's, or which it is in. */
export function jarsOf(bit: Bit, jars: readonly TalkJar[]): readonly TalkJar[] {
  if (bit.kind === 'jar') return jars.filter(({ id }) => bit.ids?.includes(id) === true)
  const text = named(bit.text)
  const exact = jars.filter(({ name }) => named(name) === text)
  if (exact.length > 0) return exact
  const whole = jars.filter(({ name }) => `${named(name)}s` === text || named(name) === `${text}s`)
  if (whole.length > 0) return whole
  const begun = jars.filter(({ name }) => named(name).startsWith(`${text} `) || named(name).split(/\s+/).includes(text))
  if (begun.length > 0) return begun
  return jars.filter(({ plants }) => plants.some((id) => bit.ids?.includes(id) === true))
}

/** A jar that is named, or a plant without an amount. */
const isName = ({ kind, role, with: place }: Bit): boolean =>
  kind === 'jar' || (kind === 'plant' && role !== 'left_out' && place === undefined)

/** Jars that are named, each once, with the bit that names it. */
export function jarsNamed(bits: readonly Bit[], jars: readonly TalkJar[]): readonly { jar: TalkJar; bit: Bit }[] {
  const running = runningAmong(jars)
  const found: { jar: TalkJar; bit: Bit }[] = []
  for (const bit of bits.filter(isName)) {
    const [jar, another] = jarsOf(bit, running)
    if (jar !== undefined && another === undefined && !found.some((each) => each.jar === jar)) found.push({ jar, bit })
  }
  return found
}
