/**
 * Samples a distribution that is only known through likelihoods, cheap ones first, and adds up its evidence. Knows nothing
 * of engines: in go numbers in the space of a standard normal prior, out come samples.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.numerics.sampling;
