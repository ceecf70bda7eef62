/** Pages: tables, sections, templates, and the record of the files that a page was made from. */
package dev.penstock.reports.page;
