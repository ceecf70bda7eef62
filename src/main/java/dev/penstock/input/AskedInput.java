package dev.penstock.input;

/**
 * An input that was asked for while a file was read.
 *
 * @param key dotted key
 * @param value the value in SI or the text, as text; "computed" where the key is absent and no default stands for it
 * @param unit SI unit as text; empty for plain numbers and texts
 * @param given whether the file states it, or a change does
 */
public record AskedInput(String key, String value, String unit, boolean given) {}
