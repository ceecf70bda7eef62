package dev.penstock.cycles.origin;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;

/** Limits of the main injector at an operating point. */
public enum InjectorLimit implements LimitKind {
    /** Pressure drop over chamber pressure: feed lines and chamber begin to chug where it is small. */
    CHUGGING_DROP(Terms.shown("injector_drop"));

    /** Least drop over chamber pressure that keeps an engine from chugging (-), a half of what is usual: common practice, no source. */
    public static final double LEAST_DROP = 0.1;

    private final Terms terms;

    InjectorLimit(Terms terms) {
        this.terms = terms;
    }

    @Override
    public Terms terms() {
        return terms;
    }

    @Override
    public String path(String owner) {
        return "injectors." + Trail.slug(owner);
    }
}
