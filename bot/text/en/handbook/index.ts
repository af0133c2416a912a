import type { Handbook } from '../../messages/handbook.ts'
import { clearing } from './clearing.ts'
import { dairy } from './dairy.ts'
import { keeping } from './keeping.ts'
import { kitchen } from './kitchen.ts'
import { plants } from './plants.ts'
import { safety } from './safety.ts'
import { serving } from './serving.ts'
import { society } from './society.ts'
import { spirit } from './spirit.ts'
import { steeping } from './steeping.ts'
import { straining } from './straining.ts'
import { strength } from './strength.ts'
import { sweetening } from './sweetening.ts'
import { vessels } from './vessels.ts'

export const handbook: Handbook = {
  ...steeping,
  ...plants,
  ...spirit,
  ...straining,
  ...sweetening,
  ...strength,
  ...clearing,
  ...serving,
  ...keeping,
  ...vessels,
  ...safety,
  ...dairy,
  ...society,
  ...kitchen,
}
