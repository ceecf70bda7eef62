/**
 * What a cooling jacket is asked to be: {@link JacketDesign} and the case in which it works, {@link JacketCase}.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.cooling.design;
