package dev.penstock.cycles.trail;

import dev.penstock.cycles.origin.Closing;
import dev.penstock.cycles.origin.Definitions;
import dev.penstock.cycles.origin.InputPaths;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.sheet.Residual;
import dev.penstock.fluids.Propellant;
import dev.penstock.input.InputValue;
import dev.penstock.provenance.Origin;
import dev.penstock.provenance.Trail;
import dev.penstock.quantities.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * Records where every number of a balanced engine comes from: inputs with who said so, stations by the component that made
 * them, machines, chamber and jacket by their own packages. The arrangement itself decides what depends on what, so a new
 * cycle needs nothing here.
 */
public final class BalanceTrail {

    private final EngineBalance balance;
    private final Trail trail = new Trail();
    private final InputPaths inputs;

    private BalanceTrail(EngineBalance balance) {
        this.balance = balance;
        this.inputs = new InputPaths(balance.concept());
    }

    /**
     * @param balance balanced engine
     * @return the trail of all its numbers
     */
    public static Trail of(EngineBalance balance) {
        return new BalanceTrail(balance).make();
    }

    private Trail make() {
        inputs();
        balance.origins().entries().forEach(trail::add);
        EngineFigures.ALL.record(balance, EnginePlaces.of(balance), trail);
        closing();
        return trail;
    }

    // ---- what comes from outside

    private void inputs() {
        trail.given(
                "constants.standard_gravity_m_s2",
                Constants.STANDARD_GRAVITY,
                "m/s²",
                "constant by definition",
                "3rd CGPM, 1901");
        trail.given(
                "constants.standard_atmosphere_Pa",
                Constants.STANDARD_ATMOSPHERE,
                "Pa",
                "constant by definition",
                "10th CGPM, 1954");
        for (InputValue input : balance.concept().document().inputs()) {
            String what = input.given() ? "stated by the concept" : "default of the concept";
            List<String> follows = inputs.of(input.follows().toArray(String[]::new));
            input.number()
                    .ifPresent(value ->
                            trail.given("concept." + input.key(), value, input.unit(), what, input.source(), follows));
        }
        List<Propellant> fluids = new ArrayList<>(
                List.of(balance.concept().oxidizer(), balance.concept().fuel()));
        balance.concept().diluent().ifPresent(d -> fluids.add(d.fluid()));
        for (Propellant propellant : fluids) {
            trail.given(
                    "fluids." + propellant.id() + ".formation_enthalpy_J_kg",
                    propellant.formationEnthalpy(),
                    "J/kg",
                    "stated by the fluid's file",
                    String.join(", ", propellant.sources()));
        }
    }

    /** The loop that the closing equations make up. */
    private void closing() {
        List<Residual> residuals = balance.residuals();
        double worst = residuals.stream().mapToDouble(Residual::relative).max().orElse(0);
        trail.record(
                Closing.LOOP,
                worst,
                "",
                new Origin(Definitions.CLOSING, EngineFigures.RESIDUALS.paths("residuals", residuals, "value")));
    }
}
