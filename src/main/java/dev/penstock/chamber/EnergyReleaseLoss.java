package dev.penstock.chamber;

import dev.penstock.provenance.ModelCard;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Share of the theoretical characteristic velocity that a developed injector releases, by kind of injection and fuel.
 * <pre>
 * c*_delivered/c*_ideal   hydrogen   light hydrocarbons, others   kerosene   hydrazines, ammonia
 * liquid-liquid             0.975             0.960                0.940           0.960
 * gas-liquid                0.980             0.975                0.960           0.970
 * gas-gas                   0.985             0.985                0.975           0.980
 * </pre>
 * Where these come from: [nasa-sp-125] takes 0.975 as nominal (range 0.93 to 0.99); developed hydrogen coaxial injectors
 * reach 0.98 to 0.995, small storable ones 0.92 to 0.96 (common practice, no source); large baffled kerosene injectors,
 * which also film-cool the wall, about 0.94 [oefelein-yang-1993]. One round choice within these ranges for all engines: the
 * table does not know the injector. Uncertainty ±1.5 %.
 */
public final class EnergyReleaseLoss implements LossModel {

    public static final ModelCard CARD = new ModelCard(
            "chamber.energy_release",
            "Energy release of a developed injector",
            "c*_delivered/c*_ideal = table by injection and fuel",
            "developed injectors at their design point",
            "1.5 %",
            List.of("nasa-sp-125", "oefelein-yang-1993", "common practice, no source"));

    private enum Family {
        HYDROGEN("hydrogen"),
        LIGHT("light hydrocarbons and others"),
        KEROSENE("kerosene"),
        STORABLE("hydrazines and ammonia");

        private final String title;

        Family(String title) {
            this.title = title;
        }
    }

    private static final Map<InjectionState, double[]> TABLE = Map.of(
            InjectionState.LIQUID_LIQUID, new double[] {0.975, 0.960, 0.940, 0.960},
            InjectionState.GAS_LIQUID, new double[] {0.980, 0.975, 0.960, 0.970},
            InjectionState.GAS_GAS, new double[] {0.985, 0.985, 0.975, 0.980});
    private static final List<String> STORABLE_FUELS =
            List.of("hydrazine", "hydrazine-50", "mmh", "udmh", "uh-25", "ammonia");

    @Override
    public LossKind kind() {
        return LossKind.ENERGY_RELEASE;
    }

    @Override
    public ModelCard card() {
        return CARD;
    }

    @Override
    public boolean dependsOnSize() {
        return false;
    }

    @Override
    public Result evaluate(LossCase chamber) {
        InjectionState state = chamber.design().combustor().injection();
        Family family = family(chamber.injection().mixed().propellants());
        return Result.combustor(
                TABLE.get(state)[family.ordinal()],
                state.name().toLowerCase(Locale.ROOT).replace('_', '-') + " injection, " + family.title);
    }

    /** Family of the fuel: hydrogen if there is any to speak of, else the storable or kerosene that weighs most. */
    private static Family family(Map<String, Double> propellants) {
        if (propellants.getOrDefault("hydrogen", 0.0) > 0.01) {
            return Family.HYDROGEN;
        }
        if (STORABLE_FUELS.stream().anyMatch(id -> propellants.getOrDefault(id, 0.0) > 0.01)) {
            return Family.STORABLE;
        }
        return propellants.getOrDefault("rp-1", 0.0) > 0.01 ? Family.KEROSENE : Family.LIGHT;
    }
}
