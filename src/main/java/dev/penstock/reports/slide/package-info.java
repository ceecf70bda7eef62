/**
 * Drawings for an audience: large type, one thought each, in two shapes and two themes. Goes in: a balanced engine, a sized
 * vehicle, or engines side by side. Comes out: {@link dev.penstock.reports.slide.SlideFiles}, SVG and PNG by file name.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.slide;
