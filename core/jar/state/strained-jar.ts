import { DomainError } from '../../domain-error.ts'
import type { MaterialId } from '../../quantity/materials.ts'
import type { Portion } from '../../recipe/portion.ts'
import type { SyrupTargets } from '../../recipe/solve/syrup-wish.ts'
import type { Targets } from '../../recipe/targets.ts'
import { asPortion, type Contents, contentsOf } from './contents.ts'
import { endedAs, type JarState, jarStateOf, type KeptJar } from './jar-state.ts'

/** What a strained jar holds, and what it was planned to become. */
export interface StrainedJar {
  readonly jar: KeptJar
  readonly story: JarState
  readonly name: string
  readonly infusion: Portion
  readonly contents: Contents
  readonly targets: Targets | null
  /** What it was to be sweetened with; undefined: white sugar. */
  readonly sweetener: MaterialId | undefined
  /** What was to go in for the water; undefined: water. */
  readonly filler: MaterialId | undefined
}

/** Throws `cannot_follow` where it still steeps, or is done. */
export function strainedJar(jar: KeptJar): StrainedJar {
  const story = jarStateOf(jar.entries)!
  const { name, strained, ended, started } = story
  if (strained === null || ended !== null) {
    throw new DomainError('wrong_stage', 'cannot_follow', {
      jar: name,
      did: 'sweetened',
      stage: ended === null ? 'steeping' : endedAs(ended),
      first: ended === null ? 'strained' : null,
      day: ended?.day ?? null,
    })
  }
  const contents = contentsOf(story)
  return {
    jar,
    story,
    name,
    infusion: asPortion(contents),
    contents,
    targets: started.targets,
    sweetener: started.sweetener,
    filler: started.filler,
  }
}

/** Throws `jar_too_weak`, with what reckons with spirit, where a jar is to become stronger than it is. */
export function expectStrongEnough({ name, contents }: StrainedJar, { abvPercent, sugarGPerL }: SyrupTargets): void {
  const { outcome } = contents
  if (abvPercent === undefined || abvPercent <= outcome.abvPercent.value) return
  throw new DomainError('unreachable', 'jar_too_weak', {
    jar: name,
    volumeMl: outcome.volumeMl.value,
    abvPercent: outcome.abvPercent.value,
    sugarGPerL: outcome.sugarGPerL.value,
    toAbvPercent: abvPercent,
    toSugarGPerL: sugarGPerL ?? null,
  })
}
