const HEATS =
  'heat(?:s|ing|ed)?|simmer(?:ing|ed)?|boil(?:ing|ed)?|warm(?:s|ing|ed)? (?:it|them|this|that|the|my|up)|(?:on|over) (?:the |a )?(?:hob|stove|gas|cooker|burner)|sul (?:fornello|gas|fuoco)|scald(?:o|are|arlo|arla|ato)'
const QUICKER =
  'quick(?:er|ly|en)?|faster|speed|hurry|rush|sooner|per fare prima|piu (?:in fretta|veloce|presto)|acceler\\w+|velocizz\\w+'

/** `If I warm the jar on the stove, will it go quicker`: whether heat helps is answered, and what it does to spirit is said with it. */
export const HEAT_FOR_SPEED = new RegExp(
  `^(?=.*(?<![\\p{L}\\d])(?:${HEATS})(?![\\p{L}\\d]))(?=.*(?<![\\p{L}\\d])(?:${QUICKER})(?![\\p{L}\\d]))`,
  'u',
)

/** Of what is heated without spirit. */
export const NO_SPIRIT_HEATED = /\b(?:syrup|sugar|sciroppo|zucchero|jam|dissolv\w*|thaw\w*|filter\w*|radiator)\b/
