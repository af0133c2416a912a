import { DomainError } from '../../../../core/domain-error.ts'
import { asPortion, type Contents, contentsOf } from '../../../../core/jar/state/contents.ts'
import { type Story, storyOf } from '../../../../core/jar/state/jar-state.ts'
import type { Portion } from '../../../../core/recipe/portion.ts'
import type { Named } from '../../../../core/recipe/solve/syrup-wish.ts'
import type { Targets } from '../../../../core/recipe/targets.ts'
import type { Jar } from '../../../../store/person.ts'

/** What a strained jar holds, and what it was planned to become. */
export interface StrainedJar {
  readonly jar: Jar
  readonly story: Story
  readonly name: string
  readonly infusion: Portion
  readonly contents: Contents
  readonly targets: Targets | null
}

/** Throws `cannot_follow` where it still steeps, or is done. */
export function strainedJar(jar: Jar): StrainedJar {
  const story = storyOf(jar.entries)!
  const { name, strained, ended, started } = story
  if (strained === null || ended !== null) {
    throw new DomainError('wrong_stage', 'cannot_follow', {
      jar: name,
      did: 'sweetened',
      stage: ended?.kind ?? 'steeping',
      first: ended === null ? 'strained' : null,
      day: ended?.day ?? null,
    })
  }
  const contents = contentsOf(story)
  return { jar, story, name, infusion: asPortion(contents), contents, targets: started.plan.targets }
}

/** Throws `jar_too_weak`, with what reckons with spirit, where a jar is to become stronger than it is. */
export function expectStrongEnough({ name, contents }: StrainedJar, { abvPercent, sugarGPerL }: Named): void {
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
