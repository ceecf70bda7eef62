package dev.penstock.reports.engine;

import static dev.penstock.quantities.Notation.significant;

import dev.penstock.cooling.protection.HeatSinkWall;
import dev.penstock.cooling.protection.ProtectionStudy;
import dev.penstock.provenance.Figure;
import dev.penstock.provenance.FigureTable;
import dev.penstock.quantities.Notation;
import dev.penstock.reports.page.FigureRows;
import dev.penstock.reports.text.FigureJson;
import dev.penstock.reports.text.PageTable;
import dev.penstock.reports.text.TextTable;
import dev.penstock.vehicle.StageFall;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Ways to protect a wall without a jacket, as JSON document and terminal table. */
public final class ProtectionView {

    private static final String LINE = System.lineSeparator();
    private static final Notation THICKNESS = new Notation("m", "mm", t -> t > 0 ? significant(t * 1e3, 3) : "-");
    private static final Notation FLUX = significant("W/m²", "kW/m²", 1e-3, 3);
    private static final Notation HEAT = significant("J/m²", "MJ/m²", 1e-6, 3);

    /** Figures of a way to protect the wall. */
    private static final FigureTable<ProtectionStudy.Option> OPTIONS = FigureTable.named(ProtectionStudy.Option::name)
            .word("name", "way", ProtectionStudy.Option::name)
            .word("possible", "within its limits", ProtectionStudy.Option::possible)
            .number("thickness_m", "thickness", THICKNESS, ProtectionStudy.Option::thickness)
            .number("areal_mass_kg_m2", "mass", significant("kg/m²", 3), ProtectionStudy.Option::arealMass)
            .word("reusable", "reusable", ProtectionStudy.Option::reusable)
            .number("used_up_kg_m2", "used up each time", significant("kg/m²", 3), ProtectionStudy.Option::usedUp)
            .number("uses_until_renewed", "uses until renewed", Notation.COUNT, o -> Math.floor(o.uses()))
            .word("note", "note", ProtectionStudy.Option::note)
            .word("stands", "within its limits", o -> yes(o.possible()))
            .outsideDocuments()
            .word("again", "reusable", o -> yes(o.reusable()))
            .outsideDocuments()
            .table();

    /** Figures of an instant of a plain wall. */
    private static final FigureTable<HeatSinkWall.Instant> INSTANTS = FigureTable.<HeatSinkWall.Instant>ofOne()
            .number("time_s", "time", significant("s", 4), HeatSinkWall.Instant::time)
            .number("hot_face_K", "hot face", Notation.TEMPERATURE, HeatSinkWall.Instant::hotFace)
            .number("cold_face_K", "cold face", Notation.TEMPERATURE, HeatSinkWall.Instant::coldFace)
            .table();

    /** Figures of a plain wall. */
    private static final FigureTable<HeatSinkWall.Outcome> WALL = FigureTable.<HeatSinkWall.Outcome>ofOne()
            .number("peak_temperature_K", "hot face at most", Notation.TEMPERATURE, w -> w.peakTemperature())
            .optional("time_to_limit_s", "time to its limit", significant("s", 3), HeatSinkWall.Outcome::timeToLimit)
            .leftOutIfAbsent()
            .number("heat_absorbed_J_m2", "heat taken up", HEAT, HeatSinkWall.Outcome::heatAbsorbed)
            .number("heat_stored_J_m2", "heat stored", HEAT, HeatSinkWall.Outcome::heatStored)
            .number("heat_radiated_J_m2", "heat radiated", HEAT, HeatSinkWall.Outcome::heatRadiated)
            .each("history", HeatSinkWall.Outcome::history, INSTANTS)
            .table();

    /** Figures of a stage on its way down. */
    private static final FigureTable<StageFall> STAGE = FigureTable.<StageFall>ofOne()
            .word("name", "stage", StageFall::stage)
            .word("how", "how", StageFall::how)
            .number("peak_heat_flux_W_m2", "highest heat flux", FLUX, f -> f.entry()
                    .peakHeatFlux())
            .number("heat_load_J_m2", "heat load", HEAT, f -> f.entry().heatLoad())
            .number("pulse_s", "pulse of that flux", significant("s", 3), StageFall::pulse)
            .number(
                    "peak_dynamic_pressure_Pa",
                    "highest dynamic pressure",
                    significant("Pa", "kPa", 1e-3, 3),
                    f -> f.entry().peakDynamicPressure())
            .number("peak_deceleration_m_s2", "highest deceleration", significant("m/s²", 3), f -> f.entry()
                    .peakDeceleration())
            .number("landing_speed_m_s", "speed at the ground", significant("m/s", 3), f -> f.entry()
                    .landingSpeed())
            .number("base_area_m2", "base", significant("m²", 3), StageFall::baseArea)
            .number("landed_mass_kg", "landed mass", significant("kg", 4), StageFall::landedMass)
            .number("deorbit_m_s", "out of the orbit", significant("m/s", 3), StageFall::deorbitDeltaV)
            .number("entry_burn_m_s", "entry burn", significant("m/s", 3), StageFall::entryDeltaV)
            .number("landing_m_s", "landing by engines", significant("m/s", 3), StageFall::landingDeltaV)
            .number(
                    "propellant_landing_by_engines_kg",
                    "propellant, landing by engines",
                    significant("kg", 4),
                    StageFall::propellantLandingByEngines)
            .number("parachute_kg", "parachute", significant("kg", 4), StageFall::parachute)
            .number(
                    "propellant_landing_by_parachute_kg",
                    "propellant, landing by parachute",
                    significant("kg", 4),
                    StageFall::propellantLandingByParachute)
            .table();

