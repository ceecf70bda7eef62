/**
 * One-dimensional expansion of the chamber gas: {@link NozzleFlow} takes it to the throat and to the exit, shifting
 * or frozen.
 */
package dev.penstock.chamber.flow;
