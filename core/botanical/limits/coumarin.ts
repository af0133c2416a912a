/** Tolerable daily intake of coumarin, mg per kg of body weight: EFSA Journal 2008;793 (published). */
const COUMARIN_MG_PER_KG_DAY = 0.1

/** Coumarin in cassia, mg per g: derived from BfR 26/2012, which names 2 g of cassia a day for 60 kg. */
const CASSIA_COUMARIN_MG_PER_G = 3

/** Coumarin that a person of this weight may take in every day, mg. */
export const coumarinMgPerDay = (bodyKg: number): number => COUMARIN_MG_PER_KG_DAY * bodyKg

/** The cassia that holds it, g. */
export const cassiaGPerDay = (bodyKg: number): number => coumarinMgPerDay(bodyKg) / CASSIA_COUMARIN_MG_PER_G
