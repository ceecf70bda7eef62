package dev.penstock.chamber.flow;

import dev.penstock.combustion.equilibrium.EquilibriumMark;
import java.util.ArrayList;
import java.util.List;

/**
 * Where an expansion has come by, for the next one of nearly the same gas to start from: the pressures of throat and exit and the
 * equilibria on the way. It moves along with each expansion that is given it; one that is given a new one starts afresh. What is
 * found does not depend on it beyond the tolerance of the equations.
 */
public final class NearExpansion {

    private final EquilibriumMark rest = new EquilibriumMark();
    private final EquilibriumMark throat = new EquilibriumMark();
    private final EquilibriumMark exit = new EquilibriumMark();
    private final List<EquilibriumMark> subsonic = new ArrayList<>();
    private final List<EquilibriumMark> supersonic = new ArrayList<>();

    /** Pressure over that at rest; 0 as long as nothing is known (-). */
    private double throatShare;

    private double exitShare;
    /** Slope of ln(v²/a²) over ln p at the throat over that at constant γ (-). */
    private double throatBend = 1;

    EquilibriumMark rest() {
        return rest;
    }

    EquilibriumMark throat() {
        return throat;
    }

    EquilibriumMark exit() {
        return exit;
    }

    List<EquilibriumMark> subsonic(int nodes) {
        return marks(subsonic, nodes);
    }

    List<EquilibriumMark> supersonic(int nodes) {
        return marks(supersonic, nodes);
    }

    /** Marks of nodes that lie elsewhere are of no use. */
    private static List<EquilibriumMark> marks(List<EquilibriumMark> kept, int nodes) {
        if (kept.size() != nodes) {
            kept.clear();
            for (int i = 0; i < nodes; i++) {
                kept.add(new EquilibriumMark());
            }
        }
        return kept;
    }

    double throatShare() {
        return throatShare;
    }

    double throatBend() {
        return throatBend;
    }

    void foundThroat(double share, double bend) {
        throatShare = share;
        throatBend = bend;
    }

    double exitShare() {
        return exitShare;
    }

    void foundExit(double share) {
        exitShare = share;
    }
}
