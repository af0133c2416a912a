/** What can hurt in any making of a liqueur, whatever plants are in it. */
export const makingCautions = {
  making_food_spirit: () =>
    'Only bought, taxed food spirit: industrial, denatured, rubbing or fuel alcohol blinds and kills, and nothing done at home makes it safe.',
  making_no_flame: () =>
    'Strong spirit burns, and from about 40 % vol on its vapour can catch fire in a warm room (derived): no flame, spark or hot plate near it, and never heat it.',
  making_children: () =>
    'Jars and bottles look and smell like sweets: label them and lock them away from children and animals. A little can poison a child (from memory, please check).',
  making_spent_plants: () => 'Spent plants burn and intoxicate: no flame or hot oven, no children, no animals.',
  making_no_distilling: () =>
    'Nothing here is distilling: that needs a licence nearly everywhere, and the vapour explodes.',
  making_no_lead: () =>
    'No leaded crystal, old glazed pottery, copper, brass or galvanised metal: spirit draws metal out (from memory, please check). Glass with a tight lid.',
  making_no_dairy_egg: () => 'I plan no milk, cream or egg: they spoil, and alcohol does not make them safe.',
}
