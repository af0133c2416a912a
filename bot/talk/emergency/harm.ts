/** What has happened to somebody. */
export const HARMS = [
  'swallowed_spirit_child',
  'swallowed_spirit_adult',
  'swallowed_plant',
  'swallowed_undrinkable',
  'unconscious_after_drinking',
  'spirit_in_eye',
  'burn',
  'clothes_on_fire',
  'spirit_fire',
  'methanol',
  'pet',
  'glass_burst',
  'self_harm',
  'someone_hurt',
] as const

export type HarmId = (typeof HARMS)[number]
