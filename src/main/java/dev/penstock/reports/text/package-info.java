/** Numbers and tables as text, the writing of whole files, and the version of what wrote them. */
package dev.penstock.reports.text;
