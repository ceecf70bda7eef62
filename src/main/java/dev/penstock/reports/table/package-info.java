/**
 * Tables that text, pages and the local page share.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.table;
