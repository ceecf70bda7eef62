package dev.penstock.errors;

/** What could not be solved, for those who ask why an engine does not exist. */
public enum FailureSubject {
    /** The equations of a cycle. */
    BALANCE,
    /** A cooling jacket. */
    JACKET,
    /** Any other model. */
    MODEL
}
