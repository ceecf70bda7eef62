package dev.penstock.cycles.concept;

/**
 * One input of a concept, where its value came from, and what supports it.
 *
 * @param key dotted key in the concept file, for example "pumps.fuel.efficiency"
 * @param value the value in SI or the text chosen, as text
 * @param unit SI unit as text; empty for plain numbers and texts
 * @param given whether the concept states it; otherwise it is a default
 * @param source the concept's own source, or what the default rests on
 */
public record ConceptInput(String key, String value, String unit, boolean given, String source) {}
