/** What an engineer asked for, validated and in SI: {@link Concept}. */
package dev.penstock.cycles.concept;
