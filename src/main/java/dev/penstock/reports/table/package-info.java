/** Tables that text, pages and the local page share. */
package dev.penstock.reports.table;
