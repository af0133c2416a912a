import type { Format } from '../format.ts'

/** What a ready command does. */
export const actions = {
  style: ({ abvPercent, sugarGPerL }: { readonly abvPercent: number; readonly sugarGPerL: number }, format: Format) =>
    `${format.number(sugarGPerL, 0)} g/L at ${format.plain(abvPercent, 1)} % vol`,
  start_jar: () => 'Once it is in the jar',
}
