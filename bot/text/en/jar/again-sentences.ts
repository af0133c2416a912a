import type { Targets } from '../../../../core/recipe/targets.ts'
import type { Format } from '../../format.ts'

interface AgainAs {
  readonly name: string
  readonly factor: number
  readonly isOther: boolean
  /** Takes it back. */
  readonly line: string
  /** What the new one is to become. */
  readonly targets: Targets | null
}

/** What `/again` adds to the reply about the new jar. */
export const againSentences = {
  notes: {
    again_as: ({ name, factor, isOther, line, targets }: AgainAs, format: Format) => {
      const amounts = isOther
        ? `As ${name} was, times ${format.plain(factor, 2)}: by the alcohol in this spirit, so that a glass holds as much of the plants`
        : `As ${name} was, in the same amounts`
      const aim =
        targets === null
          ? ''
          : ` It is to become ${format.plain(targets.abvPercent, 1)} % vol with ${format.plain(targets.sugarGPerL, 0)} g/L of sugar.`
      return `${amounts}.${aim} ${line} takes it back.`
    },
  },
}
