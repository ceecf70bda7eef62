/**
 * What follows from claims, which cycle it was, whether the claims fit together, and what would tell most.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.claims.answer;
