import type { TroubleCauses } from '../messages/trouble.ts'
import { told } from './trouble-told.ts'

/** Causes of what happened to it, and what may be in it. */
export const mishapTexts = {
  spilled_or_burnt: {
    vapour: told(
      'vapour above its flash point',
      'The flame can be pale and hard to see.',
      'Heat off, everyone out, doors shut, call the fire service. No water on it, and don’t carry it.',
      'Put the lid on only if it can be done safely. Hold a burn under cool running water for 20 minutes.',
    ),
    spilled: told(
      'spirit spilled, not lit',
      'You see it.',
      'No flame, switch or spark near. Open windows, wipe up with wet cloths, hang them outdoors.',
    ),
  },
  someone_ill: {
    poison: told(
      'poison, until somebody who knows says it’s not',
      'Don’t wait for signs.',
      'Call first. Keep jar, bottle and plant.',
    ),
  },
  wrong_spirit: {
    denatured: told(
      'alcohol that isn’t for drinking',
      'Only the label tells: no smell, taste, flame or cloud does.',
      'Throw it all away, the fruit too. Nothing filters, dilutes or boils it out.',
      'If anyone tasted it, call the poison centre at once, even without signs.',
    ),
    other_spirit: told(
      'drinking spirit of another kind or strength',
      'The label.',
      'Correct the entry, and I’ll work it all out again.',
    ),
  },
  unknown_plant: {
    look_alike: told(
      'a poisonous look-alike or part',
      'A photo or an app is no certainty, and tasting never is.',
      'Don’t taste it, and throw it all away. Keep a piece and a photo.',
      'Strength, heat and sugar don’t destroy plant poisons.',
    ),
    right_plant: told(
      'a leaf or stalk of a plant you know',
      'You bought it, or someone who knows named it.',
      'Take it out. Leaves of rhubarb, elder, tomato or stone fruit are poisonous: with those, throw it away.',
    ),
  },
  cracked_stones: {
    cracked: told(
      'cracked, crushed or loose kernels: cyanide',
      'They were cracked on purpose, blended, or put in loose.',
      'Throw it all away: nobody can measure it at home.',
      'If anyone drank more than a sip or feels ill, call the poison centre.',
    ),
    split: told(
      'one or two stones that split by themselves',
      'Look at the stones.',
      'Take all stones out and strain it today. Keep it.',
    ),
    whole_long: told(
      'whole stones, left in a long time',
      'A note of almond, the stones whole.',
      'Strain it now and keep it.',
    ),
  },
  broken_glass: {
    splinters: told(
      'splinters in the drink',
      'Hold a lamp to the rim and the bottom.',
      'Throw it all away, the fruit too. Don’t strain it: the finest pieces pass. Gloves, and wrap the glass.',
    ),
    old_scratch: told(
      'an old scratch or a seam',
      'Smooth to a fingernail outside, no piece missing, never frozen or dropped.',
      'Harmless. Use another jar next time.',
    ),
  },
  lead_crystal: {
    lead: told(
      'lead, which dissolves into the drink',
      'It has no colour and no taste.',
      'After more than a day, throw it away. If anyone drank from it for weeks, ask a doctor for a blood test.',
    ),
    safe_glass: told(
      'ordinary glass, or one evening at table',
      'Its maker’s mark.',
      'Fine. Pour it back into a bottle after the evening.',
    ),
  },
  left_in_sun: {
    light_and_warmth: told(
      'light and warmth, which dull taste and colour',
      'It’s only paler or duller.',
      'Drink this one first. Keep the rest dark and cool.',
    ),
    hot_jar: told(
      'vapour and pressure in a hot closed jar',
      'The jar still feels warm.',
      'Carry it to the shade, away from flames, and let it cool before you open it.',
    ),
    fermenting: told(
      'a weak jar starting to ferment',
      'It bubbles or smells of bread.',
      'Into the fridge, lid loose, and make it stronger with spirit once it’s quiet.',
    ),
    dairy: told('milk, cream or egg that got warm', 'More than two hours out of the fridge.', 'Throw it away.'),
    plastic: told(
      'plastic in the heat',
      'A taste of plastic, or soft plastic.',
      'If the plastic is soft or cloudy, throw it away.',
    ),
  },
  forgotten: {
    over_steeped: told(
      'plants left in too long',
      'It looks and smells as it should, only stronger.',
      'Strain it. If it’s bitter, blend and sweeten it.',
    ),
    stone_fruit: told(
      'stones that were in for a long time',
      'The stones are whole.',
      'Strain it. Whole sloe stones are used to 8 months, cherry stones to 90 days.',
    ),
    nobody_knows: told('contents nobody knows', 'No record and no label.', 'Throw it away, untasted.'),
    weak: told(
      'a weak jar, or fruit that stuck out of the liquid',
      'Look for fur and slime.',
      'If nothing grows or smells, put it in the fridge and add spirit. If anything does, throw it away.',
    ),
    dairy_garlic: told('milk, egg or weak garlic in it', 'You know what’s in it.', 'Throw it away.'),
  },
  leaking_lid: {
    worn_ring: told(
      'a worn ring, sugar on the rim, or a dry cork',
      'It drips without a hiss.',
      'Wipe the rim, change the ring, store it upright. Then measure what’s left.',
    ),
    gas: told('gas pushing it out', 'It hisses or bubbles.', 'Towel and gloves, into the fridge, and open it cold.'),
    heat_or_frost: told(
      'heat, frost or a brim-full bottle',
      'Look where it stood.',
      'Leave 5 % room, and look for cracks.',
    ),
    cracked: told('cracked glass', 'It drips from the side or bottom.', 'Throw it all away, unstrained.'),
  },
} satisfies Partial<TroubleCauses>
