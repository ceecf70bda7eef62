package dev.penstock.reports.vehicle;

import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.HowFar;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** How far a vehicle gets that does not close, as JSON document and terminal text. */
public final class HowFarView {

    /** Parts of a document: what is shown of the flight, and its stages. */
    public static final String SHOWN = "shown";

    public static final String SHOWN_STAGES = "shown_stages";

    private static final Notation SPEED = Notation.fixed("m/s", "m/s", 1, 0);
    private static final Notation FACTOR = Notation.significant("", 4);

    /** A stage of the vehicle that would close. */
    private static final FigureTable<StageSizing> STAGES = FigureTable.named(StageSizing::name)
            .word("name", "stage", StageSizing::name)
            .number("isp_s", "Isp", Notation.fixed("s", "s", 1, 1), StageSizing::isp)
            .number("start_mass_kg", "start mass", Notation.TONNES, StageSizing::startMass)
            .number("dry_mass_kg", "dry", Notation.TONNES, s -> s.dryMass().total())
            .count("engines", "engines", StageSizing::engines)
            .table();

    /** What became of it. */
    private static final FigureTable<HowFar> ALL = FigureTable.<HowFar>ofOne()
            .word("closes", "closes", h -> false)
            .word("reason", "reason", HowFar::reason)
            .number("delta_v_asked_m_s", "ideal delta-v asked for", SPEED, HowFar::asked)
            .optional("delta_v_reached_m_s", "largest ideal delta-v that closes", SPEED, h -> boxed(h.reached()))
            .leftOutIfAbsent()
            .optional(
                    "isp_factor_to_close",
                    "specific impulse that closes over that there is",
                    FACTOR,
                    h -> boxed(h.impulseFactor()))
            .leftOutIfAbsent()
            .optional(
                    "dry_mass_factor_to_close",
                    "dry mass that closes over that of its model",
                    FACTOR,
                    h -> boxed(h.dryMassFactor()))
            .leftOutIfAbsent()
            .optional(
                    "shown_isp_factor",
                    "impulse of the vehicle shown over that there is",
                    FACTOR,
                    h -> boxed(h.nearFactor()))
            .leftOutIfAbsent()
            .optional("shown_start_mass_kg", "its start mass", Notation.TONNES, of(VehicleSizing::startMass))
            .leftOutIfAbsent()
            .optional("shown_payload_kg", "its payload", Notation.TONNES, of(VehicleSizing::payload))
            .leftOutIfAbsent()
            .each(
                    SHOWN_STAGES,
                    h -> h.near().stream().flatMap(v -> v.stages().stream()).toList(),
                    STAGES)
            .table();

    private HowFarView() {}

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.stream().boxed().findFirst();
    }

    private static java.util.function.Function<HowFar, Optional<Double>> of(ToDoubleFunction<VehicleSizing> figure) {
        return h -> h.near().map(figure::applyAsDouble);
    }

    /**
     * @param far how far it gets
     * @return JSON document
     */
    public static Map<String, Object> json(HowFar far) {
        Map<String, Object> map = new LinkedHashMap<>(FigureJson.of(ALL, far));
        far.flown().ifPresent(flown -> map.put(SHOWN, FlightView.json(flown)));
        far.notFlown().ifPresent(why -> map.put("not_flown", why));
        return map;
    }

    /**
     * @param far how far it gets
     * @return text for a terminal
     */
    public static String text(HowFar far) {
        String line = System.lineSeparator();
        StringBuilder keys = new StringBuilder("delta_v_asked_m_s");
        for (String key : new String[] {
            "delta_v_reached_m_s",
            "isp_factor_to_close",
            "dry_mass_factor_to_close",
            "shown_isp_factor",
            "shown_start_mass_kg",
            "shown_payload_kg"
        }) {
            if (ALL.figure(key).number(far).isPresent()) {
                keys.append(' ').append(key);
            }
        }
        StringBuilder text = new StringBuilder("It does not close: ")
                .append(far.reason())
                .append(line)
                .append(line);
        text.append(TextTable.of(
                FigureRows.sheet("How far it gets, one thing changed at a time", ALL, far, "", keys.toString())));
        far.near().ifPresent(near -> text.append(line)
                .append(TextTable.of(FigureRows.list(
                        "", STAGES, "shown_stages", near.stages(), "name engines isp_s start_mass_kg dry_mass_kg"))));
        far.flown().ifPresent(flown -> text.append(line)
                .append("Its flight with that impulse:")
                .append(line)
                .append(line)
                .append(FlightView.text(flown)));
        far.notFlown().ifPresent(why -> text.append(line)
                .append("It was not flown: ")
                .append(why)
                .append(line));
        return text.toString();
    }
}
