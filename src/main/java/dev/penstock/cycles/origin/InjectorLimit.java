package dev.penstock.cycles.origin;

import dev.penstock.provenance.LimitKind;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Limits of the main injector at an operating point. */
public enum InjectorLimit implements LimitKind {
    /** Pressure drop over chamber pressure: feed lines and chamber begin to chug where it is small. */
    DROP("chugging_drop", "", List.of("injector_drop"), List.of(), List.of());

    /** Least drop over chamber pressure that keeps an engine from chugging (-), a half of what is usual: common practice, no source. */
    public static final double LEAST_DROP = 0.1;

    private final Terms terms;

    InjectorLimit(String key, String equation, List<String> figures, List<String> inputs, List<String> bounds) {
        this.terms = new Terms(key, equation, figures, inputs, bounds);
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
