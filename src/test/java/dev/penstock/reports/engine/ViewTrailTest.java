package dev.penstock.reports.engine;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.chamber.flow.ExpansionMode;
import dev.penstock.chamber.flow.NozzleFlow;
import dev.penstock.combustion.equilibrium.Reactants;
import dev.penstock.combustion.species.SpeciesLibrary;
import dev.penstock.cycles.Concepts;
import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.cycles.trail.BalanceTrail;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.fluids.Propellant;
import dev.penstock.provenance.Place;
import dev.penstock.provenance.Trail;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What only one view shows says what it is made from as everything else does: no number without a model, no dead end. */
class ViewTrailTest {

    @Test
    void everyNumberOfACombustionHasItsModel() {
        FluidLibrary fluids = FluidLibrary.open();
        Propellant oxygen = fluids.propellant("oxygen");
        Propellant methane = fluids.propellant("methane");
        Reactants reactants = Reactants.ofTanks(oxygen, methane, 3.4);
        var expansion = NozzleFlow.of(SpeciesLibrary.open(Path.of("").toAbsolutePath()), reactants)
                .expand(reactants, 7e6, ExpansionMode.SHIFTING);
        CombustView view = new CombustView(
                oxygen.storageState(),
                methane.storageState(),
                3.4,
                ExpansionMode.SHIFTING,
                expansion,
                List.of(expansion.toAreaRatio(20), expansion.toAreaRatio(80)));
        Trail trail = new Trail();
        CombustView.ALL.record(view, Place.at(""), trail);
        assertThat(missing(view.json(), "", trail)).isEmpty();
        assertThat(deadEnds(trail)).isEmpty();
        assertThat(trail.entry("expansions.1.isp_vacuum_s").orElseThrow().inputs())
                .contains("pressure_Pa", "mixture_ratio", "fuel_temperature_K");
    }

    @Test
    void everyNumberOfANozzleHasItsModel() {
        EngineBalance balance = Concepts.balance("heron.toml");
        NozzleView view = new NozzleView(balance, 150, 30);
        Trail trail = BalanceTrail.of(balance);
        NozzleView.ALL.record(view, Place.at("nozzle"), trail);
        assertThat(missing(view.json(), "nozzle.", trail)).isEmpty();
        assertThat(deadEnds(trail)).isEmpty();
    }

    /** Numbers of a document that the trail does not have. Shares of species are a list of words. */
    private static Set<String> missing(Object value, String path, Trail trail) {
        Set<String> missing = new TreeSet<>();
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> {
                if (!key.equals("mole_fractions")) {
                    missing.addAll(missing(inner, path + key + ".", trail));
                }
            });
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                missing.addAll(missing(list.get(i), path + i + ".", trail));
            }
        } else if (value instanceof Number && !trail.has(path.substring(0, path.length() - 1))) {
            missing.add(path);
        }
        return missing;
    }

    private static Set<String> deadEnds(Trail trail) {
        Set<String> ends = new TreeSet<>();
        trail.entries().forEach(entry -> entry.inputs().stream()
                .filter(input -> !trail.has(input))
                .forEach(input -> ends.add(entry.path() + " from " + input)));
        return ends;
    }
}
