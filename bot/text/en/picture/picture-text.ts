import { cardText } from './card-text.ts'
import { labelText } from './label-text.ts'
import { shelfText } from './shelf-text.ts'
import { tagText } from './tag-text.ts'

/** What stands on pictures, and what is said of them to who cannot see them. */
export const pictureText = {
  card: cardText,
  shelf: shelfText,
  tag: tagText,
  label: labelText,
  undrawn: () => '▯ stands for a sign that my letters lack.',
}

export type PictureText = typeof pictureText
