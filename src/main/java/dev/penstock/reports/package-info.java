/**
 * What people and programs read: JSON documents, terminal tables, self-contained pages with flow diagram and charts. In:
 * results of the packages before this one; out: text. Nothing is computed here that a result does not carry, apart from
 * conversion of units. The only package beside {@code app} that touches chart, template and JSON libraries.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports;
