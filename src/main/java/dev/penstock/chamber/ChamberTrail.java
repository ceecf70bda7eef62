package dev.penstock.chamber;

import dev.penstock.chamber.contour.ContourBuilder;
import dev.penstock.chamber.flow.IsentropicFlow;
import dev.penstock.chamber.loss.NamedLoss;
import dev.penstock.provenance.ModelCard;
import dev.penstock.provenance.Trail;
import java.util.List;

/** Records where the numbers of a thrust chamber come from: each with the model that made it. */
public final class ChamberTrail {

    private static final ModelCard DELIVERED = new ModelCard(
            "chamber.delivered",
            "Delivered performance",
            "c* = c*_ideal Π factors on c*; C_F = C_F,ideal Π factors on C_F; F = ṁ c* C_F",
            "losses small against the whole",
            "about 1 % of specific impulse",
            List.of("nasa-sp-125"));

    private static final ModelCard THROAT = new ModelCard(
            "chamber.throat",
            "Throat area from mass flow",
            "A_t = ṁ c*/p_c",
            "choked throat",
            "that of the characteristic velocity",
            List.of("definition"));

    private final Trail trail;

    /** @param trail where to record */
    public ChamberTrail(Trail trail) {
        this.trail = trail;
    }

    /**
     * @param chamber thrust chamber
     * @param gas path of the station of the chamber gas
     * @param size what the concept asks of the engine's size, and what others give of it
     * @param given paths of concept inputs that fix its shape and efficiencies
     */
    public void chamber(ChamberPerformance chamber, String gas, Size size, List<String> given) {
        put(
                "chamber.ideal_characteristic_velocity_m_s",
                chamber.ideal().characteristicVelocity(),
                "m/s",
                IsentropicFlow.CARD,
                List.of(gas + ".pressure_Pa", gas + ".enthalpy_J_kg", "engine.chamber_mixture_ratio"));
        put("chamber.area_ratio", chamber.areaRatio(), "", IsentropicFlow.CARD, given);
        put(
                "chamber.ideal_vacuum_impulse_m_s",
                chamber.ideal().vacuumImpulse(),
                "m/s",
                IsentropicFlow.CARD,
                List.of("chamber.ideal_characteristic_velocity_m_s", "chamber.area_ratio"));
        String at = "chamber.ideal_vacuum_impulse_m_s";
        for (NamedLoss loss : chamber.losses()) {
            at = loss(loss, "losses", at, given);
        }
        List<String> factors = chamber.losses().stream()
                .map(l -> "losses." + Trail.slug(l.name()) + ".factor")
                .toList();
        put(
                "chamber.characteristic_velocity_m_s",
                chamber.characteristicVelocity(),
                "m/s",
                DELIVERED,
                join(List.of("chamber.ideal_characteristic_velocity_m_s"), factors));
        put(
                "chamber.vacuum_impulse_m_s",
                chamber.vacuumImpulse(),
                "m/s",
                DELIVERED,
                join(List.of("chamber.ideal_vacuum_impulse_m_s"), factors));
        size(chamber, gas, size);
        put(
                "chamber.exit_area_m2",
                chamber.exitArea(),
                "m²",
                IsentropicFlow.CARD,
                List.of("chamber.throat_area_m2", "chamber.area_ratio"));
        put(
                "chamber.thrust_coefficient_vacuum",
                chamber.vacuumThrustCoefficient(),
                "",
                DELIVERED,
                List.of("chamber.vacuum_impulse_m_s", "chamber.characteristic_velocity_m_s"));
        put(
                "chamber.length_m",
                chamber.contour().chamberLength(),
                "m",
                ContourBuilder.CARD,
                join(List.of("chamber.throat_area_m2"), given));
        put(
                "chamber.nozzle_length_m",
                chamber.contour().nozzleLength(),
                "m",
                ContourBuilder.CARD,
                join(List.of("chamber.throat_area_m2", "chamber.area_ratio"), given));
    }

    /**
     * What an engine's size follows from.
     *
     * @param throat paths of a throat that is given; empty if it follows from thrust
     * @param thrust paths of the thrust asked for, and of what else gives thrust
     */
    public record Size(List<String> throat, List<String> thrust) {}

    /** A given throat passes what it must; else the flow follows from thrust and the throat from the flow. */
    private void size(ChamberPerformance chamber, String gas, Size size) {
        List<String> choked = List.of("chamber.characteristic_velocity_m_s", gas + ".pressure_Pa");
        List<String> area = List.of("chamber.throat_area_m2");
        List<String> flow = List.of("chamber.mass_flow_kg_s");
        List<String> impulse = List.of("chamber.vacuum_impulse_m_s");
        List<String> thrust = List.of("chamber.vacuum_thrust_N");
        boolean given = !size.throat().isEmpty();
        put("chamber.throat_area_m2", chamber.throatArea(), "m²", THROAT, given ? size.throat() : join(flow, choked));
        put(
                "chamber.mass_flow_kg_s",
                chamber.massFlow(),
                "kg/s",
                given ? THROAT : DELIVERED,
                given ? join(area, choked) : join(thrust, impulse));
        put(
                "chamber.vacuum_thrust_N",
                chamber.vacuumThrust(),
                "N",
                DELIVERED,
                given ? join(flow, impulse) : size.thrust());
    }

    /**
     * @param chamber thrust chamber
     * @param gas path of the station of the chamber gas
     * @param card model that made that gas
     */
    public void gas(ChamberPerformance chamber, String gas, ModelCard card) {
        List<String> from = List.of(gas + ".pressure_Pa", gas + ".enthalpy_J_kg", "engine.chamber_mixture_ratio");
        var state = chamber.ideal().chamber();
        put("chamber.gas_temperature_K", state.temperature(), "K", card, from);
        put("chamber.gas_molar_mass_kg_mol", state.molarMass(), "kg/mol", card, from);
        put("chamber.gas_isentropic_exponent", state.gammaS(), "", card, from);
    }

    /**
     * @param loss a loss
     * @param list name of the list it stands in
     * @param before path of the impulse before it
     * @param given paths of concept inputs that may fix it
     * @return path of its factor
     */
    public String loss(NamedLoss loss, String list, String before, List<String> given) {
        String p = list + "." + Trail.slug(loss.name());
        if (loss.model().isPresent()) {
            put(p + ".factor", loss.factor(), "", loss.model().get(), join(List.of(before), given));
        } else {
            trail.given(p + ".factor", loss.factor(), "", "stated by the concept", "concept file, efficiencies");
        }
        put(p + ".impulse_loss_m_s", loss.impulseLoss(), "m/s", DELIVERED, List.of(p + ".factor", before));
        return p + ".factor";
    }

    private void put(String path, double value, String unit, ModelCard card, List<String> inputs) {
        trail.record(path, value, unit, card, inputs.toArray(String[]::new));
    }

    private static List<String> join(List<String> a, List<String> b) {
        List<String> all = new java.util.ArrayList<>(a);
        all.addAll(b);
        return all;
    }
}
