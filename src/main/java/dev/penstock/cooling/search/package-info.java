/** Which channels cool best, and what can be cooled at all: {@link JacketSearch}, {@link FeasibilityStudy}. */
package dev.penstock.cooling.search;
