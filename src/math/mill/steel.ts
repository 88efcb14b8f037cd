/** Young's modulus of blade steel, psi: a variant of Singer, Problem 261; Fine Woodworking's 6,000 psi for 0.001 in on 5. */
export const BLADE_MODULUS_PSI = 30e6;

/** Young's modulus of structural steel, psi: AISC, and the 29,000 ksi of the Oregon lecture's Example 40-1. */
export const STRUCTURAL_MODULUS_PSI = 29e6;

/** Weight of steel, lb/ft3: AISC, and Singer, Problem 139. */
export const STEEL_LB_PER_FT3 = 490;

/** Growth of steel per degree Fahrenheit: Singer, Problem 261. Books print 6.06e-6 to 7.2e-6. */
export const STEEL_GROWTH_PER_F = 6.5e-6;
