/** What help says of `/plan`. */
export const planCommandText = {
  summary: 'Plan a batch: what to buy, what goes in the jar, the days, what comes out',
  options: {
    of: 'The plants, joined with +: 8 lemons + 30 g ginger, or lemon alone for the usual amount',
    from: 'The code of a batch that was shared; then of: says only how much you have of its plants',
    spirit: 'Spirit at hand, one or several: 1 l, or 750 ml 75.5% + 375 ml 40%; leave it out to be told how much',
    strength: 'Its strength, where it is not said beside it: 95%',
    bottles: 'Bottles to fill: 4 x 500 ml; beside spirit: only their size counts, 500 ml where nothing is said',
    'to-strength': 'Strength wanted: 30%, which is also taken where nothing is said',
    'to-sweetness': 'Sugar wanted: 250 g/L, or dry, everyday, rich; everyday where nothing is said',
    start: 'The day it goes into the jar: today where nothing is said, or 1 June',
    'ready-by': 'The day it is wanted on: 24 December',
    'steep-at': 'Dilute the spirit to this before it meets the plants: 60%',
    sugar: 'Sugar that goes in with the plants: 300 g',
    'unknown-ok': 'yes: plan a food I’ve no amounts for, with your own grams and days',
    days: 'How long you steep a plant that I do not know: 10 days, 2 weeks',
  },
  examples: [
    '/plan of:8 lemons + 30 g ginger spirit:0.7 l strength:95% to-strength:30% to-sweetness:250 g/L',
    '/plan of:lemon bottles:4 x 500 ml strength:95% to-strength:30% to-sweetness:rich',
    '/plan from:11NCHSTJ8P501JQH0JNHC00VV9SW4H50HFEB52FV6N spirit:700 ml 70%',
  ],
}
