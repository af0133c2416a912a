import type { Jar, Person } from '../person.ts'

/** A jar is never changed, only replaced: most of those that are written again were written before. */
const texts = new WeakMap<Jar, string>()

function jarText(jar: Jar): string {
  const known = texts.get(jar)
  if (known !== undefined) return known
  const text = JSON.stringify(jar)
  texts.set(jar, text)
  return text
}

/** A person as JSON, on one line. */
export const personText = ({ jars, ...others }: Person): string =>
  `${JSON.stringify(others).slice(0, -1)},"jars":[${jars.map(jarText).join(',')}]}\n`
