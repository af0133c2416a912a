import { expect, it } from 'vitest'
import type { JarEntry } from '../../core/jar/entry/entry.ts'
import { NOBODY } from '../../store/person.ts'
import { KNOWN_VERSION, readStored } from '../../store/schema/read-stored.ts'
import { entriesOf, ml, started, strained, strength } from '../core/jar/jars.ts'
import { spirit } from '../core/recipe-plan/wishes.ts'

const kindOf = (entries: readonly JarEntry[]): string =>
  readStored(
    JSON.stringify({
      ...NOBODY,
      version: KNOWN_VERSION,
      jars: [{ id: 'aaaa1', entries, told: [], cautioned: [] }],
    }),
  ).kind

/** A jar strained with a reading, changed where no kitchen would. */
const changed = (change: (text: string) => string): string =>
  kindOf(
    JSON.parse(
      change(
        JSON.stringify(
          entriesOf(
            started({ spirits: [spirit(1000, 95)] }),
            strained({ measured: ml(900, 10, 21), strength: strength(61, 22) }),
          ),
        ),
      ),
    ) as readonly JarEntry[],
  )

// As the grammar of quantities accepts them: 0.1 to 100 % vol, -30 to 100 °C; 1,300 g/L and more is no liquid.
it.each([
  ['a strength', '"abvPercent":{"value":95', '"abvPercent":{"value":', 0, 100],
  ['a strength that was read', '"abvPercent":{"value":61', '"abvPercent":{"value":', 0, 100],
  ['a sweetness', '"sugarGPerL":{"value":0', '"sugarGPerL":{"value":', 0, 1300],
  ['a temperature', '"atC":21', '"atC":', -30, 100],
  ['a temperature of a reading', '"abvAtC":22', '"abvAtC":', -30, 100],
])('a file that holds %s beyond what can be typed is not one of ours', (_, was, key, least, most) => {
  const at = (value: number) => changed((text) => text.replace(was, `${key}${value}`))
  expect(changed((text) => text)).toBe('person')
  expect([least, most].map(at)).toEqual(['person', 'person'])
  expect([least - 1, most + 1].map(at)).toEqual(['unreadable', 'unreadable'])
})
