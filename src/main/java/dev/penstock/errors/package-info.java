/**
 * What can go wrong, and how it is said: a sealed family of unchecked exceptions with their numbers as fields, and
 * {@link dev.penstock.errors.Warning} for results that stand but need a reader's care. Uses nothing else of Penstock.
 *
 * <p>Other programs catch these; see {@link dev.penstock}.
 */
package dev.penstock.errors;
