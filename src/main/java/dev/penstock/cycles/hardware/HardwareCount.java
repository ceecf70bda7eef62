package dev.penstock.cycles.hardware;

import dev.penstock.cycles.concept.BoostDesign;
import dev.penstock.cycles.concept.Concept;
import dev.penstock.cycles.concept.Side;
import dev.penstock.cycles.origin.Content;
import dev.penstock.cycles.origin.PartKind;
import dev.penstock.cycles.origin.PumpKey;
import dev.penstock.cycles.sheet.Component;
import dev.penstock.cycles.sheet.EngineBalance;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What has to be built of an engine, counted from its arrangement: the parts and joints that the flow diagram has. Brackets,
 * sensors, purge lines and igniters are not in an arrangement and not counted, so that counts compare arrangements and tell
 * little of an engine alone.
 *
 * @param pumps pumps, boost pumps among them
 * @param turbines turbines, those of boost pumps among them
 * @param motors electric motors
 * @param rotors shafts that turn, each with its bearings and seals
 * @param gears gear wheels
 * @param burners gas generators and preburners
 * @param chambers thrust chambers
 * @param injectors injectors, those of burners among them
 * @param jackets cooling jackets
 * @param valves valves
 * @param joints places where one part hands its flow to the next; several chambers have each their own
 * @param hotJoints those in burnt gas
 */
public record HardwareCount(
        int pumps,
        int turbines,
        int motors,
        int rotors,
        int gears,
        int burners,
        int chambers,
        int injectors,
        int jackets,
        int valves,
        int joints,
        int hotJoints) {

    /** Wheels of a gear. */
    private static final int MESH = 2;

    /** Parts that flow enters through a joint and of which each thrust chamber has its own. */
    private static final Set<PartKind> OF_CHAMBER = Set.of(PartKind.INJECTOR, PartKind.JACKET);

    /** What flow enters without a joint: branches are joints of what they join, a thrust chamber is one piece with its injector. */
    private static final Set<PartKind> NO_JOINT =
            Set.of(PartKind.SPLIT, PartKind.MERGE, PartKind.CHAMBER, PartKind.NOZZLE);

    /**
     * @param balance a balanced engine
     * @return its parts, counted
     */
    public static HardwareCount of(EngineBalance balance) {
        Concept concept = balance.concept();
        int chambers = concept.chambers();
        int burners = count(balance, PartKind.GAS_GENERATOR) + count(balance, PartKind.PREBURNER);
        int geared = (concept.shafts().geared() ? 1 : 0) + kickGears(balance);
        return new HardwareCount(
                balance.pumps().size(),
                balance.turbines().size() + boosts(concept, drive -> drive != BoostDesign.Drive.GEAR),
                count(balance, PartKind.MOTOR),
                balance.shafts().size() + geared,
                MESH * (boosts(concept, drive -> drive == BoostDesign.Drive.GEAR) + geared),
                burners,
                chambers,
                burners + chambers,
                chambers * balance.cooling().size(),
                count(balance, PartKind.VALVE),
                joints(balance, false),
                joints(balance, true));
    }

    private static int count(EngineBalance balance, PartKind kind) {
        return (int) balance.components().stream().filter(c -> c.kind() == kind).count();
    }

    /** Kick pumps that turn on a gear of their own. */
    private static int kickGears(EngineBalance balance) {
        return balance.concept().shafts().kickGeared()
                ? (int) balance.machines().pumps().keySet().stream()
                        .filter(pump -> pump.role() == PumpKey.Role.KICK)
                        .count()
                : 0;
    }

    private static int boosts(Concept concept, Predicate<BoostDesign.Drive> drive) {
        return (int) Arrays.stream(Side.values())
                .flatMap(side -> concept.feed(side).boost().stream())
                .filter(boost -> drive.test(boost.drive()))
                .count();
    }

    /** Stations that leave a part and enter another. */
    private static int joints(EngineBalance balance, boolean hot) {
        Set<Integer> left = new HashSet<>();
        balance.components().forEach(c -> left.addAll(c.outlets()));
        int joints = 0;
        for (Component part : balance.components()) {
            if (NO_JOINT.contains(part.kind())) {
                continue;
            }
            int each = OF_CHAMBER.contains(part.kind()) ? balance.concept().chambers() : 1;
            for (int number : part.inlets()) {
                boolean burnt = balance.station(number).content() == Content.BURNT_GAS;
                joints += left.contains(number) && (burnt || !hot) ? each : 0;
            }
        }
        return joints;
    }

    /** @return pumps, turbines and motors */
    public int machines() {
        return pumps + turbines + motors;
    }

    /** @return what moves: rotors, the second wheel of each gear and valves */
    public int movingParts() {
        return rotors + gears / MESH + valves;
    }

    /** @return parts that have to be built, joints aside */
    public int parts() {
        return machines() + gears + burners + chambers + injectors + jackets + valves;
    }
}
