import { expect, it } from 'vitest'
import type { JarEntry } from '../../../core/jar/entry/entry.ts'
import { pourApart } from '../../../core/jar/pour/pour-apart.ts'
import { pourTogether } from '../../../core/jar/pour/pour-together.ts'
import { sweeteningsIn } from '../../../core/jar/state/batch-facts.ts'
import { jarStateOf } from '../../../core/jar/state/jar-state.ts'
import { exactly } from '../../../core/quantity/measured/measured.ts'
import { entriesOf, META, on, started, strained, sweetened } from './jars.ts'

const NOW = on(30)

const massOf = (entries: readonly JarEntry[]) =>
  sweeteningsIn(jarStateOf(entries)!).map(({ material, massG }) => [material, massG.value])

it('brings what sweetens along, of a parted jar what was left', () => {
  const honey = [{ material: 'honey', massG: exactly(500) }] as const
  const target = { id: 'lemon', entries: entriesOf(started(), strained(), sweetened(900, 450)) }
  const source = {
    id: 'honey',
    entries: entriesOf(started(), strained(), { kind: 'sweetened', waterG: exactly(900), sweetenings: honey }),
  }
  const half = pourApart(source, { share: exactly(0.5), into: 'half' }, NOW, META)
  const poured = pourTogether({ target, source: half.rest, share: exactly(0.5), into: null }, NOW, META)
  expect(massOf(poured.target.entries)).toEqual([
    ['white_sugar', 450],
    ['honey', 125],
  ])
  expect(massOf(poured.source.entries)).toEqual([['honey', 125]])
  expect(massOf(half.portion.entries)).toEqual([['honey', 250]])
})
