package dev.penstock.app.console;

/** A command that does more on this machine than answer: it writes files, opens a page, or takes requests itself. */
public interface LocalAction {}
