import { ethanolG, type Liquid, liquidFrom, part } from '../liquid/liquid.ts'

/** What a maker wants; exact. */
export interface Targets {
  readonly abvPercent: number
  readonly sugarGPerL: number
}

/** The liquid of this strength and sweetness that holds this much ethanol: there is one, whatever was added to make it. */
export function liquidHolding(ethanolWantedG: number, targets: Targets): Liquid {
  const litre = liquidFrom({ volumeMl: 1000, ...targets })
  return part(litre, ethanolWantedG / ethanolG(litre))
}
