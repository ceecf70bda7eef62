package dev.penstock.app.options;

/**
 * Options that say where an answer goes, or how it is printed. They do not belong to what made the answer: a page does not
 * record them, and neither a page nor a request of another program can ask for them.
 */
public interface OutputOption {}
