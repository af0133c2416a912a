import type { Plant } from './steep.ts'

/** Jars that are sold, ml. */
const USUAL_JARS_ML = [250, 500, 750, 1000, 1500, 2000, 3000, 5000, 10_000, 15_000, 20_000, 25_000, 34_000, 54_000]

/** 85 to 90 % full, with room to shake. Common practice, no source. */
const FULL_SHARE = 0.875

/** Room a gram of plant takes, ml: about its weight; leaves and flowers more, even pressed under. Estimated. */
const ROOM_ML_PER_G = 1
const BULKY_ROOM_ML_PER_G = 3

/** The smallest usual jar that takes liquid and plants; from 54 l up, whole tens of litres over several vessels. */
export function jarMlFor(liquidMl: number, plants: readonly Pick<Plant, 'massG' | 'bulky'>[]): number {
  const roomMl = plants.reduce(
    (sum, { massG, bulky }) => sum + massG.value * (bulky ? BULKY_ROOM_ML_PER_G : ROOM_ML_PER_G),
    liquidMl,
  )
  const neededMl = roomMl / FULL_SHARE
  return USUAL_JARS_ML.find((jarMl) => jarMl >= neededMl) ?? Math.ceil(neededMl / 10_000) * 10_000
}
