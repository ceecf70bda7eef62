package dev.penstock.cycles.arrangements;

import java.lang.reflect.Constructor;
import java.util.ArrayList;
import java.util.List;

/** The list of cycles, derived from the kinds that {@link Cycle} permits. */
final class Cycles {

    static final List<Cycle> ALL = list();

    private Cycles() {}

    private static List<Cycle> list() {
        List<Cycle> all = new ArrayList<>();
        for (Class<?> kind : Cycle.class.getPermittedSubclasses()) {
            if (kind.isEnum()) {
                for (Object constant : kind.getEnumConstants()) {
                    all.add((Cycle) constant);
                }
            } else {
                all.add(instance(kind));
            }
        }
        return List.copyOf(all);
    }

    private static Cycle instance(Class<?> kind) {
        try {
            Constructor<?> constructor = kind.getDeclaredConstructor();
            return (Cycle) constructor.newInstance();
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(kind + " needs a constructor without arguments", e);
        }
    }
}
