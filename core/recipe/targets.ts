import { ethanolG, type Liquid, liquidFrom, part, volumeMl } from '../liquid/liquid.ts'

/** What a maker wants; exact. */
export interface Targets {
  readonly abvPercent: number
  readonly sugarGPerL: number
}

/** Less of a change nobody tastes. Common practice, no source. */
export const NOTICED: Targets = { abvPercent: 0.75, sugarGPerL: 5 }

/** The liquid of this strength and sweetness that holds this much ethanol: there is one, whatever was added to make it. */
export function liquidHolding(ethanolWantedG: number, targets: Targets): Liquid {
  const litre = liquidFrom({ volumeMl: 1000, ...targets })
  return part(litre, ethanolWantedG / ethanolG(litre))
}

/**
 * The finished drink, mL, that all of a jar would make, had the plants kept none of it: a litre of it holds as much of the
 * plants as a litre of the drink that is really made.
 */
export const allFinishedMl = (jar: Liquid, targets: Targets): number => volumeMl(liquidHolding(ethanolG(jar), targets))
