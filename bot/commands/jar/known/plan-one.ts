import { drinksIn } from '../../../../core/recipe/drinks-in.ts'
import { readPlants } from '../../../../core/recipe/plan/find-plants.ts'
import { call } from '../../../calls/call.ts'
import type { Action } from '../../../chat/reply.ts'

/** A line that plans something, for whoever has no jar yet. */
export const planActions: readonly Action[] = [
  {
    label: { group: 'actions', key: 'jars_plan', values: undefined },
    call: call('plan', { of: readPlants('10 lemons'), spirit: drinksIn('1 l 95%', { blends: false }) }),
    isExample: true,
  },
]
