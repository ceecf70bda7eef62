/**
 * More values where there is something to see: which gaps of a grid to halve ({@link
 * dev.penstock.study.refine.GridRefinement}), and a sweep that does so ({@link dev.penstock.study.refine.RefinedSweep}).
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.study.refine;
