package dev.penstock.chamber;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Map;

/**
 * Share of the theoretical characteristic velocity that a developed injector releases, by kind of injection and fuel.
 * <pre>
 * c*_delivered/c*_ideal:              hydrogen   hydrocarbons and others   hydrazines with N2O4
 * liquid-liquid                       0.985      0.965                     0.965
 * gas-liquid                          0.990      0.980                     0.975
 * gas-gas                             0.993      0.985                     0.980
 * </pre>
 * Where these come from: [nasa-sp-125] takes 0.975 as nominal (range 0.93 to 0.99); developed hydrogen coaxial injectors
 * reach 0.98 to 0.995, small storable ones 0.92 to 0.96 (common practice, no source). The table is one choice within
 * these ranges for all engines; it does not know the injector. Uncertainty ±1.5 %.
 */
public final class EnergyReleaseLoss implements LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.energy_release",
            "Energy release of a developed injector",
            "c*_delivered/c*_ideal = table by injection and fuel",
            "developed injectors at their design point",
            "1.5 %",
            List.of("nasa-sp-125", "common practice, no source"));

    private enum Family {
        HYDROGEN,
        STORABLE,
        OTHER
    }

    private static final Map<InjectionState, double[]> TABLE = Map.of(
            InjectionState.LIQUID_LIQUID, new double[] {0.985, 0.965, 0.965},
            InjectionState.GAS_LIQUID, new double[] {0.990, 0.975, 0.980},
            InjectionState.GAS_GAS, new double[] {0.993, 0.980, 0.985});

    @Override
    public LossKind kind() {
        return LossKind.ENERGY_RELEASE;
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public Result evaluate(LossCase chamber) {
        InjectionState state = chamber.design().combustor().injection();
        Family family = family(chamber.injection().mixed().propellants());
        return Result.of(
                TABLE.get(state)[family.ordinal()],
                state.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-') + " injection, "
                        + family.name().toLowerCase(java.util.Locale.ROOT));
    }

    private static Family family(Map<String, Double> propellants) {
        if (propellants.getOrDefault("hydrogen", 0.0) > 0.01) {
            return Family.HYDROGEN;
        }
        boolean storable = propellants.keySet().stream()
                .anyMatch(id -> id.startsWith("nitrogen-tetroxide") || id.startsWith("hydrazine") || id.equals("mmh"));
        return storable ? Family.STORABLE : Family.OTHER;
    }
}
