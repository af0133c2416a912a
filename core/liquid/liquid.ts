import { DomainError } from '../domain-error.ts'
import { forLast } from '../once.ts'
import {
  abvFromMassFraction,
  checkedAbv,
  ETHANOL_DENSITY_20C_G_PER_ML,
  ethanolWaterDensityKgPerM3,
  massFractionAt20,
  R22_HIGH_C,
  R22_LOW_C,
} from './ethanol-water.ts'
import { apparentVolumeMlPerG, roomMlPerGAt20, sweetnessGPerL } from './sucrose-water.ts'

/** Grams of each, because masses add and volumes do not. Only core/liquid reads the fields. */
export interface Liquid {
  readonly ethanolG: number
  readonly waterG: number
  /** Sugars of every kind. */
  readonly sugarG: number
  /** Dissolved, and neither sugar nor alcohol: acids, minerals, gums. It takes the room of as much sugar. */
  readonly extractG: number
  /** Sucrose that would lower the freezing point as far as all of that sugar and extract does. */
  readonly sucroseEquivalentG: number
}

export const NOTHING: Liquid = { ethanolG: 0, waterG: 0, sugarG: 0, extractG: 0, sucroseEquivalentG: 0 }

export const ethanolG = (liquid: Liquid): number => liquid.ethanolG
export const waterG = (liquid: Liquid): number => liquid.waterG
export const sugarG = (liquid: Liquid): number => liquid.sugarG
export const extractG = (liquid: Liquid): number => liquid.extractG
export const massG = (liquid: Liquid): number => liquid.ethanolG + liquid.waterG + solidsG(liquid)

/** Sugars and extract together. */
const solidsG = ({ sugarG, extractG }: Liquid): number => sugarG + extractG

/** Ethanol by mass with the sugar left out, 0 to 1; 0 where there is neither ethanol nor water. */
export const sugarFreeMassFraction = ({ ethanolG, waterG }: Liquid): number =>
  ethanolG === 0 ? 0 : ethanolG / (ethanolG + waterG)

/** Strength of the liquid before sugar was added to it, % vol at 20 °C. */
export const sugarFreeAbvPercent = (liquid: Liquid): number => abvFromMassFraction(sugarFreeMassFraction(liquid))

/** Far below what any scale shows. */
const TRACE_G_PER_L = 1e-9

const solventMl = (liquid: Liquid, tempC: number): number =>
  ((liquid.ethanolG + liquid.waterG) / ethanolWaterDensityKgPerM3(sugarFreeMassFraction(liquid), tempC)) * 1000

/** The room its sugar and extract take, mL: the volume lost if they were taken out. */
export const sugarRoomMl = (liquid: Liquid, tempC = 20): number =>
  solidsG(liquid) === 0 ? 0 : solidsG(liquid) * apparentVolumeMlPerG(solidsGPerL(liquid), tempC)

/**
 * Volume of a mixture of ethanol, water, sugars and extract, mL; all that is dissolved takes the room of as much sucrose.
 * @param tempC - °C, 0 to 40 with sugar, −20 to 40 without; outside, throws `temperature_out_of_range`.
 * Without any ethanol or water the sugar counts as molten, 0.6444 mL/g.
 * Error: ±0.43 % at 250 g/L, see `modelVolumePlusMinus`; sugars other than sucrose add 0.06 % at 20 % by mass, glucose 0.12 %
 * (CRC Handbook, 102nd ed., "Concentrative Properties of Aqueous Solutions").
 * Source: V = (ethanol + water)/ρ_R22(p, t) + sugar × v(c, t), p without the sugar, v its apparent specific volume in
 * water at the finished c g/L (ICUMSA SPS-4). Compared with Scheibler 1872, FAO/INFOODS and 27 CFR 30.32 in the tests.
 */
export const volumeMl = (liquid: Liquid, tempC = 20): number => {
  const lowC = solidsG(liquid) === 0 ? R22_LOW_C : 0
  if (!(tempC >= lowC && tempC <= R22_HIGH_C)) {
    throw new DomainError('bad_value', 'temperature_out_of_range', { tempC, lowC, highC: R22_HIGH_C })
  }
  const solids = tempC === 20 ? solidsGPerL(liquid) : 0
  // At 20 °C what is dissolved in a litre says the same without its room, but for a trace whose digits are lost.
  if (solids > TRACE_G_PER_L) return (1000 * solidsG(liquid)) / solids
  return solventMl(liquid, tempC) + sugarRoomMl(liquid, tempC)
}

/** Sugar and extract in a litre at 20 °C. Closes on itself, because the room they take depends on it. Kept for the last one. */
export const solidsGPerL = forLast((liquid: Liquid): number =>
  solidsG(liquid) === 0 ? 0 : sweetnessGPerL(solventMl(liquid, 20), solidsG(liquid)),
)

/** Sugars by mass in a litre at 20 °C, whatever their kinds; 0 for no liquid. */
export const sugarGPerL = (liquid: Liquid): number =>
  liquid.sugarG === 0 ? 0 : solidsGPerL(liquid) * (liquid.sugarG / solidsG(liquid))

/** Strength as drunk, % vol at 20 °C, sugar counted in the volume; 0 for no liquid. */
export const abvPercent = (liquid: Liquid): number =>
  liquid.ethanolG === 0 ? 0 : (100 * liquid.ethanolG) / ETHANOL_DENSITY_20C_G_PER_ML / volumeMl(liquid)

