import { type Liquid, solidsGPerL } from './liquid.ts'

/** Half interval of the model's volume at 250 g/L and above, relative: 1.96 times the rms of 2.4 kg/m³ in 1,090. */
export const MODEL_VOLUME_ERROR = 0.0043

/**
 * Half of the 95 % interval of the volume the model gives, relative; the same share of strength and sweetness.
 * Evidence: against Scheibler's eight sweetened spirits (1872; 66–815 g/L) and two analysed liqueurs the density is off
 * by 0.0024 g/mL rms, 0.0041 at most; the apparent volume of sugar that fits 15–50 % vol best is 0.625 mL/g
 * (0.618–0.630), 0.005 above that in water: 1.5 mL/L at 300 g/L. Without sugar R 22 is exact by definition.
 */
export const modelVolumePlusMinus = (liquid: Liquid): number => MODEL_VOLUME_ERROR * modelShare(liquid)

/** How much of the model's whole error a liquid has by what is dissolved in it, 0 to 1. */
export const modelShare = (liquid: Liquid): number => Math.min(1, solidsGPerL(liquid) / 250)
