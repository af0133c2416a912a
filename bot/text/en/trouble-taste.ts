import type { TroubleCauses } from '../messages/trouble.ts'
import { told } from './trouble-told.ts'

/** Causes of what it tastes and smells of. */
export const tasteTexts = {
  bitter: {
    pith: told(
      'pith, seeds or whole slices',
      'There’s white on the peel, or slices or seeds are in it.',
      'It can’t be taken out. Sweeten it a little, blend it with another, or rest it 1 to 3 months.',
    ),
    too_long: told(
      'plants left in too long',
      'It got bitter in its last weeks.',
      'Strain it now. Blend it with a milder batch.',
    ),
    by_nature: told(
      'a plant that’s bitter and needs rest',
      'It was bitter from the first day.',
      'Wait 3 to 12 months.',
    ),
    burnt_sugar: told('scorched syrup', 'The syrup was brown.', 'It can’t be taken out. Blend it into a larger batch.'),
    kernels: told(
      'cracked stones or loose kernels',
      'It smells of marzipan.',
      'Throw it all away: nobody can measure the cyanide at home.',
    ),
    wrong_spirit: told(
      'spirit made undrinkable with a bitter agent',
      'Read the bottle. Don’t try the spirit.',
      'If it wasn’t sold for drinking, throw it all away.',
    ),
    overdosed: told(
      'too much of a plant, or the wrong plant',
      'Weigh what went in, and check who named the plant.',
      'Throw it away. Diluting it until it tastes right proves nothing.',
    ),
  },
  harsh_hot: {
    too_strong: told(
      'too much alcohol',
      'It burns less mixed half and half with water.',
      'Dilute it to 28 to 30 %. Sugar doesn’t cool the burn.',
    ),
    too_young: told('too little rest', 'It’s days old, not weeks.', 'Let it rest a month after the syrup.'),
    hot_plant: told(
      'the heat of the plant, not the alcohol',
      'It still burns with five times as much water.',
      'Blend it with a batch without. Milk or cream in the glass takes the heat off.',
    ),
    wrong_spirit: told(
      'spirit that wasn’t made for drinking',
      'Only the label and the shop tell. A clean smell proves nothing.',
      'Don’t taste it, and throw it all away.',
    ),
  },
  too_sweet: {
    recipe: told(
      'a sweet recipe',
      'It’s sweet warm and cold.',
      'Add spirit and water together, or blend it with a dry batch. A squeeze of lemon helps in the glass.',
    ),
    sugar_inside: told(
      'the sugar that’s in the jar already',
      'It tastes of sugar more than of fruit.',
      'Leave it to steep. Once it’s strained, use a syrup with less sugar, or just water.',
    ),
    no_syrup_yet: told(
      'the fruit’s own sugar, as no syrup is in yet',
      'It tastes of ripe fruit.',
      'Leave it to steep. Once it’s strained, say “drier” and I’ll work out a syrup with less sugar.',
    ),
    sweet_plant: told(
      'a plant that tastes sweet, as no sugar is in yet',
      'It’s sweet with no sugar in it.',
      'Leave it to steep. Once it’s strained, say “drier” and I’ll work out a syrup with less sugar.',
    ),
    fruit_sugar: told(
      'sugar the fruit brought itself',
      'It was sweet before the syrup.',
      'Add spirit and water together. Count the fruit’s sugar next time.',
    ),
    sweeter_cold: told(
      'a sweetener that tastes sweeter cold',
      'You liked it warm, but not ice cold.',
      'Taste it as cold as you serve it before you sweeten.',
    ),
  },
  too_dry_or_sour: {
    little_sugar: told('little sugar', 'It’s thin, not sour.', 'Stir in sugar. Dry sugar adds hardly any volume.'),
    acid_fruit: told(
      'sour fruit',
      'It tastes sour and smells clean.',
      'Sweeten it in small steps, and wait some weeks.',
    ),
    vinegar: told('vinegar: it’s spoiling', 'It smells of vinegar or nail varnish.', 'Throw it away.'),
  },
  too_weak: {
    volumes: told(
      'volumes that don’t add up, and water from the plants',
      'Nothing was spilled or forgotten.',
      'Make it stronger with spirit.',
    ),
    juicy_fruit: told(
      'juicy fruit in ordinary spirit',
      'Its juice is in there.',
      'Make it stronger with spirit. Start stronger next time.',
    ),
    evaporated: told(
      'spirit that evaporated',
      'The level sank, the lid was loose, it stood warm.',
      'Make it stronger with spirit, and change the lid. Keep flames away.',
    ),
    on_the_tongue: told(
      'little sugar or an icy glass, not little alcohol',
      'It’s as strong as you planned.',
      'A little sugar gives it body. Serve it less cold.',
    ),
    believed_strength: told(
      'water you’ve forgotten, or spirit weaker than its label',
      'It tastes of water, though its numbers are right.',
      'Measure it, and correct what you entered.',
    ),
    can_spoil: told(
      'so little alcohol that it can spoil',
      'Its strength says so, before you see anything.',
      'Into the fridge today, and make it stronger with spirit.',
    ),
  },
  weak_taste: {
    too_little: told(
      'too little plant, or too little time',
      'It never smelled strongly.',
      'Leave it longer, or put fresh plant into the same spirit.',
      'Both lots together count towards a plant’s limit.',
    ),
    too_cold: told('the cold', 'A spoonful warmed in the hand smells.', 'Serve it at 6 to 10 °C.'),
    wrong_strength: told(
      'a spirit too strong or too weak for the plant',
      'Dry seeds and roots like about 70 %, flowers and herbs 40 to 60 %.',
      'It can’t be fixed once it’s sweet. Choose the strength next time.',
    ),
    old_plant: told(
      'old dried plant or old zest',
      'Rubbed in the hand it doesn’t smell.',
      'Put fresh plant into the same spirit.',
    ),
    scent_gone: told(
      'scent that has gone: acid, light, warmth, air',
      'It smelled well once.',
      'It can’t be brought back. Blend it with a fresh batch.',
      'Next time use peel without juice, and keep it dark in a full bottle.',
    ),
    lid: told('a lid that didn’t seal', 'The level sank below its mark.', 'Change the lid or its ring.'),
  },
  too_sour: {
    acid_fruit: told(
      'sour fruit or juice',
      'It smells clean.',
      'Sweeten it in small steps, or blend it with a mild batch. No bicarbonate: it tastes of soap.',
    ),
    little_sugar: told('little sugar', 'It’s thin.', 'Sweeten it.'),
    vinegar: told('vinegar', 'It smells of it.', 'Throw it away.'),
  },
  too_spicy: {
    hot_plant: told(
      'too much of it, or too long',
      'It still burns with five times as much water.',
      'Strain it now, and blend it with a batch without. Rest doesn’t help chilli, milk in the glass does.',
      'Sugar masks it a little. Never thin it with water alone, or below 20 %.',
    ),
    alcohol: told('the alcohol', 'It burns less mixed half and half with water.', 'Dilute it to 28 to 30 %.'),
    in_the_eyes: told(
      'chilli in the eyes or on the skin',
      'It burns there.',
      'Rinse 15 to 20 minutes under the tap.',
      'Gloves next time.',
    ),
  },
  soapy_perfume: {
    too_much: told(
      'too much flower or leaf, or too long',
      'It smells like the plant’s own perfume.',
      'Strain it, and blend it with plain spirit, lemon peel or something tart.',
    ),
    detergent: told(
      'washing-up liquid left in jar or cloth',
      'Shaken, it keeps its froth.',
      'Throw it away. Rinse jars hot.',
    ),
    essential_oil: told('oil from a little bottle', 'You’d know.', 'Throw it away: nobody can judge the dose at home.'),
    florist: told('flowers not sold as food', 'You’d know where they’re from.', 'Throw it away: they may be sprayed.'),
  },
  cloth_or_paper_taste: {
    paper: told(
      'paper that wasn’t rinsed',
      'Hot water through a fresh paper tastes the same.',
      'Rest it a few weeks: it fades.',
    ),
    detergent: told(
      'detergent in the cloth',
      'Shaken, it keeps its froth.',
      'If it foams, throw it away. Boil cloths in plain water.',
    ),
    musty_cloth: told(
      'a musty cloth or cork',
      'The cloth or cork smells of cellar.',
      'It doesn’t go away. Cook with it.',
    ),
  },
  plastic_taste: {
    ring: told(
      'the rubber ring or the lid’s lining',
      'The ring smells the same.',
      'Use a new food-grade ring, and store it upright. A faint taste fades.',
    ),
    soft_plastic: told(
      'a plastic that strong spirit dissolves',
      'It went soft, cloudy, sticky or cracked, or wasn’t made for food.',
      'Throw it away. Use glass.',
    ),
    food_plastic: told(
      'food-grade plastic, for days',
      'It’s marked 1 or 2 and has the food sign.',
      'Pour it into glass and keep it.',
    ),
  },
  vinegar: {
    bacteria: told('bacteria that make vinegar', 'There’s air above it, and it was weak.', 'Throw it away.'),
    old_lid: told(
      'an old pickle jar, lid or ring',
      'The empty lid smells of it.',
      'Use a new jar and lid. The drink is sound.',
    ),
  },
  solvent: {
    wrong_spirit: told(
      'spirit that wasn’t made for drinking, or a fake',
      'The label. A clean smell proves nothing.',
      'Don’t taste it, and throw it all away.',
    ),
    fuel: told(
      'petrol, paraffin, paint or cleaner',
      'The can, funnel or shelf smells of it.',
      'Don’t taste it. Throw it away.',
    ),
    spoiling: told(
      'a spoiling ferment',
      'It smells of pear drops and nail varnish, often with vinegar.',
      'Throw it away.',
    ),
    tainted: told(
      'ethyl acetate in the spirit, from careless distilling or a fake',
      'The bottle you poured from smells of it too.',
      'Don’t use it: throw away what it went into, and take the bottle back to the shop. Spirit without a label, or from a home still: never.',
    ),
    old_oil: told(
      'old citrus oil that smells of turpentine',
      'It smelled of the fruit once.',
      'Dull, not dangerous: bake with it. Next time keep it dark and cool.',
    ),
    only_alcohol: told(
      'strong alcohol, and nothing else',
      'With twice as much water it smells clean. That only counts for spirit you bought labelled.',
      'Nothing’s wrong.',
    ),
  },
  rotten_egg: {
    yeast: told(
      'yeast at work in a weak jar',
      'It bubbles.',
      'Into the fridge, lid loose. If it smells after it fizzed, throw it away.',
    ),
    rot: told('rot', 'It smells of meat or sewage. Look for slime.', 'Throw it away.'),
    sulphites: told(
      'sulphur from bright dried fruit',
      'It smells like a struck match. The packet says sulphites.',
      'Pour it between jugs in the open air, and wait some weeks.',
      'Name sulphites on the label: they trouble people with asthma.',
    ),
    garlic: told('garlic or onion', 'The lid and ring smell of it.', 'Normal for it.'),
    water_or_ring: told(
      'the water or the rubber ring',
      'Smell the water and the ring alone.',
      'Air it, change the ring. Don’t put a copper coin in: nobody can tell how much dissolves.',
    ),
  },
  musty: {
    cork: told(
      'a tainted cork or damp cloth',
      'The other bottles are sound.',
      'Harmless, but it doesn’t go away. Cook with it or pour it away.',
    ),
    spoiled_fruit: told(
      'mouldy fruit, nuts or spice',
      'What went in had bad spots.',
      'Throw it away: toxins stay in spirit.',
    ),
    mould: told('mould under the lid or on the fruit', 'Fur under a lamp.', 'Throw it all away.'),
  },
  hydrometer_odd: {
    sugar: told(
      'sugar, which makes it read far too low',
      'It was right before the syrup.',
      'Don’t trust it. Go by the recipe, or measure it with two readings.',
    ),
    wrong_scale: told(
      'a hydrometer for wine or sugar',
      'Look at its stem.',
      'Read the spirit’s own scale, before any sugar.',
    ),
    temperature: told('a warm or cold sample', 'It isn’t at 20 °C.', 'Read it at 20 °C, or tell me its temperature.'),
    misread: told(
      'bubbles, touching the wall, or reading the wrong edge',
      'It differs from one try to the next.',
      'Spin it, read the bottom of the curve, and read again.',
    ),
    really_weak: told(
      'a spirit that really is weak',
      'Clean, without sugar and at 20 °C it reads the same.',
      'Ask where it was bought: a false label is a warning.',
    ),
  },
} satisfies Partial<TroubleCauses>
