/** Help for `/botanical`. */
export const botanicalText = {
  summary: 'How much of a plant, for how many days, how to prepare it, and what can hurt',
  options: { of: 'The plant: ginger, zenzero, dried bay; leave it out for all I know' },
  examples: ['/botanical ginger', '/botanical dried sage'],
}

/** Help for `/cautions`. */
export const cautionsText = {
  summary: 'Everything that can hurt with these plants, and in the making',
  options: { of: 'The plants, joined with +; amounts may be left out: 8 lemons + 30 g ginger' },
  examples: ['/cautions of:8 lemons + 30 g ginger', '/cautions elderflower'],
}
