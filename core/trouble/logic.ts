import { type FactCondition, holds, NO, open, YES, yes } from './finding.ts'
import type { Sign } from './signs.ts'

/** Nothing that a jar knows speaks for or against it. */
export const maybe: FactCondition = () => open()
export const always: FactCondition = () => YES

/** All of them: a no of one decides it. */
export const all =
  (...conditions: readonly FactCondition[]): FactCondition =>
  (facts) => {
    const found = conditions.map((condition) => condition(facts))
    if (found.some(({ is }) => is === 'no')) return NO
    const whys = found.flatMap((each) => each.whys)
    return {
      is: found.every(({ is }) => is === 'yes') ? 'yes' : 'maybe',
      whys,
      asks: found.flatMap(({ asks }) => asks),
    }
  }

/** One of them: a yes of one decides it. */
export const any =
  (...conditions: readonly FactCondition[]): FactCondition =>
  (facts) => {
    const found = conditions.map((condition) => condition(facts))
    const sure = found.filter(({ is }) => is === 'yes')
    if (sure.length > 0) return yes(...sure.flatMap(({ whys }) => whys))
    const left = found.filter(({ is }) => is === 'maybe')
    return left.length === 0
      ? NO
      : { is: 'maybe', whys: left.flatMap(({ whys }) => whys), asks: left.flatMap(({ asks }) => asks) }
  }

export const not =
  (condition: FactCondition): FactCondition =>
  (facts) => {
    const { is, asks } = condition(facts)
    return is === 'maybe' ? open(...asks) : holds(is === 'no')
  }

/** It is so, or nothing more is known of it: what nobody asks about. */
export const likely =
  (condition: FactCondition): FactCondition =>
  (facts) => {
    const found = condition(facts)
    return found.is === 'maybe' ? { ...found, asks: [] } : found
  }

/** It is known to be so. */
export const surely =
  (condition: FactCondition): FactCondition =>
  (facts) => {
    const found = condition(facts)
    return found.is === 'maybe' ? NO : found
  }

/** The maker says so. */
export const said =
  (sign: Sign): FactCondition =>
  ({ signs }) => {
    const answer = signs[sign]
    return answer === undefined ? open(sign) : holds(answer)
  }

/** The maker says that it is not so. */
export const denied = (sign: Sign): FactCondition => not(said(sign))

/** The maker never bought it as a drink, or the label is not known. */
export const notBought: FactCondition = denied('bought')
