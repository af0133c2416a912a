import type { ForGuests } from '../../../core/label/for-guests.ts'
import type { Measured } from '../../../core/quantity/measured/measured.ts'
import type { IsoDay } from '../../../core/quantity/time/calendar-day.ts'
import type { Plain } from './plain.ts'

export interface CodeFrom {
  readonly factor: number
  /** What there was least of; null where nothing was said. */
  readonly by: 'spirit' | 'plant' | 'bottles' | null
  /** The plant that there was least of. */
  readonly id: string | null
  readonly isSpiritLeft: boolean
}

export interface CodeStrengths {
  readonly abvPercent: number
  /** Of what the batch of the code steeped in. */
  readonly recipeAbvPercent: number
}

export interface CodeDays {
  readonly fromDays: number
  readonly byDays: number
}

/** What a shared batch is, or is to be. */
export type Becomes =
  | { readonly by: 'made'; readonly abvPercent: Measured; readonly sugarGPerL: Measured }
  | { readonly by: 'plan'; readonly abvPercent: number; readonly sugarGPerL: number }

/** `out_of_reach`: a place that takes no changes of mine. `failed`: it may be tried again. */
export type PostChange = 'changed' | 'gone' | 'out_of_reach' | 'failed'

export interface CodeMessages {
  notes: {
    code_from: CodeFrom
    code_only_plant: { readonly typed: string; readonly id: string }
    code_weaker: CodeStrengths
    code_stronger: CodeStrengths
    code_dried: { readonly ids: readonly string[] }
    code_days: CodeDays & { readonly usual: CodeDays | null }
  }
}

export interface ShareMessages {
  headlines: {
    shared: { readonly name: string; readonly ids: readonly string[]; readonly becomes: Becomes | null }
    shares: { readonly batches: number; readonly count: number }
    share_withdrawn: {
      readonly name: string | null
      readonly post: PostChange | null
      readonly isAgain: boolean
    }
    jar_tag: { readonly name: string }
    jar_label: { readonly name: string; readonly count: number }
  }
  rows: Plain<'share_allergens' | 'share_made' | 'share_code'> & {
    share: { readonly called: string }
  }
  cells: {
    share_made: { readonly count: number }
    share_code: { readonly code: string }
    share_allergens: ForGuests
    share: {
      readonly name: string | null
      /** Whether the row is called by its name. */
      readonly isCalled: boolean
      readonly at: { readonly day: IsoDay; readonly minutes: number } | null
      readonly today: IsoDay
      readonly channelId: string | null
      readonly isUnposted: boolean
    }
  }
  notes: Plain<'share_withdraw'> & {
    share_snapshot: { readonly called: string }
    share_made_so_far: { readonly count: number; readonly own: number }
    shares_made: { readonly made: readonly { readonly name: string | null; readonly count: number }[] }
    shares_withdrawn: { readonly count: number }
    forget_shares: { readonly count: number }
    forgot_shares: { readonly changed: number; readonly left: number }
    name_unprinted: { readonly id: string }
    print_size: { readonly count: number }
  }
  actions: Plain<'make_too' | 'share_carry'> & {
    /** `id` where its name is not enough. */
    share_withdraw: { readonly id: string | null; readonly name: string | null }
  }
}

declare module '../language.ts' {
  interface MessagesByFeature {
    readonly code: CodeMessages
    readonly share: ShareMessages
  }
}
