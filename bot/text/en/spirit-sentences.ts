import { listed } from './phrases.ts'

/** What is said of the drinks that go in. */
export const spiritSentences = {
  notes: {
    bottle_named: ({ names }: { readonly names: readonly string[] }) =>
      `I’ve read ${listed(names.map((name) => `“${name}”`))} as the name on the bottle.`,
  },
  cautions: {
    note_names: ({ names }: { readonly names: readonly string[] }) =>
      `You’ve noted ${listed(names)}. If any of it went in, don’t taste it and don’t give it away.`,
  },
}
