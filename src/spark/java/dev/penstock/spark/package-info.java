/**
 * Batches of a study worked at by a Spark cluster. Compiled by the Maven profile {@code spark} alone, and put on the class path
 * by {@code --on} alone.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.spark;
