import type { TroubleCauses } from '../messages/trouble.ts'
import { told } from './trouble-told.ts'

/** Causes of what is to be seen in the liquid. */
export const cloudTexts = {
  cloudy_on_mixing: {
    oil: told(
      'oil from the plant, coming out as it weakens',
      'It turned milky as the syrup went in.',
      'Harmless, leave it. Don’t filter it: the oil is the flavour.',
      'For a clear one next time, use less peel or finish at 40 % or more.',
    ),
    pectin: told(
      'pectin from the fruit, which clots in spirit',
      'It’s flaky or stringy. Stirred into four spoonfuls of strong drinking spirit, a spoonful of it clots.',
      'Chill it for a week or two, pour it off, then filter coarse to fine.',
      'Next time put pectic enzyme on the fruit before the spirit.',
    ),
    hot_syrup: told(
      'syrup that went in warm',
      'The syrup hadn’t cooled when it went in.',
      'Lid off, no flame near, until it’s cool. Then close it, turn it over and wait a day.',
      'Never shake a closed warm jar. Next time let the syrup cool first.',
    ),
    hard_water: told(
      'hard water',
      'White specks or patches after hours or weeks, with clear drink around them.',
      'Pour it off the specks. Use water low in minerals next time.',
    ),
    plant_bits: told(
      'fine bits and juice of the plant',
      'They sink when it stands still.',
      'Harmless. Strain it through a fine cloth when it’s time.',
    ),
    yeast: told(
      'yeast or bacteria, which live in a weak jar',
      'It clouded days later. It smells sour, or of bread or vinegar.',
      'Into the fridge today, and make it stronger with spirit before anything else.',
    ),
    wrong_spirit: told(
      'spirit that wasn’t made for drinking',
      'Only the label tells. Some of it turns milky with water.',
      'If nobody can say what it was, don’t taste it, and throw it all away.',
    ),
  },
  cloudy_in_cold: {
    oil_falls_out: told(
      'oil or fat, which the cold brings out',
      'It clears again at room temperature.',
      'Harmless, leave it. Or filter it ice cold.',
    ),
    first_ice: told(
      'the first ice',
      'Fine needles, not milk, and they melt.',
      'Keep it in the fridge, or make it stronger for the freezer.',
    ),
    fat: told(
      'fat from coffee, cocoa, nuts or coconut',
      'A skin or flakes that melt between warm fingers.',
      'Chill it overnight, then skim it or filter it cold.',
    ),
  },
  cloudy_later: {
    settling: told(
      'pectin, tannin or protein settling out',
      'Flakes sink. Pectin clots when you stir a spoonful into four of strong drinking spirit.',
      'Harmless. Let it settle, pour it off, filter it.',
    ),
    cold_or_weaker: told('cold, or a little less strength', 'It clears when it’s warm.', 'Harmless. Nothing to do.'),
    yeast: told(
      'yeast or bacteria',
      'It smells sour or of bread, bubbles, or pulls threads.',
      'If it smells clean, put it in the fridge, bring it to 22 % or more with spirit, and watch it. If not, throw it away.',
    ),
  },
  oil_ring: {
    peel_oil: told(
      'more plant oil than this strength can dissolve',
      'It smells of the plant.',
      'Harmless: shake before you pour. Or draw off from below and bake with the oily top.',
    ),
    fat: told(
      'fat from the plant',
      'It sets hard in the fridge.',
      'Chill it and lift the fat off. If it smells of old paint or crayons, it’s rancid and not worth keeping.',
    ),
    greasy_bottle: told(
      'a jug or bottle that was greasy',
      'A thin rainbow film that smells of nothing, or of washing-up.',
      'Lift it with a strip of kitchen paper laid on top. Wash the jug in hot water with washing soda.',
      'If it smells of anything but food, don’t taste it.',
    ),
    fuel: told(
      'fuel, lamp oil or machine grease',
      'The film, the can or the funnel smells of petrol, paraffin or an engine.',
      'Don’t taste it. Throw it away.',
    ),
  },
  separated: {
    unmixed_syrup: told(
      'syrup lying under the spirit, never mixed in',
      'A spoonful from the bottom is sweeter than one from the top.',
      'Turn it over gently, and again tomorrow.',
    ),
    cream: told(
      'cream that has split: acid, strong spirit or warmth',
      'Curds.',
      'If it split as you poured, cook with it today. Otherwise throw it away, untasted.',
    ),
    oil: told(
      'the plant’s own oil on top',
      'A thin layer that smells of the plant.',
      'Harmless: shake before you pour.',
    ),
    too_much_sugar: told(
      'so much sugar that it pushes the spirit out',
      'It hardly ever happens in a kitchen, so check the others first.',
      'Stir in a little water.',
    ),
  },
  sediment: {
    plant_matter: told(
      'fine plant matter settling',
      'Soft and brown, and it moves like smoke.',
      'Harmless. Pour it off and filter it.',
    ),
    hard_water: told(
      'lime from hard water',
      'White and sandy. It doesn’t melt in warm water and crushes to chalk.',
      'Harmless. Pour it off, and use soft water next time.',
    ),
    sugar: told(
      'sugar that has turned back into crystals',
      'Hard, clear grains that melt in a spoon of warm water.',
      'Stand the bottle, loosely closed, in warm tap water and turn it.',
    ),
    odd_sugar: told(
      'minerals or wax from honey or maple syrup',
      'Fine grey grit, or soft flakes.',
      'Harmless. Pour it off.',
    ),
    glass: told(
      'splinters of glass',
      'Hard, clear, sharp, and they don’t melt in warm water.',
      'Never feel for them with tongue or finger. Throw it all away, unstrained.',
    ),
    yeast: told(
      'yeast in a weak jar',
      'A creamy layer that rises in clouds or with bubbles.',
      'Into the fridge today, lid loose. Make it stronger with spirit once it’s quiet.',
    ),
  },
  gelled: {
    pectin: told(
      'pectin, set by sugar, acid and spirit',
      'A clean jelly. Stirred into four spoonfuls of strong drinking spirit, a spoonful of it clots.',
      'Harmless. Shake it, thin it with spirit or water, strain it through cloth.',
      'Keep it at 20 % or more when you thin it. Enzyme does little once the spirit is in.',
    ),
    mucilage: told(
      'slime from the plant itself',
      'Even and clear, and it smells of the plant.',
      'Strain it at once, and thin it with spirit.',
    ),
    ropy: told(
      'bacteria that make slime',
      'It pulls threads, in a weak jar, often with a sour smell.',
      'Throw it away.',
    ),
  },
  crystals: {
    too_much_sugar: told(
      'more sugar than stays dissolved in the cold',
      'They melt in a spoon of warm water.',
      'Stand it, loosely closed, in warm tap water (30 °C at most, no flame) and turn it.',
      'Or stir in a little water. Next time use less sugar, or a fifth of it as glucose syrup.',
    ),
    never_dissolved: told(
      'sugar that never dissolved',
      'It went in dry, into strong cold spirit.',
      'Pour in the recipe’s water first, or make syrup and let it cool.',
    ),
    anethole: told(
      'crystals of the plant’s own aroma',
      'They melt at room temperature.',
      'Harmless. Keep it at about 15 °C.',
    ),
    hard_water: told(
      'lime from hard water',
      'White, chalky, and it doesn’t melt.',
      'Harmless. Pour it off, and use soft water next time.',
    ),
    glass: told(
      'splinters of glass, mistaken for sugar',
      'Hard, clear, and they don’t melt in warm water.',
      'Never bite or feel for them. Throw it all away, unstrained.',
    ),
  },
  frozen: {
    too_weak: told(
      'not enough alcohol or sugar for your freezer',
      'It’s slush or ice all through.',
      'Thaw it upright in the fridge, in a bowl, and look for cracks. Then keep it in the fridge.',
    ),
    too_full: told(
      'a bottle filled to the brim',
      'The stopper is lifted and the neck sticky.',
      'Thaw it upright in the fridge. Leave 5 % room next time.',
    ),
    cracked: told(
      'a cracked bottle',
      'A line, chip or leak, once you hold it to a lamp.',
      'Throw it all away, unstrained.',
    ),
  },
  stuck_filter: {
    pulp: told(
      'pectin and fine pulp',
      'A pulpy cake in the paper.',
      'Sieve, then cloth. Let it settle cold for 2 to 7 days, pour it off, and use paper last.',
      'Wet the paper first and change it every half litre. Don’t squeeze, and keep it covered and away from any flame.',
    ),
    sugar_in: told(
      'the sugar that’s in it already',
      'It ran well before you sweetened it.',
      'Use coarser paper and patience, or thin it with spirit you’ve still to add.',
      'Filter before you sweeten next time.',
    ),
    fat: told(
      'oil or fat',
      'A greasy patch on the paper.',
      'Chill it overnight, lift the fat off, and filter it quickly while it’s cold.',
    ),
  },
  sugar_not_dissolving: {
    too_strong: told(
      'too little water: sugar hardly dissolves in strong spirit',
      'It lies there dry after days of shaking.',
      'Pour in the recipe’s water, or take the sugar out and make syrup, cooled.',
      'Never warm the spirit on a stove.',
    ),
    no_room: told(
      'more sugar than fits at this strength',
      'Some dissolves and the rest stays.',
      'Stir in a little water, or take the rest of the sugar out.',
    ),
    coarse: told(
      'coarse or rock sugar, which is just slow',
      'The grains get smaller day by day.',
      'Turn it daily for two weeks.',
    ),
  },
} satisfies Partial<TroubleCauses>
