/**
 * What is believed of each unknown before any claim is heard, from the declarations of the inputs.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.claims.prior;
