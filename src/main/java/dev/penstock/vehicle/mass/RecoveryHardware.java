package dev.penstock.vehicle.mass;

import dev.penstock.errors.Require;
import dev.penstock.provenance.ModelCard;
import java.util.List;

/**
 * What brings a stage back in one piece.
 *
 * <pre>
 * legs, fins, attitude jets   fraction × the other dry mass
 * thermal protection          A (q'' / H + m_base)      A base area, q'' heat load, H heat taken per kilogram
 * </pre>
 *
 * The fractions are common practice, no source; heat taken per kilogram of a cork or silicone ablator is from memory.
 *
 * @param fraction legs, fins and jets over the rest of the dry mass (-)
 * @param heatLoad heat load on the base (J/m²)
 */
public record RecoveryHardware(double fraction, double heatLoad) {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.recovery-hardware",
            "Recovery hardware",
            "legs, fins, jets 0.07 of the rest; thermal protection A(q''/H + 1.5 kg/m²), H 5 MJ/kg",
            "first stages that land on their engines",
            "±40 %",
            List.of("common practice, no source"));

    /** Legs 4 %, fins and attitude jets 3 %. */
    public static final double USUAL_FRACTION = 0.07;

    private static final double HEAT_PER_MASS = 5e6;
    private static final double BASE_LAYER = 1.5;

    public RecoveryHardware {
        Require.within("recovery hardware", "fraction (-)", fraction, 0, 1);
        Require.within("recovery hardware", "heat load (J/m²)", heatLoad, 0, 1e9);
    }

    /**
     * @param newHeatLoad heat load on the base (J/m²)
     * @return the same hardware for that heat load
     */
    public RecoveryHardware withHeatLoad(double newHeatLoad) {
        return new RecoveryHardware(fraction, newHeatLoad);
    }

    /**
     * @param stage what the stage holds
     * @param rest dry mass without these lines (kg)
     * @return the lines
     */
    List<MassLine> lines(StageContents stage, double rest) {
        double base = Math.PI * stage.diameter() * stage.diameter() / 4;
        return List.of(
                new MassLine(
                        "legs, fins and attitude jets",
                        fraction * rest,
                        0.3,
                        "common practice, no source",
                        MassLine.Made.of(CARD, DryMassInputs.RECOVERY_HARDWARE)),
                new MassLine(
                        "base heat protection",
                        base * (heatLoad / HEAT_PER_MASS + BASE_LAYER),
                        0.5,
                        "heat load over heat taken per mass, from memory",
                        MassLine.Made.of(CARD)));
    }
}
