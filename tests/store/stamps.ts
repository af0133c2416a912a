import { crc32 } from 'node:zlib'

/** The text with its check made to fit again, by a rule of its own: eight digits over all that follows them and the comma. */
const checked = (text: string): string => {
  const rest = text.slice('{"check":"01234567",'.length)
  return `{"check":"${crc32(rest).toString(16).padStart(8, '0')}",${rest}`
}

/** Whether a file of a person has a stamp, and its check fits. */
export const stampHolds = (text: string): boolean => text === checked(text) && /^.{20}"due":\{"rules":"/.test(text)

/** A file whose stamp says another instant than its jars would; only who believes the stamp finds it. */
export function forged(text: string, nextMs: number | null): string {
  if (!stampHolds(text)) throw new Error('no stamp to forge')
  return checked(text.replace(/"nextMs":[^,]+/, `"nextMs":${nextMs}`))
}
