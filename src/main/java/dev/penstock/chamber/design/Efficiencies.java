package dev.penstock.chamber.design;

import dev.penstock.errors.Require;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Efficiencies that the concept states. A loss that is not stated is computed by its model.
 *
 * @param stated efficiency (-) by loss, each in (0, 1]
 */
public record Efficiencies(Map<LossKind, Double> stated) {

    /** Nothing stated: every loss by its model. */
    public static final Efficiencies MODELLED = new Efficiencies(Map.of());

    /** No loss at all: delivered equals ideal. */
    public static final Efficiencies IDEAL = overall(1, 1);

    public Efficiencies {
        stated.forEach((kind, value) ->
                Require.within("efficiencies", kind.key() + " efficiency (-)", value, Double.MIN_NORMAL, 1));
        stated = Map.copyOf(stated);
    }

    /**
     * Two overall efficiencies instead of named ones: everything that acts on c* is put under energy release, everything
     * that acts on the thrust coefficient under divergence.
     *
     * @param characteristicVelocity delivered over ideal c* (-)
     * @param thrustCoefficient delivered over ideal vacuum thrust coefficient (-)
     * @return the efficiencies
     */
    public static Efficiencies overall(double characteristicVelocity, double thrustCoefficient) {
        Map<LossKind, Double> map = new EnumMap<>(LossKind.class);
        for (LossKind kind : LossKind.values()) {
            map.put(kind, 1.0);
        }
        map.put(LossKind.ENERGY_RELEASE, characteristicVelocity);
        map.put(LossKind.DIVERGENCE, thrustCoefficient);
        return new Efficiencies(map);
    }

    /**
     * @param kind a loss
     * @param efficiency delivered over ideal (-)
     * @return these efficiencies with that one stated
     */
    public Efficiencies with(LossKind kind, double efficiency) {
        Map<LossKind, Double> map = new EnumMap<>(LossKind.class);
        map.putAll(stated);
        map.put(kind, efficiency);
        return new Efficiencies(map);
    }

    /**
     * @param kind a loss
     * @return the stated efficiency (-), empty if the loss is to be modelled
     */
    public OptionalDouble of(LossKind kind) {
        Double value = stated.get(kind);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
