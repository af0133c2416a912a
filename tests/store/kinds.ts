import type { Maintenance } from '../../store/maintenance.ts'
import type { Store } from '../../store/store.ts'
import { type Setup, storeIn } from './some-store.ts'

type OpenIn = (folder: string, setup?: Pick<Setup, 'nowMs' | 'log'>) => Store & Maintenance

/** Every kind of store that outlives its process, and how it is opened: whatever the contract says holds for each. */
export const KINDS: readonly (readonly [name: string, openIn: OpenIn])[] = [['on disk', storeIn]]
