/**
 * Loss of chlorophyll at 20 °C in 1–60 % ethanol, first order, per day: Shen et al., J Agric Food Chem 2010;58(13):
 * 8056–8060 (published). The fastest is near 40 % ethanol.
 */
export const GREEN_FADES = { slowestPerDay: 0.013, fastestPerDay: 13.575, fastestNearPercent: 40 } as const

/** Days until half of the green is gone. */
export const halfLifeDays = (ratePerDay: number): number => Math.LN2 / ratePerDay
