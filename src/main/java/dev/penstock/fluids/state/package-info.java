/**
 * What state is a fluid in? {@link Fluid} gives a {@link FluidState} for two properties; a {@link FluidCursor} walks
 * through states without making one each time. SI units; a state that does not exist is a {@link
 * dev.penstock.errors.PropertyFailure}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.fluids.state;
