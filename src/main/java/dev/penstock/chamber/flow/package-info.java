/**
 * One-dimensional expansion of the chamber gas: {@link NozzleFlow} takes it to the throat and to the exit, shifting
 * or frozen.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.chamber.flow;
