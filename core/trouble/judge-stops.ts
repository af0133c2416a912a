import type { TroubleFacts } from './facts.ts'
import type { FactCondition, Finding } from './finding.ts'
import type { StopId, Stops } from './row.ts'
import { STOP_ORDER } from './stops.ts'

/** Both where both are said of one reason. */
const joined = (one: FactCondition | undefined, other: FactCondition): FactCondition =>
  one === undefined
    ? other
    : (facts) => {
        const [first, second] = [one(facts), other(facts)]
        if (first.is === 'yes' || second.is === 'no') return first
        if (second.is === 'yes' || first.is === 'no') return second
        return { ...first, asks: [...first.asks, ...second.asks] }
      }

export const withStops = (stops: Stops, more: Stops): Stops => ({
  ...stops,
  ...Object.fromEntries(Object.entries(more).map(([id, condition]) => [id, joined(stops[id as StopId], condition)])),
})

interface Judged {
  readonly id: StopId
  readonly finding: Finding
}

export const judged = (stops: Stops, facts: TroubleFacts): readonly Judged[] =>
  STOP_ORDER.flatMap((id) => {
    const condition = stops[id]
    return condition === undefined ? [] : [{ id, finding: condition(facts) }]
  })
