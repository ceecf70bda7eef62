package dev.penstock.cycles.arrangements;

import dev.penstock.cycles.concept.CycleKind;
import dev.penstock.cycles.questions.EngineStudy;
import dev.penstock.cycles.sheet.Flowsheet;
import dev.penstock.cycles.sheet.Values;
import dev.penstock.numerics.BoundedSystemSolver.Unknown;
import java.util.List;

/**
 * An engine cycle: how tanks, pumps, burners, turbines, jacket and chamber are joined. A kind states its arrangement, its
 * unknowns and the equations that close them, nothing else; {@link EngineStudy} solves it.
 */
public sealed interface Cycle extends CycleKind
        permits PressureFed,
                GasGenerator,
                StagedCombustion,
                FullFlow,
                Expander,
                ExpanderBleed,
                DualExpander,
                TapOff,
                ElectricPump,
                DecompositionGenerator {

    /**
     * @param guess rough numbers to start from
     * @return what the solver has to find, in the order in which {@link #layOut} takes it
     */
    List<Unknown> unknowns(FirstGuess guess);

    /**
     * Lays the components from the tanks to the chamber and states what must vanish.
     *
     * @param sheet where the components are laid
     * @param x values of the unknowns
     */
    void layOut(Flowsheet sheet, Values x);

    /** @return every cycle, in the order of the {@code permits} list */
    static List<Cycle> all() {
        return Cycles.ALL;
    }

    /**
     * @param kind a kind of cycle, as a concept names it
     * @return its arrangement
     */
    static Cycle of(CycleKind kind) {
        return (Cycle) kind;
    }
}
