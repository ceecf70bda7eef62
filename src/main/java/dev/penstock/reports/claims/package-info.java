/**
 * What follows from claims, as JSON document, text and page.
 *
 * <p>Internal: other programs use {@link dev.penstock} only.
 */
package dev.penstock.reports.claims;
