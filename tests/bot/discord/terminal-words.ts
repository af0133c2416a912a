/** Words of whoever sits at a machine: nobody in Discord has one of mine. */
export const TERMINAL_WORDS =
  /\b(?:terminal|console|npm|command line|folder|paths?|processes|standard (?:output|error)|prompt|keyboard|LARDERBELL_\w+|DISCORD_\w+)\b|\.env\b|--\w|\bdata\//i
