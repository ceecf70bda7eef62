/**
 * Numbers and tables as text, and the version of what wrote them.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.text;
