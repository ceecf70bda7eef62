package dev.penstock.app;

/** A command that does more on this machine than answer: it writes files, opens a page, or takes requests itself. */
interface LocalAction {}
