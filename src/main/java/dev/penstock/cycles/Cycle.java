package dev.penstock.cycles;

import java.util.List;

/**
 * An engine cycle: how tanks, pumps, burners, turbines, jacket and chamber are joined. A kind states its arrangement, its
 * unknowns and the equations that close them, nothing else.
 */
public sealed interface Cycle permits PressureFed, GasGenerator, StagedCombustion, FullFlow {

    /** @return id, as in the key {@code cycle} of a concept file */
    String id();

    /** @return name for people */
    String title();

    /** @return a sentence on what drives the pumps and where the gas goes */
    String summary();

    /** @return every cycle, in the order of the {@code permits} list */
    static List<Cycle> all() {
        return Cycles.ALL;
    }
}
