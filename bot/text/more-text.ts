import type { Sayings } from './sayings.ts'

/** Around what stands deeper in a reply. `hint`: under a first screen, where it is typed; `button`: where it is pressed. */
export interface MoreText extends Sayings<'hint' | 'button' | 'again' | 'moved_on' | 'nothing'> {}
