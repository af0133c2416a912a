import { unlessRefused } from '../../domain-error.ts'

/** A text that two values share where they hold the same, in whatever order their parts were written. */
const keyOf = (value: unknown): string =>
  JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === 'object' && inner !== null && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).toSorted(([one], [other]) => (one < other ? -1 : 1)))
      : inner,
  )

/** The first of some texts that is read as a value; null where none is. */
export function readAsOrNull<Value>(
  value: Value,
  texts: Iterable<string>,
  read: (text: string) => Value,
): string | null {
  const wanted = keyOf(value)
  for (const text of texts) {
    if (unlessRefused(() => keyOf(read(text))) === wanted) return text
  }
  return null
}

/** As `readAsOrNull`: what was written can always be typed. Throws a RangeError where no text is, which is a fault of ours. */
export function firstReadAs<Value>(value: Value, texts: Iterable<string>, read: (text: string) => Value): string {
  const text = readAsOrNull(value, texts, read)
  if (text === null) throw new RangeError('no text is read as this value')
  return text
}
