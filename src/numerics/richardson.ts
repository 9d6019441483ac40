/**
 * Richardson's extrapolation of a value computed on two grids, the fine one with half the spacing of the
 * coarse one, to a grid without end. The errors must go by the square of the spacing.
 */
export const richardson = (coarse: number, fine: number): number => fine + (fine - coarse) / 3;
