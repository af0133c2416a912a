import { isRefused } from '../../../core/domain-error.ts'
import { findJar } from '../../../core/jar/state/find-jar.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { lazily } from '../../../core/once.ts'
import type { Jar } from '../../../store/person.ts'
import { quoted } from '../../calls/write-line.ts'

/** Writes lines with jars by their ids, as buttons keep them, for somebody who reads or types them. */
export type JarNames = (text: string) => string

export const noJarNames: JarNames = (text) => text

const ID = /(?<![\p{L}\p{N}])#([a-z\d]+)(?![\p{L}\p{N}])/giu

/** What ties a kept line to its jar as it was: whoever types one sees how it is. */
const AFTER = / after:\d+(?!\S)/g

/** A jar that its name finds goes by its name. */
export function jarNames(jars: readonly Jar[]): JarNames {
  const names = lazily(() => {
    const named = jars.flatMap((jar): readonly [string, string][] => {
      const name = jarStateOf(jar.entries)?.name
      const isFound = name !== undefined && !isRefused(() => findJar(name, jars)) && findJar(name, jars).id === jar.id
      return isFound ? [[jar.id.toLowerCase(), name]] : []
    })
    return new Map(named)
  })
  return (text) => {
    if (!text.includes('#')) return text
    let isNamed = false
    const written = text.replace(ID, (whole, id: string) => {
      const name = names().get(id.toLowerCase())
      isNamed ||= name !== undefined
      return name === undefined ? whole : quoted(name)
    })
    return isNamed ? written.replace(AFTER, '') : text
  }
}
