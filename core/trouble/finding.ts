import type { Measured } from '../quantity/measured/measured.ts'
import type { TroubleFacts } from './facts.ts'
import type { Sign } from './signs.ts'

/** What has to be told before more can be said: a sign, or a number or name that the jar would know. */
export type Ask = Sign | 'strength' | 'plants'

/** Why something fits this very jar, in its own figures. */
export type Why =
  | { readonly key: 'plants'; readonly ids: readonly string[] }
  | { readonly key: 'fell'; readonly from: number; readonly to: Measured }
  | { readonly key: 'strength'; readonly abvPercent: Measured; readonly limit: number; readonly isOver: boolean }
  | { readonly key: 'weakest'; readonly abvPercent: number; readonly limit: number }
  | { readonly key: 'steep_strength'; readonly abvPercent: number; readonly limit: number; readonly isOver: boolean }
  | {
      readonly key: 'off_range'
      readonly abvPercent: number
      readonly id: string
      readonly range: readonly [number, number]
    }
  | { readonly key: 'sugar'; readonly sugarGPerL: Measured; readonly limit: number; readonly isOver: boolean }
  /** It should not ferment, and does. */
  | { readonly key: 'should_not'; readonly abvPercent: number }
  | { readonly key: 'plant_sugar'; readonly sugarGPerL: number }
  | { readonly key: 'units'; readonly units: number; readonly abvPercent: number }
  | { readonly key: 'too_long'; readonly id: string; readonly days: number; readonly usualDays: number }
  | { readonly key: 'too_short'; readonly id: string; readonly days: number; readonly usualDays: number }
  | { readonly key: 'dose'; readonly id: string; readonly gPerL: number; readonly usualGPerL: number }
  | { readonly key: 'piece'; readonly id: string; readonly share: number }
  | { readonly key: 'rested' | 'steeped' | 'age'; readonly days: number; readonly limit: number }
  | { readonly key: 'freezes'; readonly freezesAtC: number; readonly freezerC: number }
  | { readonly key: 'no_room'; readonly sugarGPerL: Measured; readonly largestGPerL: number }
  | { readonly key: 'planned'; readonly abvPercent: Measured; readonly plannedPercent: number }
  | { readonly key: 'missing'; readonly share: number }
  | { readonly key: 'over_ceiling' }

/** `maybe` where what is known tells neither. */
export interface Finding {
  readonly is: 'yes' | 'maybe' | 'no'
  /** What speaks for it, or is strange about it. */
  readonly whys: readonly Why[]
  /** What would decide it, of a maybe. */
  readonly asks: readonly Ask[]
}

/** Whether something holds of what is known. */
export type FactCondition = (facts: TroubleFacts) => Finding

export const NO: Finding = { is: 'no', whys: [], asks: [] }
export const YES: Finding = { is: 'yes', whys: [], asks: [] }
export const open = (...asks: readonly Ask[]): Finding => ({ is: 'maybe', whys: [], asks })
export const yes = (...whys: readonly Why[]): Finding => ({ is: 'yes', whys, asks: [] })
export const holds = (is: boolean): Finding => (is ? YES : NO)