    /** Figures of the heat load, with what can be done about it. */
    private static final FigureTable<ProtectionView> ALL = FigureTable.<ProtectionView>ofOne()
            .number(
                    "gas_side_coefficient_W_m2_K",
                    "coefficient",
                    significant("W/(m²·K)", "kW/(m²·K)", 1e-3, 3),
                    v -> v.load.gasCoefficient())
            .number("adiabatic_wall_temperature_K", "gas", significant("K", 4), v -> v.load.adiabaticWallTemperature())
            .number("time_s", "time", significant("s", 3), v -> v.load.time())
            .number("initial_temperature_K", "at start", Notation.TEMPERATURE, v -> v.load.initialTemperature())
            .part("stage", v -> v.stage, STAGE)
            .leftOutIfAbsent()
            .each("options", v -> v.options, OPTIONS)
            .part("plain_wall", v -> v.history, WALL)
            .leftOutIfAbsent()
            .table();

    private final ProtectionStudy.Load load;
    private final List<ProtectionStudy.Option> options;
    private final Optional<HeatSinkWall.Outcome> history;
    private final Optional<StageFall> stage;

    /**
     * @param load heat load on the wall
     * @param options ways to protect it
     * @param history what becomes of a plain wall through its pulses, if asked for
     * @param stage the stage whose base the wall is, if it is one
     */
    public ProtectionView(
            ProtectionStudy.Load load,
            List<ProtectionStudy.Option> options,
            Optional<HeatSinkWall.Outcome> history,
            Optional<StageFall> stage) {
        this.load = load;
        this.options = List.copyOf(options);
        this.history = history;
        this.stage = stage;
    }

    /** @return JSON document */
    public Map<String, Object> json() {
        return FigureJson.of(ALL, this);
    }

    private static String yes(boolean truth) {
        return truth ? "yes" : "no";
    }

    /** @return table for a terminal */
    public String text() {
        PageTable table = FigureRows.list(
                "",
                OPTIONS,
                "options",
                options,
                "name stands thickness_m areal_mass_kg_m2 used_up_kg_m2 again uses_until_renewed note");
        return stage.map(ProtectionView::stageText).orElse("") + said("gas_side_coefficient_W_m2_K") + " to gas at "
                + said("adiabatic_wall_temperature_K") + " for "
                + said("time_s") + LINE + LINE + TextTable.of(table)
                + history.map(ProtectionView::wallText).orElse("");
    }

    private String said(String key) {
        Figure<ProtectionView> figure = ALL.figure(key);
        return figure.text(this) + " " + figure.unit();
    }

    private static String stageText(StageFall fall) {
        return TextTable.of(FigureRows.sheet(
                        "Way down of " + fall.stage() + ": " + fall.how(),
                        STAGE,
                        fall,
                        "",
                        "peak_heat_flux_W_m2 heat_load_J_m2 pulse_s peak_dynamic_pressure_Pa peak_deceleration_m_s2"
                                + " landing_speed_m_s base_area_m2 landed_mass_kg deorbit_m_s entry_burn_m_s landing_m_s"
                                + " propellant_landing_by_engines_kg parachute_kg propellant_landing_by_parachute_kg"))
                + LINE
                + "The whole base is taken under the flux of its stagnation point: times the area, masses are upper bounds."
                + LINE
                + LINE;
    }

    private static String wallText(HeatSinkWall.Outcome outcome) {
        HeatSinkWall.Instant end = outcome.history().get(outcome.history().size() - 1);
        String limit = outcome.timeToLimit().isPresent()
                ? "passes its limit after "
                        + Notation.significant(outcome.timeToLimit().getAsDouble(), 3) + " s"
                : "stays below its limit";
        return LINE + "plain wall: hot face " + Notation.TEMPERATURE.write(outcome.peakTemperature())
                + " K at most, it " + limit
                + "; after " + Notation.significant(end.time(), 4) + " s hot face "
                + Notation.TEMPERATURE.write(end.hotFace())
                + " K, cold face " + Notation.TEMPERATURE.write(end.coldFace()) + " K" + LINE;
    }
}