/** Density, g/mL; that of water for no liquid, so that nothing divides by zero. */
export const densityGPerMl = (liquid: Liquid, tempC = 20): number => {
  const mass = massG(liquid)
  return mass === 0 ? ethanolWaterDensityKgPerM3(0, tempC) / 1000 : mass / volumeMl(liquid, tempC)
}

/** Together in one vessel, nothing lost. */
export const mix = (...liquids: readonly Liquid[]): Liquid =>
  liquids.reduce(
    (sum, each) => ({
      ethanolG: sum.ethanolG + each.ethanolG,
      waterG: sum.waterG + each.waterG,
      sugarG: sum.sugarG + each.sugarG,
      extractG: sum.extractG + each.extractG,
      sucroseEquivalentG: sum.sucroseEquivalentG + each.sucroseEquivalentG,
    }),
    NOTHING,
  )

/** A share of it (0.5: half; 2: twice as much), of the same composition. */
export const part = (liquid: Liquid, fraction: number): Liquid => ({
  ethanolG: liquid.ethanolG * fraction,
  waterG: liquid.waterG * fraction,
  sugarG: liquid.sugarG * fraction,
  extractG: liquid.extractG * fraction,
  sucroseEquivalentG: liquid.sucroseEquivalentG * fraction,
})

const checkMass = (massG: number): number => {
  if (!(massG >= 0 && massG < Infinity)) throw new DomainError('bad_value', 'negative_mass', { massG })
  return massG
}

export const water = (massG: number): Liquid => ({ ...NOTHING, waterG: checkMass(massG) })
/** Sucrose. */
export const sugar = (massG: number): Liquid => ({ ...NOTHING, sugarG: checkMass(massG), sucroseEquivalentG: massG })
/** What dissolves of plants beside their sugars: freezing as much sucrose does, as long as nobody knows better. */
export const extract = (massG: number): Liquid => ({
  ...NOTHING,
  extractG: checkMass(massG),
  sucroseEquivalentG: massG,
})

/** What sweetens, of other sugars than sucrose or with water and extract in it. */
export const sweetener = (of: Omit<Liquid, 'ethanolG'>): Liquid => ({ ...of, ethanolG: 0 })

/** So many grams of something of which a gram is known. */
export const gramsOf = (gram: Liquid, massG: number): Liquid => part(gram, checkMass(massG))

interface Strength {
  readonly abvPercent: number
}
/** What is dissolved, but for how much sugar. */
export interface Dissolved {
  /** Left out: none. */
  readonly extractGPerL?: number
  /** Of what is dissolved, sucrose that lowers the freezing point as far, as a share of its mass; left out: all of it. */
  readonly sucroseEquivalentShare?: number
}
interface Composition extends Strength, Dissolved {
  readonly sugarGPerL: number
}

/** Unsweetened spirit, measured at 20 °C. */
export const spirit = (of: Strength & { readonly volumeMl: number }): Liquid => liquidFrom({ ...of, sugarGPerL: 0 })

/**
 * The liquid that has this volume, strength and sweetness at 20 °C: the exact inverse of `volumeMl`, `abvPercent` and
 * `sugarGPerL`, in closed form but for `massFractionAt20`. Throws `no_room_for_water` where alcohol and sugar
 * overfill the volume.
 */
export const liquidFrom = ({ volumeMl, ...of }: Composition & { readonly volumeMl: number }): Liquid => {
  if (!(volumeMl >= 0 && volumeMl < Infinity)) throw new DomainError('bad_value', 'negative_volume', { volumeMl })
  return part(oneLitre(of), volumeMl / 1000)
}

/** The liquid that has this mass, strength and sweetness at 20 °C. */
export const liquidFromMass = ({ massG: wantedG, ...of }: Composition & { readonly massG: number }): Liquid => {
  const litre = oneLitre(of)
  return part(litre, checkMass(wantedG) / massG(litre))
}

/** What is dissolved in a liquid, as `liquidFrom` takes it beside another strength or sweetness; nothing of plain sucrose. */
export function dissolvedIn(liquid: Liquid): Dissolved {
  const all = solidsG(liquid)
  if (liquid.extractG === 0 && liquid.sucroseEquivalentG === all) return {}
  return {
    extractGPerL: liquid.extractG === 0 ? 0 : solidsGPerL(liquid) * (liquid.extractG / all),
    sucroseEquivalentShare: liquid.sucroseEquivalentG / all,
  }
}

function oneLitre(of: Composition): Liquid {
  const abvPercent = checkedAbv(of.abvPercent)
  const { extractGPerL = 0, sucroseEquivalentShare = 1 } = of
  const solidsGPerL = of.sugarGPerL + extractGPerL
  const solidsMl = solidsGPerL === 0 ? 0 : solidsGPerL * roomMlPerGAt20(solidsGPerL)
  const solventMl = Math.max(0, 1000 - solidsMl)
  // Rounding in the last digits must not refuse a liquid without water.
  if (abvPercent * 10 > solventMl + 1e-7)
    throw new DomainError('unreachable', 'no_room_for_water', { abvPercent, sugarGPerL: of.sugarGPerL })
  const massFraction = abvPercent === 0 ? 0 : massFractionAt20(Math.min(100, (1000 * abvPercent) / solventMl))
  const ethanolG = abvPercent * 10 * ETHANOL_DENSITY_20C_G_PER_ML
  const solventG = (solventMl * ethanolWaterDensityKgPerM3(massFraction, 20)) / 1000
  return {
    ethanolG,
    waterG: Math.max(0, solventG - ethanolG),
    sugarG: of.sugarGPerL,
    extractG: extractGPerL,
    sucroseEquivalentG: solidsGPerL * sucroseEquivalentShare,
  }
}
