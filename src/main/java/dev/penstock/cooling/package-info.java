/**
 * Can the chamber be cooled, and what does it cost? {@link dev.penstock.cooling.jacket.JacketSolver} marches a
 * {@link dev.penstock.cooling.design.JacketCase} (hot gas along the wall, coolant, channels) station by station and returns a
 * {@link dev.penstock.cooling.jacket.JacketResult}: wall temperatures, coolant temperature rise, pressure drop and the margin to
 * every limit. Main sources: [bartz-1957], [nasa-sp-125], [nasa-sp-8087], [gnielinski-1976], [hatch-papell-1959].
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling;
