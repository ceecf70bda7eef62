package dev.penstock.cycles;

import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.fluids.coolprop.CoolPropLibrary;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Processor time of warm balances of demos, in batches by turns, so that a machine that is busier at one moment is so for all of
 * them; with what each balance does, counted.
 */
public final class DemoBenchmark {

    private static final List<String> USUAL = List.of("heron", "razorbill", "gannet");
    private static final int WARMING = 30;
    private static final int BATCHES = 5;
    private static final int EACH = 6;

    private DemoBenchmark() {}

    /** @param arguments names of demos; three of them if there are none */
    public static void main(String[] arguments) {
        List<String> names = arguments.length > 0 ? List.of(arguments) : USUAL;
        EngineStudy study = EngineStudy.open();
        List<Concept> concepts = names.stream()
                .map(name -> Concepts.READER.read(Path.of("cycles", name + ".toml")))
                .toList();
        concepts.forEach(concept -> repeat(study, concept, WARMING));
        double[][] times = new double[names.size()][BATCHES];
        for (int batch = 0; batch < BATCHES; batch++) {
            for (int i = 0; i < names.size(); i++) {
                times[i][batch] = repeat(study, concepts.get(i), EACH);
            }
        }
        System.out.println("balance, milliseconds of processor time, median and best of " + BATCHES + " batches of " + EACH);
        for (int i = 0; i < names.size(); i++) {
            Arrays.sort(times[i]);
            long before = CoolPropLibrary.nativeCalls();
            var effort = study.balance(concepts.get(i)).effort();
            System.out.printf(
                    Locale.ROOT,
                    "%-12s %8.1f %8.1f   (%s, %d native calls)%n",
                    names.get(i),
                    times[i][BATCHES / 2],
                    times[i][0],
                    effort,
                    CoolPropLibrary.nativeCalls() - before);
        }
    }

    private static double repeat(EngineStudy study, Concept concept, int times) {
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        for (int i = 0; i < times; i++) {
            study.balance(concept);
        }
        return (clock.getCurrentThreadCpuTime() - start) / 1e6 / times;
    }
}
