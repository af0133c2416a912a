import type { Sayings } from './sayings.ts'

/** Over notes one question deeper that belong together, in this order. */
export const HEADINGS = ['in_jar', 'sweetening', 'safety'] as const

export type Heading = (typeof HEADINGS)[number]

/** Around what stands deeper in a reply. `hint`: under a first screen, where it is typed; `button`: where it is pressed. */
export interface MoreText extends Sayings<'hint' | 'button' | 'again' | 'moved_on' | 'nothing'> {
  readonly headings: Sayings<Heading>
}
