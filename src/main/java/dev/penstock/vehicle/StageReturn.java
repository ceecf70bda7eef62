package dev.penstock.vehicle;

import dev.penstock.chamber.atmosphere.Atmosphere;
import dev.penstock.errors.Warning;
import dev.penstock.provenance.ModelCard;
import dev.penstock.quantities.Constants;
import dev.penstock.vehicle.ascent.AscentPoint;
import dev.penstock.vehicle.ascent.AscentResult;
import dev.penstock.vehicle.ascent.DragTable;
import dev.penstock.vehicle.ascent.Entry;
import dev.penstock.vehicle.ascent.Parting;
import dev.penstock.vehicle.plan.Recovery;
import dev.penstock.vehicle.stage.StageSizing;
import dev.penstock.vehicle.stage.VehicleSizing;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The way back of a first stage that is recovered, as far as it tells whether its burns suffice and what the air does.
 *
 * <pre>
 * after staging      horizontal speed falls by the boost-back, then free flight: v² = v_s² − 2 g (h − h_s)
 * entry              at 55 km on the way down the entry burn takes its speed, then the stage falls
 * landing            Δv ≈ (landing speed) (1 + 1/(T/W − 1)) at a thrust-to-weight ratio of 2
 * back to the site   Δv = v_x + d/t over flat ground, d downrange at staging, t time of the free fall to the ground
 * </pre>
 *
 * The stage falls tail first, drag coefficient 1.2 and nose radius half the diameter. Burns are taken as sudden; the
 * factor on the landing speed is the gravity loss of a constant deceleration. Common practice, no source.
 *
 * @param stage name of the stage
 * @param speedBeforeEntryBurn speed through the air at the height of the entry burn (m/s)
 * @param entry fall after the burn
 * @param boostbackDeltaV speed change that turns it back to where it started (m/s); zero where it lands downrange
 * @param landingDeltaV speed change that the landing takes (m/s)
 * @param warnings what the reader must know
 */
public record StageReturn(
        String stage,
        double speedBeforeEntryBurn,
        Entry.Result entry,
        double boostbackDeltaV,
        double landingDeltaV,
        List<Warning> warnings) {

    public static final ModelCard CARD = new ModelCard(
            "vehicle.stage-return",
            "Way back of a first stage",
            "free flight v² = v_s² − 2 g (h − h_s), sudden entry burn at 55 km, ballistic fall, landing Δv = 2 v_landing,"
                    + " back to the site Δv = v_x + d/t",
            "first stages that part below about 4 km/s; no lift, no guidance",
            "±30 %",
            List.of("common practice, no source"));

    private static final double ENTRY_ALTITUDE = 55e3;
    private static final double LANDING_GRAVITY_FACTOR = 2;

    /** By this factor what the last flight needs may exceed what the one before told to keep. */
    static final double SLACK = 1.01;

    private static final DragTable TAIL_FIRST = new DragTable(List.of(new DragTable.Point(0, 1.2)));

    public StageReturn {
        warnings = List.copyOf(warnings);
    }

    /**
     * @param sizing a vehicle
     * @param ascent its flight
     * @param atmosphere the air
     * @return the way back of its first stage; empty if that is lost
     */
    public static Optional<StageReturn> of(VehicleSizing sizing, AscentResult ascent, Atmosphere atmosphere) {
        StageSizing first = sizing.stages().get(0);
        Recovery recovery = sizing.plan().stages().get(0).recovery();
        if (recovery.mode() == Recovery.Mode.NONE) {
            return Optional.empty();
        }
        AscentPoint staging = staging(ascent, first.name());
        double along = staging.airSpeed() * Math.cos(staging.pathAngle());
        double up = staging.airSpeed() * Math.sin(staging.pathAngle());
        double g = Constants.STANDARD_GRAVITY;
        boolean toSite = recovery.mode() == Recovery.Mode.LAUNCH_SITE;
        double boostback = toSite ? turningBack(new Parting(staging.altitude(), up, along, staging.downrange())) : 0;
        double across = Math.abs(along - (recovery.open().boostback() ? boostback : recovery.boostback()));
        double top = staging.altitude() + up * up / (2 * g);
        double start = Math.min(ENTRY_ALTITUDE, top);
        double down = Math.sqrt(Math.max(0, 2 * g * (top - start)));
        double before = Math.hypot(across, down);
        double after = Math.max(1, before - recovery.entry());
        // what the landing still has on board: judgement
        Entry.Body body = tailFirst(first, first.propellant().recovery() / 3);
        Entry.Result entry =
                new Entry(ascent.mission().planet(), atmosphere).fall(body, start, after, -Math.atan2(down, across));
        double landing = LANDING_GRAVITY_FACTOR * entry.landingSpeed();
        List<Warning> warnings = new ArrayList<>();
        if (landing > SLACK * recovery.landing()) {
            warnings.add(kept(
                    String.format(
                            Locale.ROOT,
                            "%s reaches the ground at %.0f m/s and needs about %.0f m/s to land",
                            first.name(),
                            entry.landingSpeed(),
                            landing),
                    recovery.landing(),
                    "recovery.landing"));
        }
        if (boostback > SLACK * recovery.boostback()) {
            warnings.add(kept(
                    String.format(
                            Locale.ROOT,
                            "%s parts %.0f km downrange at %.0f m/s along the ground and needs about %.0f m/s to turn back",
                            first.name(),
                            staging.downrange() / 1e3,
                            along,
                            boostback),
                    recovery.boostback(),
                    "recovery.boostback"));
        }
        return Optional.of(new StageReturn(first.name(), before, entry, boostback, landing, warnings));
    }

    /**
     * @param parting where the stage parts
     * @return speed change that takes it back to the pad (m/s)
     */
    static double turningBack(Parting parting) {
        double g = Constants.STANDARD_GRAVITY;
        double up = parting.up();
        double fall = (up + Math.sqrt(Math.max(0, up * up + 2 * g * parting.altitude()))) / g;
        return Math.max(0, parting.along() + parting.downrange() / Math.max(1, fall));
    }

    /**
     * @param stage a stage without what covered the payload
     * @param aboard propellant aboard beside the residual (kg)
     * @return it falling tail first
     */
    static Entry.Body tailFirst(StageSizing stage, double aboard) {
        double width = stage.contents().diameter();
        double mass =
                stage.dryMass().total() - stage.overboard() + stage.propellant().residual() + aboard;
        return new Entry.Body(mass, Math.PI / 4 * width * width, TAIL_FIRST, width / 2);
    }

    private static Warning kept(String needed, double kept, String key) {
        return new Warning(
                "vehicle.recovery", String.format(Locale.ROOT, "%s; %.0f m/s are kept for it (%s)", needed, kept, key));
    }

    static AscentPoint staging(AscentResult ascent, String stage) {
        double cutOff = ascent.segments().stream()
                .filter(s -> s.name().equals(stage))
                .mapToDouble(AscentResult.SegmentFlight::cutOff)
                .findFirst()
                .orElseThrow();
        return ascent.points().stream()
                .filter(p -> p.time() >= cutOff - 1e-6)
                .findFirst()
                .orElseThrow();
    }
}
