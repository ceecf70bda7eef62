package dev.penstock.provenance;

import java.util.Locale;

/** What files, options and documents call a constant of the program. */
public final class Words {

    private Words() {}

    /**
     * @param constant a constant, for example {@code LAUNCH_SITE}
     * @return its word: small letters with hyphens, for example "launch-site"
     */
    public static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
